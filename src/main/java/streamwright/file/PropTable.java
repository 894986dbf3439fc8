package streamwright.file;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Reads a prop list (CSV). */
final class PropTable {
    private static final String ID = "id";

    private final PropRow row;
    private final String file;
    private final Problems problems;

    private PropTable(PropRow row, String file, Problems problems) {
        this.row = row;
        this.file = file;
        this.problems = problems;
    }

    static @Nullable PropList read(Path path, PropRow row, Problems problems) {
        if (Files.exists(path) && !Files.isDirectory(path) && !Files.isRegularFile(path)) {
            // a pipe might never end
            problems.add(new Problem(path.toString(), 0, 0, "", "a device or pipe", "must be a file"));
            return null;
        }
        try {
            List<List<Node.Scalar>> rows = Table.rows(Text.of(path), fault -> problems.add(fault.in(path.toString())));
            return new PropTable(row, path.toString(), problems).props(rows);
        } catch (Unreadable e) {
            problems.add(e.in(path.toString()));
            return null;
        }
    }

    private @Nullable PropList props(List<List<Node.Scalar>> rows) {
        if (rows.isEmpty()) {
            throw new Unreadable(1, 1, "an empty file", "must have a header row");
        }
        List<Node.Scalar> header = rows.get(0);
        List<String> lacking = lacking(header);
        refuseBadColumns(header);
        if (lacking.contains(ID)) {
            // without names the rows cannot be told apart
            return null;
        }
        List<Node> items = new ArrayList<>();
        for (List<Node.Scalar> cells : rows.subList(1, rows.size())) {
            items.add(object(header, cells, lacking));
        }
        Node list = new Node.Items(items, header.get(0).line(), header.get(0).column());
        return new PropListShape(row).read(new Place(file, list, null, "props"), problems);
    }

    private List<String> lacking(List<Node.Scalar> header) {
        List<String> names = header.stream().map(Node.Scalar::text).toList();
        return row.requiredNames().stream()
                .filter(name -> !names.contains(name))
                .toList();
    }

    private void refuseBadColumns(List<Node.Scalar> header) {
        Map<String, Node.Scalar> seen = new LinkedHashMap<>();
        for (Node.Scalar cell : header) {
            Node.Scalar first = seen.putIfAbsent(cell.text(), cell);
            if (first != null) {
                add(cell, "the column " + Quote.plain(cell.text()) + " a second time", "must be given once");
            } else if (!row.names().contains(cell.text())) {
                String wanted = Nearest.instead(cell.text(), row.names(), problems);
                add(cell, "an unknown column " + Quote.quoted(cell.text()), wanted);
            }
        }
        for (String name : lacking(header)) {
            add(header.get(0), "no column " + name, "must have one");
        }
    }

    private void add(Node.Scalar cell, String found, String wanted) {
        problems.add(new Problem(file, cell.line(), cell.column(), "", found, wanted));
    }

    /**
     * A row as an object; an empty cell is a field that is not given. What the header lacks was told of the header, so
     * that a stand-in keeps each row from telling it again; the list is not used then.
     */
    private Node object(List<Node.Scalar> header, List<Node.Scalar> cells, List<String> lacking) {
        Map<String, Node.Entry> entries = new LinkedHashMap<>();
        int line = cells.get(0).line();
        int column = cells.get(0).column();
        for (String name : lacking) {
            Node standIn = new Node.Scalar(Node.Kind.CELL, "1", line, column);
            entries.put(name, new Node.Entry(standIn, line, column));
        }
        for (int i = 0; i < cells.size(); i++) {
            Node.Scalar cell = cells.get(i);
            if (i >= header.size()) {
                if (!cell.text().isEmpty()) {
                    add(cell, cell.described(), "must be left out: the header has " + header.size() + " columns");
                }
            } else if (!cell.text().isEmpty()
                    && row.names().contains(header.get(i).text())) {
                entries.putIfAbsent(header.get(i).text(), new Node.Entry(cell, cell.line(), cell.column()));
            }
        }
        return new Node.Fields(entries, line, column);
    }
}
