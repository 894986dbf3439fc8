package streamwright.plan;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** One step of a repair. */
public record Change(
        String kind,
        Map<String, Object> what,
        @Nullable Map<String, Object> from,
        @Nullable Map<String, Object> to,
        double minutes,
        String text) {
    public Change {
        what = copy(what);
        from = from == null ? null : copy(from);
        to = to == null ? null : copy(to);
    }

    /** In the order of the fields, which {@link Map#copyOf} would lose, and differently on every run. */
    private static Map<String, Object> copy(Map<String, Object> fields) {
        return Collections.unmodifiableMap(new LinkedHashMap<>(fields));
    }
}
