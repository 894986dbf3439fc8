package streamwright.file;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** One of two looks; the second where the node is of the given type. */
record Either<T>(Shape<T> first, Class<? extends Node> type, Shape<? extends T> second) implements Shape<T> {
    @Override
    public @Nullable T read(Place place, Problems problems) {
        return type.isInstance(place.node()) ? second.read(place, problems) : first.read(place, problems);
    }

    @Override
    public String wanted() {
        return first.wanted() + ", or " + second.wanted();
    }

    @Override
    public Map<String, Object> schema() {
        return Map.of("anyOf", List.of(first.schema(), second.schema()));
    }
}
