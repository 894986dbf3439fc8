package streamwright.report.sheet;

import java.util.List;

/**
 * A list with a heading.
 *
 * @param name of the file and of the spreadsheet's sheet
 * @param rows cells that are text, numbers, or empty text; each row as long as the columns
 */
public record Sheet(String name, List<String> columns, List<List<Object>> rows) {
    public Sheet {
        columns = List.copyOf(columns);
        rows = rows.stream().map(List::copyOf).toList();
        for (List<Object> row : rows) {
            if (row.size() != columns.size()) {
                throw new IllegalArgumentException(
                        name + ": a row of " + row.size() + " cells under " + columns.size() + " columns");
            }
        }
    }
}
