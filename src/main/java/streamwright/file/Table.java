package streamwright.file;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/** Splits a table (RFC 4180; comma, semicolon or tab) into cells that know where they stand. */
final class Table {
    private static final int MOST_CELLS = 4_000_000;

    private final String text;
    private final char separator;
    private final Consumer<Unreadable> faults;
    private int at;
    private int line = 1;
    private int lineStart;
    private int cells;

    private Table(String text, Consumer<Unreadable> faults) {
        this.text = text;
        this.separator = separator(text);
        this.faults = faults;
    }

    /**
     * The rows, empty lines left out.
     *
     * @param faults takes each cell whose quotes are wrong; the cell is then read as if the missing quote stood at its end
     */
    static List<List<Node.Scalar>> rows(String text, Consumer<Unreadable> faults) {
        Table table = new Table(text, faults);
        List<List<Node.Scalar>> rows = new ArrayList<>();
        while (table.at < text.length()) {
            List<Node.Scalar> row = table.row();
            if (row.size() > 1 || !row.get(0).text().isEmpty()) {
                rows.add(row);
            }
        }
        return rows;
    }

    /** The one of the three that the header has most of. */
    private static char separator(String text) {
        String header = text.lines().findFirst().orElse("");
        char best = ',';
        long most = 0;
        for (char candidate : new char[] {',', ';', '\t'}) {
            long count = header.chars().filter(c -> c == candidate).count();
            if (count > most) {
                best = candidate;
                most = count;
            }
        }
        return best;
    }

    private List<Node.Scalar> row() {
        List<Node.Scalar> row = new ArrayList<>();
        while (true) {
            row.add(cell());
            if (at == text.length()) {
                return row;
            }
            char end = text.charAt(at++);
            if (end == separator) {
                continue;
            }
            if (end == '\r' && at < text.length() && text.charAt(at) == '\n') {
                at++;
            }
            newLine();
            return row;
        }
    }

    private void newLine() {
        line++;
        lineStart = at;
    }

    /** Leaves off at the separator or line end behind the cell. */
    private Node.Scalar cell() {
        while (at < text.length() && text.charAt(at) == ' ' && separator != ' ') {
            at++;
        }
        if (++cells > MOST_CELLS) {
            throw new Unreadable(line, 1, "more cells", "must be at most " + MOST_CELLS + " cells in a file");
        }
        int cellLine = line;
        int column = at - lineStart + 1;
        boolean quoted = at < text.length() && text.charAt(at) == '"';
        String content = quoted ? quoted(cellLine, column) : bare();
        return new Node.Scalar(Node.Kind.CELL, content, cellLine, column);
    }

    private String bare() {
        int start = at;
        while (at < text.length() && !ends(text.charAt(at))) {
            at++;
        }
        return text.substring(start, at).strip();
    }

    private boolean ends(char c) {
        return c == separator || c == '\n' || c == '\r';
    }

    private String quoted(int cellLine, int column) {
        int start = at + 1;
        StringBuilder content = new StringBuilder();
        int from = lineStart;
        for (at++; at < text.length(); at++) {
            char c = text.charAt(at);
            if (c != '"') {
                content.append(c);
            } else if (at + 1 < text.length() && text.charAt(at + 1) == '"') {
                content.append(text.charAt(at++));
            } else {
                at++;
                String rest = bare();
                if (rest.isEmpty()) {
                    return content.toString();
                }
                String found = Quote.plain(rest) + " behind a quoted cell";
                faults.accept(new Unreadable(cellLine, column, found, "must end there"));
                return line == cellLine ? content.toString() : unquoted(start, cellLine, from);
            }
            if (c == '\n') {
                line++;
                lineStart = at + 1;
            }
        }
        faults.accept(new Unreadable(cellLine, column, "a quote that does not end", "must end with another quote"));
        return unquoted(start, cellLine, from);
    }

    /** Goes back to what stands behind a quote: lines that it would swallow have mistakes of their own to tell. */
    private String unquoted(int start, int cellLine, int from) {
        at = start;
        line = cellLine;
        lineStart = from;
        return bare();
    }
}
