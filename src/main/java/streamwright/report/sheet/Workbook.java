package streamwright.report.sheet;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.dhatim.fastexcel.Worksheet;

/** Sheets as one spreadsheet file (Office Open XML). */
public final class Workbook {
    /** Wider columns push the others off the screen. */
    private static final int WIDEST = 48;

    private Workbook() {}

    /** The file's bytes; the same for the same sheets. */
    public static byte[] bytes(List<Sheet> sheets) {
        try {
            return Undated.book(dated(sheets));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static byte[] dated(List<Sheet> sheets) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (var book = new org.dhatim.fastexcel.Workbook(bytes, "streamwright", "1.0")) {
            for (Sheet sheet : sheets) {
                fill(book.newWorksheet(sheet.name()), sheet);
            }
        }
        return bytes.toByteArray();
    }

    private static void fill(Worksheet page, Sheet sheet) {
        for (int column = 0; column < sheet.columns().size(); column++) {
            String heading = sheet.columns().get(column);
            page.value(0, column, heading);
            page.style(0, column).bold().wrapText(true).set();
            page.width(column, width(sheet, column));
        }
        page.freezePane(0, 1);
        int at = 1;
        for (List<Object> row : sheet.rows()) {
            for (int column = 0; column < row.size(); column++) {
                Object cell = row.get(column);
                if (cell instanceof Number number) {
                    page.value(at, column, number);
                } else if (!cell.toString().isEmpty()) {
                    page.value(at, column, Cells.text(cell.toString()));
                    if (cell.toString().indexOf('\n') >= 0 || cell.toString().length() > WIDEST) {
                        page.style(at, column).wrapText(true).set();
                    }
                }
            }
            at++;
        }
        page.repeatRows(0);
        page.fitToWidth((short) 1);
        page.fitToHeight((short) 0);
    }

    private static int width(Sheet sheet, int column) {
        int widest = sheet.columns().get(column).length();
        for (List<Object> row : sheet.rows()) {
            for (String line : row.get(column).toString().split("\n", -1)) {
                widest = Math.max(widest, line.length());
            }
        }
        return Math.min(WIDEST, widest + 2);
    }
}
