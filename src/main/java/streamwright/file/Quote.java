package streamwright.file;

/** Shows foreign text within a one-line message: short, and without line breaks or control characters. */
final class Quote {
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
            if (Character.isISOControl(c) || Character.isSurrogate(c) || c == '\u2028' || c == '\u2029') {
                shown.append(String.format("\\u%04x", (int) c));
            } else {
                shown.append(c);
            }
        }
        return text.length() > most ? shown + "..." : shown.toString();
    }
}
