package streamwright.file;

import java.util.Collection;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Guesses which known word was meant. */
public final class Nearest {
    private static final int MOST_LISTED = 20;
    private static final int MOST_COMPARED = 2000;

    private Nearest() {}

    /** To say behind "must be ...": a guess, else the known words where they are few, else nothing. */
    static String hint(String word, Collection<String> known, Problems problems) {
        // nobody would see the guess
        String guess = problems.full() ? null : of(word, known);
        if (guess != null) {
            return "; did you mean " + guess + "?";
        }
        return known.isEmpty() || known.size() > MOST_LISTED ? "" : ": " + String.join(", ", known);
    }

    /** To say of an unknown name of a field: a guess, else all that there are. */
    static String instead(String name, Collection<String> known, Problems problems) {
        String guess = problems.full() ? null : of(name, known);
        return guess == null ? "must be one of " + String.join(", ", known) : "did you mean " + guess + "?";
    }

    /**
     * The known word at most a third of its letters away, of equally near ones that which begins alike for longest: the
     * end is what people leave off. Null where there is none, and where too many are known to guess.
     */
    public static @Nullable String of(String word, Collection<String> known) {
        if (known.size() > MOST_COMPARED) {
            return null;
        }
        String best = null;
        int least = Integer.MAX_VALUE;
        int longest = 0;
        for (String candidate : known) {
            int most = Math.max(1, candidate.length() / 3);
            if (Math.abs(candidate.length() - word.length()) <= most) {
                int distance = distance(word, candidate);
                int alike = alike(word, candidate);
                if (distance <= most && (distance < least || (distance == least && alike > longest))) {
                    best = candidate;
                    least = distance;
                    longest = alike;
                }
            }
        }
        return best;
    }

    /** How many letters both begin with, case aside. */
    private static int alike(String left, String right) {
        int most = Math.min(left.length(), right.length());
        int i = 0;
        while (i < most && Character.toLowerCase(left.charAt(i)) == Character.toLowerCase(right.charAt(i))) {
            i++;
        }
        return i;
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
