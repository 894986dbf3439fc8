package streamwright.file;

import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.json.JsonFactory;

/** JSON by the letter (RFC 8259), one value in a file. */
final class JsonText {
    private static final JsonFactory FACTORY = JsonFactory.builder().build();

    private JsonText() {}

    static Node parse(String text, TreeBuilder tree) {
        try (JsonParser parser = FACTORY.createParser(ObjectReadContext.empty(), text)) {
            int depth = 0;
            boolean ended = false;
            for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
                TokenStreamLocation at = parser.currentTokenLocation();
                if (ended) {
                    throw new Unreadable(at.getLineNr(), at.getColumnNr(), "a second value", "must be one value");
                }
                take(parser, token, tree, at.getLineNr(), at.getColumnNr());
                depth += token.isStructStart() ? 1 : token.isStructEnd() ? -1 : 0;
                ended = depth == 0;
            }
        } catch (JacksonException e) {
            throw unreadable(e);
        }
        return tree.root();
    }

    /** Whether the text is JSON to its end. */
    static boolean isWell(String text) {
        try (JsonParser parser = FACTORY.createParser(ObjectReadContext.empty(), text)) {
            while (parser.nextToken() != null) {
                // only the end counts
            }
            return true;
        } catch (JacksonException e) {
            return false;
        }
    }

    private static void take(JsonParser parser, JsonToken token, TreeBuilder tree, int line, int column) {
        switch (token) {
            case START_OBJECT -> tree.openObject(line, column);
            case START_ARRAY -> tree.openList(line, column);
            case END_OBJECT, END_ARRAY -> tree.close();
            case PROPERTY_NAME -> tree.name(parser.getString(), line, column);
            case VALUE_STRING -> tree.scalar(Node.Kind.TEXT, parser.getString(), line, column);
            case VALUE_TRUE, VALUE_FALSE -> tree.scalar(Node.Kind.FLAG, parser.getString(), line, column);
            case VALUE_NULL -> tree.scalar(Node.Kind.NOTHING, "", line, column);
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT ->
                tree.scalar(Node.Kind.NUMBER, parser.getString(), line, column);
            default -> throw new IllegalStateException("not a token of a text: " + token);
        }
    }

    private static Unreadable unreadable(JacksonException e) {
        TokenStreamLocation at = e.getLocation();
        int line = at == null ? 1 : Math.max(1, at.getLineNr());
        int column = at == null ? 1 : Math.max(1, at.getColumnNr());
        // what follows in the parser's words is about its own settings
        String problem = e.getOriginalMessage()
                .replaceAll("(?s)( \\(start marker|: (enable `|was expecting|expected a valid|maybe a)).*", "");
        return new Unreadable(line, column, "no JSON (" + Quote.plain(problem, 200) + ")", "must be valid JSON");
    }
}
