package streamwright.file;

import java.util.regex.Pattern;

/** Shows foreign text within a one-line message: short, and without line breaks or control characters. */
final class Quote {
    /**
     * Characters, as a class of patterns has them, that do something to what is shown around them: controls, line and
     * paragraph separators, and those that set the direction of writing (Unicode Standard Annex 9, from memory); and
     * those that no XML holds, which would spoil a workbook or drawing: halves of pairs, U+FFFE and U+FFFF (XML 1.0,
     * production 2, from memory).
     */
    static final String HARMFUL = "\\x00-\\x1F\\x7F-\\x9F\\u061C\\u200E\\u200F\\u2028-\\u202E\\u2066-\\u2069"
            + "\\uD800-\\uDFFF\\uFFFE\\uFFFF";

    private static final Pattern ESCAPED = Pattern.compile("[" + HARMFUL + "]");
    private static final int MOST_SHOWN = 60;

    private Quote() {}

    static String quoted(String text) {
        return '"' + plain(text) + '"';
    }

    static String plain(String text) {
        return plain(text, MOST_SHOWN);
    }

    /**
     * @param most letters to show
     */
    static String plain(String text, int most) {
        StringBuilder shown = new StringBuilder();
        for (int i = 0; i < text.length() && i < most; i++) {
            char c = text.charAt(i);
            if (ESCAPED.matcher(String.valueOf(c)).matches()) {
                shown.append(String.format("\\u%04x", (int) c));
            } else {
                shown.append(c);
            }
        }
        return text.length() > most ? shown + "..." : shown.toString();
    }
}
