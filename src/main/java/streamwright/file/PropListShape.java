package streamwright.file;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A list of props.
 *
 * @param prop looks of one
 */
record PropListShape(Struct<PropDraft> prop) implements Shape<PropList> {
    private Items<PropDraft> items() {
        return Items.unique(prop, 1, "id", "props");
    }

    @Override
    public @Nullable PropList read(Place place, Problems problems) {
        List<PropDraft> drafts = items().read(place, problems);
        return drafts == null ? null : new PropList(drafts, ids(place.node()));
    }

    /** Those that could be meant; a broken id is told already, and must not be shown as it stands. */
    private static Set<String> ids(Node node) {
        Set<String> ids = new LinkedHashSet<>();
        for (Node item : ((Node.Items) node).nodes()) {
            Node.Entry id =
                    item instanceof Node.Fields object ? object.entries().get("id") : null;
            String text = id == null ? null : Words.text(id.value());
            if (text != null && Words.ID.pattern().matcher(text).matches()) {
                ids.add(text);
            }
        }
        return ids;
    }

    @Override
    public String wanted() {
        return items().wanted();
    }

    @Override
    public Map<String, Object> schema() {
        return items().schema();
    }
}
