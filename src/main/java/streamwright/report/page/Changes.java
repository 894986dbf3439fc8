package streamwright.report.page;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import streamwright.plan.Change;
import streamwright.report.Figures;

/** The steps of a repair, in the order in which to do them, with a box to tick each. */
public final class Changes {
    private Changes() {}

    /**
     * A part of a page.
     *
     * @param work minutes in all, null where not counted
     * @param workBound no repair takes less; null where nothing is proved
     */
    public static Part part(
            String id, String heading, List<Change> changes, @Nullable Double work, @Nullable Double workBound) {
        Map<String, Object> values = new LinkedHashMap<>();
        values.put("changes", changes);
        values.put("sentence", sentence(changes.size(), work, workBound));
        return Part.of(id, heading, "changes", values);
    }

    private static String sentence(int count, @Nullable Double work, @Nullable Double workBound) {
        if (count == 0) {
            return "Nothing has to change.";
        }
        String text = Figures.count(count, "change");
        if (work != null) {
            text += ", " + Figures.plain(work) + " minutes of work in all";
        }
        if (workBound != null) {
            text += "; no repair takes less than " + Figures.plain(workBound) + " minutes";
        }
        return text + ".";
    }
}
