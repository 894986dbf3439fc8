package streamwright.file;

import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The name of something that is known already, read to the thing itself.
 *
 * @param thing what it is, with its article
 */
record Named<T>(String thing, Map<String, T> known) implements Shape<T> {
    @Override
    public @Nullable T read(Place place, Problems problems) {
        String name = Words.ID.read(place, problems);
        if (name == null) {
            return null;
        }
        T value = known.get(name);
        if (value == null) {
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
