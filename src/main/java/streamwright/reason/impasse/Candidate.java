package streamwright.reason.impasse;

import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * A change of a yard that might help.
 *
 * @param lever by degrees; from 0 to 1 where there are none
 * @param words of a change without degrees, e.g. {@code wires may cross pond}; null for a figure
 */
record Candidate(Lever lever, @Nullable String words) {
    static Candidate figure(Lever lever) {
        return new Candidate(lever, null);
    }

    static Candidate change(String words, Consumer<YardDraft> change) {
        Lever lever = new Lever(words, "", 0, 1, 1, (draft, whether) -> {
            if (whether > 0) {
                change.accept(draft);
            }
        });
        return new Candidate(lever, words);
    }

    String text(double value) {
        if (words != null) {
            return words;
        }
        String instead = lever.from() == 0 ? "" : " instead of " + Lever.plain(lever.from());
        return lever.field() + " " + lever.said(value) + instead;
    }

    WayOut.Change told(double value) {
        return words != null
                ? new WayOut.Change(words, null, null)
                : new WayOut.Change(lever.field(), lever.from(), value);
    }
}
