package streamwright.file;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** One of two looks: that of a list, or that of an object. */
record Either<T>(Shape<? extends T> list, Shape<? extends T> object) implements Shape<T> {
    @Override
    public @Nullable T read(Place place, Problems problems) {
        if (place.node() instanceof Node.Scalar) {
            problems.add(place.wrong(wanted()));
            return null;
        }
        return place.node() instanceof Node.Items ? list.read(place, problems) : object.read(place, problems);
    }

    @Override
    public String wanted() {
        return list.wanted() + ", or " + object.wanted();
    }

    @Override
    public Map<String, Object> schema() {
        return JsonObject.of("anyOf", List.of(list.schema(), object.schema()));
    }
}
