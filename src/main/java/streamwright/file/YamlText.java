package streamwright.file;

import java.io.StringReader;
import java.util.Optional;
import java.util.regex.Pattern;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.ReaderException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/**
 * The part of YAML 1.2 that means one thing to everybody: one document, no anchors, aliases or tags, numbers in decimal
 * without leading zeros, {@code true} and {@code false} as the only flags.
 */
final class YamlText {
    static final Pattern NUMBER = Pattern.compile("[-+]?(?:(?:0|[1-9]\\d*)(?:\\.\\d*)?|\\.\\d+)(?:[eE][-+]?\\d+)?");
    private static final int LARGEST_BUFFER = 1 << 20;

    private final TreeBuilder tree;
    private boolean document;

    private YamlText(TreeBuilder tree) {
        this.tree = tree;
    }

    static Node parse(String text, TreeBuilder tree) {
        YamlText yaml = new YamlText(tree);
        try {
            for (Event event : new Parse(settings(text)).parseReader(new StringReader(text))) {
                yaml.take(event);
            }
        } catch (MarkedYamlEngineException e) {
            throw unreadable(e.getProblemMark().or(e::getContextMark), e.getProblem());
        } catch (ReaderException e) {
            throw unreadable(text, e);
        } catch (YamlEngineException e) {
            throw unreadable(Optional.empty(), String.valueOf(e.getMessage()));
        }
        return tree.root();
    }

    /** The parser's time is quadratic in the buffers that one token fills, so these must not be small. */
    private static LoadSettings settings(String text) {
        return LoadSettings.builder()
                .setCodePointLimit(Integer.MAX_VALUE)
                .setBufferSize(Math.max(16, Math.min(text.length(), LARGEST_BUFFER)))
                .build();
    }

    private void take(Event event) {
        int line = line(event.getStartMark());
        int column = column(event.getStartMark());
        if (event instanceof NodeEvent node) {
            refuseCleverness(node, line, column);
        }
        switch (event.getEventId()) {
            case DocumentStart -> {
                if (document) {
                    throw new Unreadable(line, column, "a second document", "must be one document");
                }
                document = true;
            }
            case MappingStart -> tree.openObject(line, column);
            case SequenceStart -> tree.openList(line, column);
            case MappingEnd, SequenceEnd -> tree.close();
            case Scalar -> scalar((ScalarEvent) event, line, column);
            default -> {
                // starts and ends of the stream, and comments
            }
        }
    }

    private void scalar(ScalarEvent scalar, int line, int column) {
        String text = scalar.getValue();
        if (tree.wantsName()) {
            tree.name(text, line, column);
        } else {
            tree.scalar(scalar.isPlain() ? plainKind(text) : Node.Kind.TEXT, text, line, column);
        }
    }

    private static Node.Kind plainKind(String text) {
        return switch (text) {
            case "", "~", "null" -> Node.Kind.NOTHING;
            case "true", "false" -> Node.Kind.FLAG;
            default -> NUMBER.matcher(text).matches() ? Node.Kind.NUMBER : Node.Kind.TEXT;
        };
    }

    private static void refuseCleverness(NodeEvent event, int line, int column) {
        if (event instanceof AliasEvent) {
            throw new Unreadable(line, column, "the alias *" + anchor(event), "must be written out");
        }
        if (event.getAnchor().isPresent()) {
            throw new Unreadable(line, column, "the anchor &" + anchor(event), "must be left out");
        }
        Optional<String> tag = event instanceof ScalarEvent scalar
                ? scalar.getTag()
                : event instanceof CollectionStartEvent start ? start.getTag() : Optional.empty();
        if (tag.isPresent()) {
            throw new Unreadable(line, column, "the tag " + Quote.plain(tag.get()), "must be left out");
        }
    }

    private static String anchor(NodeEvent event) {
        return event.getAnchor().map(anchor -> Quote.plain(anchor.getValue())).orElse("");
    }

    private static int line(Optional<Mark> mark) {
        return mark.map(m -> m.getLine() + 1).orElse(1);
    }

    private static int column(Optional<Mark> mark) {
        return mark.map(m -> m.getColumn() + 1).orElse(1);
    }

    private static Unreadable unreadable(Optional<Mark> mark, String problem) {
        return new Unreadable(
                line(mark), column(mark), "no YAML (" + Quote.plain(problem, 200) + ")", "must be valid YAML");
    }

    private static Unreadable unreadable(String text, ReaderException e) {
        String before = text.substring(0, text.offsetByCodePoints(0, e.getPosition()));
        int line = 1 + (int) before.chars().filter(c -> c == '\n').count();
        int column = before.length() - before.lastIndexOf('\n');
        String found = String.format("the character U+%04X", e.getCodePoint());
        return new Unreadable(line, column, found, "must be printable text");
    }
}
