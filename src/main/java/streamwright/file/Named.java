package streamwright.file;

import java.util.List;
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
            problems.add(place.wrong(wanted() + Nearest.hint(name, known.keySet(), problems)));
        }
        return value;
    }

    @Override
    public String wanted() {
        return "the name of " + thing;
    }

    @Override
    public Map<String, Object> schema() {
        // what a yard's own folder adds is not known where nothing is
        return known.isEmpty() ? Words.ID.schema() : JsonObject.of("enum", List.copyOf(known.keySet()));
    }
}
