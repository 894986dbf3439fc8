package streamwright.file;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** An object with declared fields. A subclass declares them, checks them against one another, and builds the value. */
abstract class Struct<T> implements Shape<T> {
    private final String thing;
    private final Map<String, Field<?>> fields = new LinkedHashMap<>();

    /**
     * @param thing what the object is, with its article
     */
    Struct(String thing) {
        this.thing = thing;
    }

    /**
     * A field.
     *
     * @param fallback its value where it is not given; null for none
     * @param meaning one line for the schema
     */
    record Field<V>(
            String name,
            Shape<V> shape,
            boolean required,
            @Nullable V fallback,
            String meaning) {}

    protected final <V> Field<V> required(String name, Shape<V> shape, String meaning) {
        return declare(new Field<>(name, shape, true, null, meaning));
    }

    protected final <V> Field<V> optional(String name, Shape<V> shape, String meaning) {
        return declare(new Field<>(name, shape, false, null, meaning));
    }

    protected final <V> Field<V> optional(String name, Shape<V> shape, V fallback, String meaning) {
        return declare(new Field<>(name, shape, false, fallback, meaning));
    }

    private <V> Field<V> declare(Field<V> field) {
        fields.put(field.name(), field);
        return field;
    }

    /** Checks fields against one another; what is missing or wrong by itself is already told, and absent here. */
    protected void check(Values values, Problems problems) {}

    /** Called only where nothing at all is wrong within the object. */
    protected abstract T build(Values values);

    @Override
    public final @Nullable T read(Place place, Problems problems) {
        if (!(place.node() instanceof Node.Fields object)) {
            problems.add(place.wrong(wanted()));
            return null;
        }
        long before = problems.count();
        Values values = new Values(place);
        for (Map.Entry<String, Node.Entry> entry : object.entries().entrySet()) {
            Field<?> field = fields.get(entry.getKey());
            if (field == null) {
                refuseUnknown(place, entry.getKey(), entry.getValue(), problems);
            } else if (!OrNothing.skips(field.shape(), entry.getValue().value())) {
                values.take(field, place.field(field.name(), entry.getValue().value()), problems);
            }
        }
        for (Field<?> field : fields.values()) {
            if (field.required() && !object.entries().containsKey(field.name())) {
                refuseLack(field, place, problems);
            }
        }
        check(values, problems);
        return values.failed() || problems.count() > before ? null : build(values);
    }

    /** Tells that an object lacks a field. */
    protected static void refuseLack(Field<?> field, Place object, Problems problems) {
        problems.add(
                object,
                "no field " + field.name(),
                "must have one: " + field.shape().wanted());
    }

    private void refuseUnknown(Place place, String name, Node.Entry entry, Problems problems) {
        String wanted = Nearest.instead(name, fields.keySet(), problems);
        String path = place.field(Quote.plain(name), entry.value()).path();
        problems.add(new Problem(place.file(), entry.line(), entry.column(), path, "an unknown field", wanted));
    }

    /** The names of all fields in the order in which they were declared. */
    final Set<String> names() {
        return Collections.unmodifiableSet(fields.keySet());
    }

    /** The names of those that must be given. */
    final List<String> requiredNames() {
        return fields.values().stream()
                .filter(Field::required)
                .<String>map(Field::name)
                .toList();
    }

    @Override
    public String wanted() {
        List<String> needed = requiredNames();
        return thing
                + (needed.isEmpty() ? ": {" + String.join(", ", names()) + "}" : " with " + String.join(", ", needed));
    }

    /** What the schema says beside the single fields. */
    protected Map<String, Object> schemaRules() {
        return Map.of();
    }

    /** For a schema rule: each group of fields as being given whole. */
    protected static List<Map<String, Object>> given(List<List<Field<?>>> groups) {
        return groups.stream()
                .map(group -> JsonObject.of(
                        "required", group.stream().map(Field::name).toList()))
                .toList();
    }

    @Override
    public Map<String, Object> schema() {
        Map<String, Object> properties = new LinkedHashMap<>();
        List<String> required = requiredNames();
        for (Field<?> field : fields.values()) {
            Map<String, Object> schema = new LinkedHashMap<>(field.shape().schema());
            schema.put("description", field.meaning());
            if (field.fallback() instanceof Number || field.fallback() instanceof Boolean) {
                schema.put("default", field.fallback());
            } else if (field.fallback() instanceof Enum<?> word) {
                schema.put("default", Choice.word(word));
            }
            properties.put(field.name(), schema);
        }
        Map<String, Object> schema = JsonObject.of("type", "object", "properties", properties);
        if (!required.isEmpty()) {
            schema.put("required", required);
        }
        schema.put("additionalProperties", false);
        schema.putAll(schemaRules());
        return schema;
    }
}
