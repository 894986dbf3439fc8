package streamwright.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** An object whose fields are not laid down: text, numbers, flags, lists and objects of them. */
record Loose() implements Shape<Map<String, Object>> {
    @Override
    public @Nullable Map<String, Object> read(Place place, Problems problems) {
        if (!(place.node() instanceof Node.Fields object)) {
            problems.add(place.wrong(wanted()));
            return null;
        }
        Map<String, Object> values = new LinkedHashMap<>();
        object.entries().forEach((name, entry) -> {
            Object value = value(place.field(name, entry.value()), problems);
            if (value != null) {
                values.put(name, value);
            }
        });
        return values;
    }

    private @Nullable Object value(Place place, Problems problems) {
        if (place.node() instanceof Node.Fields) {
            return read(place, problems);
        }
        if (place.node() instanceof Node.Items items) {
            List<Object> list = new ArrayList<>();
            for (int i = 0; i < items.nodes().size(); i++) {
                Object value = value(place.item(i, items.nodes().get(i)), problems);
                if (value != null) {
                    list.add(value);
                }
            }
            return list;
        }
        Node.Scalar scalar = (Node.Scalar) place.node();
        return switch (scalar.kind()) {
            case TEXT, CELL -> scalar.text();
            case FLAG -> Boolean.parseBoolean(scalar.text());
            case NUMBER -> number(place, problems);
            case NOTHING -> {
                problems.add(place.wrong("left out, or a value"));
                yield null;
            }
        };
    }

    private static @Nullable Object number(Place place, Problems problems) {
        Double value = Numeral.anything().read(place, problems);
        if (value == null || value != Math.rint(value) || Math.abs(value) > Integer.MAX_VALUE) {
            return value;
        }
        return value.intValue();
    }

    @Override
    public String wanted() {
        return "an object";
    }

    @Override
    public Map<String, Object> schema() {
        return JsonObject.of("type", "object");
    }
}
