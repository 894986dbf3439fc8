package streamwright.file;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A list. Elements with problems are left out, so that what is right can still be checked against the rest.
 *
 * @param unique the field that no two elements may share, or null
 * @param things what it holds, in the plural
 */
record Items<T>(Shape<T> element, int least, @Nullable String unique, String things) implements Shape<List<T>> {
    static <T> Items<T> of(Shape<T> element, int least, String things) {
        return new Items<>(element, least, null, things);
    }

    static <T> Items<T> unique(Shape<T> element, int least, String unique, String things) {
        return new Items<>(element, least, unique, things);
    }

    @Override
    public @Nullable List<T> read(Place place, Problems problems) {
        if (!(place.node() instanceof Node.Items items) || items.nodes().size() < least) {
            problems.add(place.wrong(wanted()));
            return null;
        }
        List<T> values = new ArrayList<>(items.nodes().size());
        Map<String, Node> seen = new HashMap<>();
        int index = 0;
        for (Node node : items.nodes()) {
            Place at = place.item(index++, node);
            T value = element.read(at, problems);
            if (value != null) {
                values.add(value);
            }
            if (unique != null) {
                refuseTwin(at, unique, seen, problems);
            }
        }
        return values;
    }

    /** Whether no element of a list was left out for its problems. */
    static boolean whole(Place place, List<?> read) {
        return place.node() instanceof Node.Items items && items.nodes().size() == read.size();
    }

    private static void refuseTwin(Place at, String key, Map<String, Node> seen, Problems problems) {
        if (!(at.node() instanceof Node.Fields fields)) {
            return;
        }
        Node.Entry entry = fields.entries().get(key);
        String text = entry == null ? null : Words.text(entry.value());
        if (entry == null || text == null) {
            return;
        }
        Node first = seen.putIfAbsent(text, entry.value());
        if (first != null) {
            problems.add(
                    at.field(key, entry.value()),
                    Quote.quoted(text) + " a second time",
                    "must differ from that on line " + first.line());
        }
    }

    @Override
    public String wanted() {
        String count = least == 0 ? "" : least == 1 ? "one or more " : least + " or more ";
        return "a list of " + count + things;
    }

    @Override
    public Map<String, Object> schema() {
        Map<String, Object> schema = JsonObject.of("type", "array", "items", element.schema());
        if (least > 0) {
            schema.put("minItems", least);
        }
        return schema;
    }
}
