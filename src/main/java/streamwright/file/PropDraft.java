package streamwright.file;

import java.util.List;
import org.jspecify.annotations.Nullable;
import streamwright.yard.Follow;
import streamwright.yard.Panel;
import streamwright.yard.PixelKind;
import streamwright.yard.Point;

/**
 * A prop as its file says it, right by itself but not yet held against the other props.
 *
 * @param pixel null for outputs, and for a copy that does not say it
 * @param channelPlace where the channel stands, else the prop itself; the others likewise
 * @param outputs 0 for none
 */
record PropDraft(
        Place place,
        String id,
        @Nullable PixelKind pixel,
        Follow follow,
        @Nullable String copyOf,
        Place copyOfPlace,
        @Nullable Integer channel,
        Place channelPlace,
        @Nullable String controller,
        Place controllerPlace,
        List<StringRun> runs,
        int outputs,
        @Nullable Panel panel,
        @Nullable Point at) {
    PropDraft {
        runs = List.copyOf(runs);
    }

    long strings() {
        return runs.stream().mapToLong(StringRun::count).sum();
    }

    /** Whether some string may come after another one, or before. */
    boolean followed() {
        return follow == Follow.ANY || (follow == Follow.PROP && strings() > 1);
    }

    boolean tailGiven() {
        return runs.stream().allMatch(run -> run.tail() != null);
    }
}
