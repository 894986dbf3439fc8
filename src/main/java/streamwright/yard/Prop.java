package streamwright.yard;

import java.util.List;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;

/**
 * A thing that shows light: pixel strings, or mains outputs, or one panel.
 *
 * @param pixel kind of its pixels; null for outputs
 * @param tailGiven whether the file says where the strings end
 * @param copyOf the prop whose picture it repeats, or null
 * @param channel with kept channels: of its first string
 * @param controller with kept channels and several controllers: the one that counts; else null
 * @param outputs number of mains outputs, 0 for none
 * @param at place of outputs or panel; null for strings
 */
public record Prop(
        String id,
        @Nullable PixelKind pixel,
        Follow follow,
        boolean tailGiven,
        @Nullable String copyOf,
        OptionalInt channel,
        @Nullable String controller,
        List<PixelString> strings,
        int outputs,
        @Nullable Panel panel,
        @Nullable Point at) {
    public Prop {
        strings = List.copyOf(strings);
        int kinds = (strings.isEmpty() ? 0 : 1) + (outputs > 0 ? 1 : 0) + (panel == null ? 0 : 1);
        if (kinds != 1) {
            throw new IllegalArgumentException(id + ": a prop has strings, outputs or a panel, exactly one of them");
        }
    }

    public static Prop ofStrings(String id, PixelKind pixel, Follow follow, List<PixelString> strings) {
        return new Prop(id, pixel, follow, true, null, OptionalInt.empty(), null, strings, 0, null, null);
    }

    public boolean several() {
        return strings.size() > 1;
    }
}
