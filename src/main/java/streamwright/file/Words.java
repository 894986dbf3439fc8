package streamwright.file;

import java.util.Map;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Text that a pattern matches as a whole. */
record Words(Pattern pattern, String wanted) implements Shape<String> {
    static final Words ANY = new Words(Pattern.compile("(?s).+"), "text that is not empty");
    /** What may be shown anywhere: nothing in it moves a terminal's cursor, ends a line or turns the writing around. */
    static final Words LINE = new Words(
            Pattern.compile("[^" + Quote.HARMFUL + "]+"), "text of one line, not empty, without control characters");

    static final Words ID = new Words(
            Pattern.compile("[A-Za-z0-9][A-Za-z0-9 _.-]{0,63}"),
            "an id of 1 to 64 letters, digits, spaces, _ . or -, the first a letter or digit");

    @Override
    public @Nullable String read(Place place, Problems problems) {
        String text = text(place.node());
        if (text == null) {
            boolean scalar = place.node() instanceof Node.Scalar s && s.kind() != Node.Kind.NOTHING;
            problems.add(place.wrong(scalar ? "text, in quotes" : wanted));
            return null;
        }
        if (!pattern.matcher(text).matches()) {
            problems.add(place.wrong(wanted));
            return null;
        }
        return text;
    }

    /** The text that a node says, or null where it says something else. */
    static @Nullable String text(Node node) {
        boolean text = node instanceof Node.Scalar scalar
                && (scalar.kind() == Node.Kind.TEXT || scalar.kind() == Node.Kind.CELL);
        return text ? ((Node.Scalar) node).text() : null;
    }

    @Override
    public Map<String, Object> schema() {
        return equals(ANY)
                ? JsonObject.of("type", "string", "minLength", 1)
                : JsonObject.of("type", "string", "pattern", "^(?:" + pattern + ")$");
    }
}
