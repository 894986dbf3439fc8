package streamwright.file;

import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** What a value of a file may look like: reads it, says it in words, and says it as JSON Schema. */
interface Shape<T> {
    /** The value, or null where problems were added. */
    @Nullable
    T read(Place place, Problems problems);

    /** After "must be", e.g. {@code a whole number from 1 to 1000000}. */
    String wanted();

    /** JSON Schema (2020-12) of the value. */
    Map<String, Object> schema();

    /** The same looks, read to another type; the function must take every value of this shape. */
    default <U> Shape<U> map(Function<? super T, U> function) {
        Shape<T> from = this;
        return new Shape<>() {
            @Override
            public @Nullable U read(Place place, Problems problems) {
                T value = from.read(place, problems);
                return value == null ? null : function.apply(value);
            }

            @Override
            public String wanted() {
                return from.wanted();
            }

            @Override
            public Map<String, Object> schema() {
                return from.schema();
            }
        };
    }
}
