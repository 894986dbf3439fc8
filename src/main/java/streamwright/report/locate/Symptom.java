package streamwright.report.locate;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a helper would see at a string whose board has another ID set.
 *
 * @param ids that give this picture
 * @param switches of the ID where it is one alone, else null
 * @param sees {@code same picture twice}, {@code shifted}, {@code dark}, {@code wrong colours} or {@code no difference}
 * @param pixel position on its stream that the asked pixel would show; null where it would be dark
 * @param text one sentence
 */
public record Symptom(
        List<Integer> ids,
        @Nullable String switches,
        String sees,
        @Nullable Integer pixel,
        String text) {
    public static final String TWICE = "same picture twice";
    public static final String SHIFTED = "shifted";
    public static final String DARK = "dark";
    public static final String COLOURS = "wrong colours";
    public static final String SAME = "no difference";

    public Symptom {
        ids = List.copyOf(ids);
    }
}
