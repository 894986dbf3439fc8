package streamwright.report.sheet;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import streamwright.report.Cautions;

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

    /** With one more column, whose first cell is the caution where power or mains stand in the list. */
    Sheet cautioned(boolean power) {
        List<List<Object>> more = IntStream.range(0, rows.size())
                .mapToObj(row -> beside(rows.get(row), power && row == 0 ? Cautions.line() : ""))
                .toList();
        return new Sheet(name, beside(columns, "caution"), more);
    }

    private static <T> List<T> beside(List<T> cells, T last) {
        return Stream.concat(cells.stream(), Stream.of(last)).toList();
    }
}
