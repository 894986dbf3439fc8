package streamwright.cli;

import com.github.freva.asciitable.AsciiTable;
import com.github.freva.asciitable.Column;
import com.github.freva.asciitable.HorizontalAlign;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** A table of text for a terminal: one heading line, then rows; figures to the right. */
final class Table {
    private final Column[] columns;
    private final List<Object[]> rows = new ArrayList<>();

    /** @param headings one a column; those that start with {@code >} are columns of figures, set to the right */
    Table(String... headings) {
        columns = new Column[headings.length];
        for (int i = 0; i < headings.length; i++) {
            boolean figures = headings[i].startsWith(">");
            var align = figures ? HorizontalAlign.RIGHT : HorizontalAlign.LEFT;
            columns[i] = new Column()
                    .header(figures ? headings[i].substring(1) : headings[i])
                    .headerAlign(align)
                    .dataAlign(align)
                    .maxWidth(WIDEST);
        }
    }

    /** A sentence wider than this goes on in the next line of its cell. */
    private static final int WIDEST = 100;

    Table row(Object... cells) {
        rows.add(cells);
        return this;
    }

    @Override
    public String toString() {
        String table = AsciiTable.builder()
                .border(AsciiTable.BASIC_ASCII_NO_DATA_SEPARATORS_NO_OUTSIDE_BORDER)
                .lineSeparator("\n")
                .data(columns, rows.toArray(Object[][]::new))
                .asString();
        return table.lines().map(String::stripTrailing).collect(Collectors.joining("\n"));
    }
}
