package streamwright.file;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** One word with a meaning of its own, or a value that is no text. */
record OrWord<T>(Shape<? extends T> value, String word, T meaning) implements Shape<T> {
    @Override
    public @Nullable T read(Place place, Problems problems) {
        String text = Words.text(place.node());
        if (word.equals(text)) {
            return meaning;
        }
        if (text != null) {
            problems.add(place.wrong(wanted()));
            return null;
        }
        return value.read(place, problems);
    }

    @Override
    public String wanted() {
        return value.wanted() + ", or " + word;
    }

    @Override
    public Map<String, Object> schema() {
        return JsonObject.of("anyOf", List.of(value.schema(), JsonObject.of("const", word)));
    }
}
