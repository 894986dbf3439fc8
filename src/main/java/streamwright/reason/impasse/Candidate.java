package streamwright.reason.impasse;

import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * A change of a yard that might help.
 *
 * @param lever by degrees; from 0 to 1 where there are none
 * @param words of a change without degrees, e.g. {@code wires may cross pond}, or of a figure at its loosest; null where
 *     the figure says all
 */
record Candidate(Lever lever, @Nullable String words) {
    static Candidate figure(Lever lever) {
        return new Candidate(lever, null);
    }

    /** A figure that says little where it is loosest: none of the strings of a prop are no prop. */
    static Candidate figure(Lever lever, String loosest) {
        return new Candidate(lever, loosest);
    }

    static Candidate change(String words, Consumer<YardDraft> change) {
        Lever lever = new Lever(words, "", 0, 1, 1, (draft, whether) -> {
            if (whether > 0) {
                change.accept(draft);
            }
        });
        return new Candidate(lever, words);
    }

    private @Nullable String words(double value) {
        return value == lever.loosest() ? words : null;
    }

    String text(double value) {
        String said = words(value);
        if (said != null) {
            return said;
        }
        String instead = lever.from() == 0 ? "" : " instead of " + Lever.plain(lever.from());
        return lever.field() + " " + lever.said(value) + instead;
    }

    WayOut.Change told(double value) {
        String said = words(value);
        return said != null
                ? new WayOut.Change(said, null, null)
                : new WayOut.Change(lever.field(), lever.from(), value);
    }
}
