package streamwright.file;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A field's value, or null said outright, which counts as not given. */
record OrNothing<T>(Shape<T> shape) implements Shape<T> {
    /** Whether a field may be passed over. */
    static boolean skips(Shape<?> shape, Node node) {
        return shape instanceof OrNothing<?>
                && node instanceof Node.Scalar scalar
                && scalar.kind() == Node.Kind.NOTHING;
    }

    @Override
    public @Nullable T read(Place place, Problems problems) {
        return shape.read(place, problems);
    }

    @Override
    public String wanted() {
        return shape.wanted() + " or null";
    }

    @Override
    public Map<String, Object> schema() {
        return JsonObject.of("anyOf", List.of(shape.schema(), JsonObject.of("type", "null")));
    }
}
