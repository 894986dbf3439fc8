package streamwright.file;

import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The name of something that is known already, read to the thing itself.
 *
 * @param thing what it is, with its article
 * @param whole whether nothing is missing of what is known; what is missing is told elsewhere
 */
record Named<T>(String thing, Map<String, T> known, boolean whole) implements Shape<T> {
    @Override
    public @Nullable T read(Place place, Problems problems) {
        String name = Words.ID.read(place, problems);
        if (name == null) {
            return null;
        }
        T value = known.get(name);
        if (value == null && whole) {
            problems.add(place.wrong(wanted() + Nearest.hint(name, known.keySet())));
        }
        return value;
    }

    @Override
    public String wanted() {
        return "the name of " + thing;
    }

    @Override
    public Map<String, Object> schema() {
        return Words.ID.schema();
    }
}
