package streamwright.report.page;

import java.util.List;
import java.util.Map;

/**
 * A plain table.
 *
 * @param columns headings; those that start with {@code >} are columns of figures, set to the right
 * @param rows as long as the columns
 */
public record Grid(List<String> columns, List<List<String>> rows) {
    public Grid {
        columns = List.copyOf(columns);
        rows = rows.stream().map(List::copyOf).toList();
    }

    /** The table as a part of a page, with what is to be said of it. */
    public Part part(String id, String heading, String sentence) {
        return Part.of(id, heading, "grid", Map.of("grid", this, "sentence", sentence));
    }

    boolean figures(int column) {
        return columns.get(column).startsWith(">");
    }

    String heading(int column) {
        return figures(column) ? columns.get(column).substring(1) : columns.get(column);
    }
}
