package streamwright.file;

import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The fields of one object as they were read. */
final class Values {
    private final Place place;
    private final Map<String, Object> read = new HashMap<>();
    private boolean failed;
    private final Map<String, Place> places = new HashMap<>();

    Values(Place place) {
        this.place = place;
    }

    void take(Struct.Field<?> field, Place at, Problems problems) {
        places.put(field.name(), at);
        Object value = field.shape().read(at, problems);
        if (value == null) {
            failed = true;
        } else {
            read.put(field.name(), value);
        }
    }

    /** Whether a field that is given could not be read. */
    boolean failed() {
        return failed;
    }

    /** Whether the file gives the field, but wrongly. */
    boolean wrong(Struct.Field<?> field) {
        return given(field) && !read.containsKey(field.name());
    }

    /** Where the object stands. */
    Place place() {
        return place;
    }

    /** Where the field's value stands; the object where it is not given. */
    Place place(Struct.Field<?> field) {
        return places.getOrDefault(field.name(), place);
    }

    /** Whether the file gives the field, right or wrong. */
    boolean given(Struct.Field<?> field) {
        return places.containsKey(field.name());
    }

    /** The value or the fallback; null where the field is neither given rightly nor has one. */
    // only values of the field's own shape are put in
    @SuppressWarnings("unchecked")
    <V> @Nullable V find(Struct.Field<V> field) {
        Object value = read.get(field.name());
        return value == null ? field.fallback() : (V) value;
    }

    /** The value or the fallback of a field that is required or has one. */
    <V> V get(Struct.Field<V> field) {
        return get(field, find(field));
    }

    /** The value, else the one given here, which is told nowhere else. */
    <V> V get(Struct.Field<V> field, @Nullable V otherwise) {
        V value = find(field);
        V chosen = value == null ? otherwise : value;
        if (chosen == null) {
            throw new IllegalStateException("the field " + field.name() + " has no value");
        }
        return chosen;
    }
}
