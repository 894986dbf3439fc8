package streamwright.file;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Puts the events of a parser together to a tree, within bounds that keep any file from filling the memory. */
final class TreeBuilder {
    private static final int MOST_NODES = 6_000_000;
    private static final int DEEPEST = 64;

    private final String file;
    private final Problems problems;
    private final Deque<Open> open = new ArrayDeque<>();
    private int nodes;
    private @Nullable Node root;

    TreeBuilder(String file, Problems problems) {
        this.file = file;
        this.problems = problems;
    }

    /** A list or object that is not closed yet; exactly one of items and entries is given. */
    private static final class Open {
        final Node node;
        final @Nullable List<Node> items;
        final @Nullable Map<String, Node.Entry> entries;

        @Nullable
        String key;

        int keyLine;
        int keyColumn;

        Open(Node node, @Nullable List<Node> items, @Nullable Map<String, Node.Entry> entries) {
            this.node = node;
            this.items = items;
            this.entries = entries;
        }
    }

    void openList(int line, int column) {
        List<Node> items = new ArrayList<>(3);
        open(new Open(new Node.Items(items, line, column), items, null));
    }

    void openObject(int line, int column) {
        Map<String, Node.Entry> entries = new LinkedHashMap<>();
        open(new Open(new Node.Fields(entries, line, column), null, entries));
    }

    private void open(Open next) {
        Node node = next.node;
        if (wantsName()) {
            String found = node instanceof Node.Items ? "a list" : "an object";
            throw new Unreadable(node.line(), node.column(), found, "must be the name of a field");
        }
        put(node);
        if (open.size() == DEEPEST) {
            throw new Unreadable(
                    node.line(), node.column(), "deeper nesting", "must be at most " + DEEPEST + " levels deep");
        }
        open.push(next);
    }

    void close() {
        open.pop();
    }

    /** Whether the next scalar is the name of a field. */
    boolean wantsName() {
        Open in = open.peek();
        return in != null && in.entries != null && in.key == null;
    }

    void name(String name, int line, int column) {
        Open in = open.element();
        in.key = name;
        in.keyLine = line;
        in.keyColumn = column;
    }

    void scalar(Node.Kind kind, String text, int line, int column) {
        put(new Node.Scalar(kind, text, line, column));
    }

    private void put(Node node) {
        if (++nodes > MOST_NODES) {
            throw new Unreadable(
                    node.line(), node.column(), "more values", "must be at most " + MOST_NODES + " values in a file");
        }
        Open in = open.peek();
        if (in == null) {
            root = node;
        } else if (in.items != null) {
            in.items.add(node);
        } else if (in.entries != null && in.key != null) {
            putField(in.entries, in.key, new Node.Entry(node, in.keyLine, in.keyColumn));
            in.key = null;
        }
    }

    private void putField(Map<String, Node.Entry> entries, String key, Node.Entry entry) {
        Node.Entry first = entries.putIfAbsent(key, entry);
        if (first != null) {
            String found = Quote.quoted(key) + " a second time";
            String wanted = "must be given once, and is on line " + first.line();
            problems.add(new Problem(file, entry.line(), entry.column(), "", found, wanted));
        }
    }

    Node root() {
        if (root == null) {
            throw new Unreadable(1, 1, "an empty file", "must have contents");
        }
        return root;
    }
}
