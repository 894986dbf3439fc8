package streamwright.file;

import java.util.Map;
import org.jspecify.annotations.Nullable;

/** True or false. */
record Flag() implements Shape<Boolean> {
    @Override
    public @Nullable Boolean read(Place place, Problems problems) {
        if (place.node() instanceof Node.Scalar scalar && scalar.kind() == Node.Kind.FLAG) {
            return Boolean.parseBoolean(scalar.text());
        }
        problems.add(place.wrong(wanted()));
        return null;
    }

    @Override
    public String wanted() {
        return "true or false";
    }

    @Override
    public Map<String, Object> schema() {
        return JsonObject.of("type", "boolean");
    }
}
