package streamwright.report.sheet;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Collectors;

/** Comma-separated values as RFC 4180 has them; cells that a spreadsheet would take for formulas are made text. */
public final class Csv {
    private Csv() {}

    public static String text(Sheet sheet) {
        StringBuilder text = new StringBuilder(line(List.copyOf(sheet.columns())));
        sheet.rows().forEach(row -> text.append(line(row)));
        return text.toString();
    }

    private static String line(List<Object> cells) {
        return cells.stream().map(Csv::cell).collect(Collectors.joining(",", "", "\r\n"));
    }

    private static String cell(Object cell) {
        String text = cell instanceof BigDecimal figure
                ? figure.toPlainString()
                : cell instanceof Number ? cell.toString() : Cells.text(cell.toString());
        return text.chars().anyMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r')
                ? '"' + text.replace("\"", "\"\"") + '"'
                : text;
    }
}
