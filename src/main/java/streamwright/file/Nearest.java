package streamwright.file;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Guesses which known word was meant. */
public final class Nearest {
    private static final int MOST_LISTED = 12;

    private Nearest() {}

    /** What to say behind "must be ...": a guess, else all known words where they are few. */
    static String hint(String word, Collection<String> known) {
        String guess = of(word, known);
        if (guess != null) {
            return "; did you mean " + guess + "?";
        }
        return known.size() > MOST_LISTED || known.isEmpty() ? "" : ": " + String.join(", ", known);
    }

    /** The known word at most a third of its letters away, or null. */
    public static @Nullable String of(String word, Collection<String> known) {
        // no known word is so long that a longer one could be near
        if (word.length() > 100) {
            return null;
        }
        return known.stream()
                .filter(candidate -> distance(word, candidate) <= Math.max(1, candidate.length() / 3))
                .min(Comparator.comparingInt(candidate -> distance(word, candidate)))
                .orElse(null);
    }

    /** Fewest insertions, deletions, replacements and swaps of neighbours (optimal string alignment), case aside. */
    static int distance(String left, String right) {
        String a = left.toLowerCase(Locale.ROOT);
        String b = right.toLowerCase(Locale.ROOT);
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                if (i == 0 || j == 0) {
                    d[i][j] = i + j;
                    continue;
                }
                int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                d[i][j] = Math.min(d[i - 1][j - 1] + change, 1 + Math.min(d[i - 1][j], d[i][j - 1]));
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
                }
            }
        }
        return d[a.length()][b.length()];
    }
}
