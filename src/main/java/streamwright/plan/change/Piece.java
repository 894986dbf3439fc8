package streamwright.plan.change;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * One piece of work, not yet in order.
 *
 * @param phase when a crew does it
 * @param darkens strings that lose their data by it
 * @param serves strings that have their data only after it
 * @param about what a broken rule could be about that explains it, the nearest first
 */
record Piece(
        Phase phase,
        String kind,
        Map<String, Object> what,
        @Nullable Map<String, Object> from,
        @Nullable Map<String, Object> to,
        double minutes,
        String text,
        Set<StringId> darkens,
        Set<StringId> serves,
        List<String> about) {

    /** The order in which a crew works: what is in the way goes first, and nothing is set that does not hang. */
    enum Phase {
        TAKE_DOWN,
        PULL_OUT,
        PULL,
        HANG,
        PLUG,
        POWER,
        SET,
        TEST
    }

    /** A map from pairs of name and value, in their order. */
    static Map<String, Object> map(Object... pairs) {
        Map<String, Object> map = new LinkedHashMap<>();
        for (int i = 0; i < pairs.length; i += 2) {
            map.put(String.valueOf(pairs[i]), pairs[i + 1]);
        }
        return map;
    }
}
