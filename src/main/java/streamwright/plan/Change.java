package streamwright.plan;

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
        what = Map.copyOf(what);
        from = from == null ? null : Map.copyOf(from);
        to = to == null ? null : Map.copyOf(to);
    }
}
