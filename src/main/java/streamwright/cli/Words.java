package streamwright.cli;

import java.util.Collection;
import java.util.stream.Collectors;
import streamwright.file.Nearest;

/** What a mistyped word may have been meant to be. */
final class Words {
    /** Longer lists help nobody to find a word. */
    private static final int MOST_LISTED = 12;

    private Words() {}

    /** The rest of a message, with a space before it; empty where no known word is near. */
    static String didYouMean(String word, Collection<String> known) {
        String nearest = Nearest.of(word, known);
        return nearest == null ? "" : " Did you mean '" + nearest + "'?";
    }

    /** Message for a name that is not among the known ones: the nearest of them, else the first of them. */
    static String unknown(String what, String word, Collection<String> known) {
        String hint = didYouMean(word, known);
        return "There is no " + what + " '" + word + "'." + (hint.isEmpty() ? listed(known) : hint);
    }

    private static String listed(Collection<String> known) {
        if (known.isEmpty()) {
            return "";
        }
        String words =
                known.stream().limit(MOST_LISTED).map(word -> "'" + word + "'").collect(Collectors.joining(", "));
        return " There are: " + words + (known.size() > MOST_LISTED ? ", ..." : ".");
    }
}
