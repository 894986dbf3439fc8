package streamwright.file;

import java.util.List;
import java.util.Map;

/** A value of a file as it stands there, before anything is asked of it. Lines and columns are 1-based. */
sealed interface Node {
    int line();

    int column();

    /** What a scalar says of its own type. */
    enum Kind {
        TEXT,
        NUMBER,
        FLAG,
        NOTHING,
        /** A cell of a table, which may be read as text or as a number. */
        CELL
    }

    record Scalar(Kind kind, String text, int line, int column) implements Node {}

    record Items(List<Node> nodes, int line, int column) implements Node {}

    /** An object: its fields in the order of the file. */
    record Fields(Map<String, Entry> entries, int line, int column) implements Node {}

    /** A field; line and column are those of its name. */
    record Entry(Node value, int line, int column) {}

    /** Says to a person what stands here. */
    default String described() {
        if (this instanceof Items items) {
            return items.nodes().isEmpty()
                    ? "an empty list"
                    : "a list of " + items.nodes().size();
        }
        if (this instanceof Fields) {
            return "an object";
        }
        Scalar scalar = (Scalar) this;
        return switch (scalar.kind()) {
            case NOTHING -> "nothing";
            case TEXT -> Quote.quoted(scalar.text());
            case NUMBER, FLAG, CELL -> Quote.plain(scalar.text());
        };
    }
}
