package streamwright.file;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** One of a few words. */
record Choice<T>(Map<String, T> words) implements Shape<T> {
    static Choice<String> of(String... words) {
        Map<String, String> same = new LinkedHashMap<>();
        for (String word : words) {
            same.put(word, word);
        }
        return new Choice<>(same);
    }

    /** The names of an enum in lower case. */
    static <E extends Enum<E>> Choice<E> of(Class<E> type) {
        Map<String, E> words = new LinkedHashMap<>();
        for (E value : type.getEnumConstants()) {
            words.put(word(value), value);
        }
        return new Choice<>(words);
    }

    static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }

    @Override
    public @Nullable T read(Place place, Problems problems) {
        String text = Words.text(place.node());
        T value = text == null ? null : words.get(text);
        if (value == null) {
            problems.add(place.wrong(wanted()));
        }
        return value;
    }

    @Override
    public String wanted() {
        return words.size() == 1 ? words.keySet().iterator().next() : "one of " + String.join(", ", words.keySet());
    }

    @Override
    public Map<String, Object> schema() {
        return JsonObject.of("enum", List.copyOf(words.keySet()));
    }
}
