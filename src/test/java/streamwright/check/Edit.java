package streamwright.check;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Changes one field deep inside records and lists, e.g. {@code boards.0.ports.1.startPixel}. */
final class Edit {
    private Edit() {}

    static <R> R set(R root, String path, @Nullable Object value) {
        return change(root, path, old -> value);
    }

    /** Changes a list, e.g. {@code boards.0.ports}. */
    static <R> R list(R root, String path, UnaryOperator<List<Object>> edit) {
        return change(root, path, old -> edit.apply(new ArrayList<>((List<?>) old)));
    }

    /** Puts one value for another wherever it stands. */
    static <R> R replace(R root, Object old, Object value) {
        return each(root, part -> old.equals(part) ? value : part);
    }

    /** Changes every value, from the outside in; what is changed is not looked into again. */
    static <R> R each(R root, Change change) {
        return cast(changedEach(root, change));
    }

    private static @Nullable Object changedEach(@Nullable Object at, Change change) {
        Object changed = change.of(at);
        if (changed != at) {
            return changed;
        }
        if (at instanceof List<?> list) {
            return list.stream().map(item -> changedEach(item, change)).toList();
        }
        return at instanceof Record record ? copy(record, (name, part) -> changedEach(part, change)) : at;
    }

    static <R> R change(R root, String path, Change change) {
        return cast(changed(root, List.of(path.split("\\.")), change));
    }

    /** A new value for an old one. */
    interface Change {
        @Nullable
        Object of(@Nullable Object old);
    }

    private static @Nullable Object changed(@Nullable Object at, List<String> path, Change change) {
        if (path.isEmpty()) {
            return change.of(at);
        }
        String step = path.get(0);
        List<String> rest = path.subList(1, path.size());
        if (at instanceof List<?> list) {
            List<Object> copy = new ArrayList<>(list);
            int index = Integer.parseInt(step);
            copy.set(index, changed(copy.get(index), rest, change));
            return copy;
        }
        if (at instanceof Record record
                && Stream.of(record.getClass().getRecordComponents())
                        .anyMatch(part -> part.getName().equals(step))) {
            return copy(record, (name, part) -> name.equals(step) ? changed(part, rest, change) : part);
        }
        throw new IllegalArgumentException("no " + step + " in " + at);
    }

    private interface Part {
        @Nullable
        Object of(String name, @Nullable Object part);
    }

    static @Nullable Object part(Record record, RecordComponent part) {
        try {
            part.getAccessor().setAccessible(true);
            return part.getAccessor().invoke(record);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Object copy(Record record, Part edit) {
        try {
            RecordComponent[] parts = record.getClass().getRecordComponents();
            Object[] values = new Object[parts.length];
            Class<?>[] types = new Class<?>[parts.length];
            for (int i = 0; i < parts.length; i++) {
                values[i] = edit.of(parts[i].getName(), part(record, parts[i]));
                types[i] = parts[i].getType();
            }
            var constructor = record.getClass().getDeclaredConstructor(types);
            constructor.setAccessible(true);
            return constructor.newInstance(values);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }

    @SuppressWarnings({"unchecked", "TypeParameterUnusedInFormals"})
    private static <R> R cast(@Nullable Object value) {
        return (R) Objects.requireNonNull(value);
    }
}
