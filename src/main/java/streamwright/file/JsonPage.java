package streamwright.file;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.io.JsonStringEncoder;

/**
 * Writes maps, lists, text, numbers, flags and null as JSON that people can read: what fits into a line stays on one. The
 * same in every locale, and the same text for the same values.
 */
final class JsonPage {
    private static final int WIDTH = 140;

    private final StringBuilder page = new StringBuilder();

    private JsonPage() {}

    static String of(Object value) {
        JsonPage page = new JsonPage();
        page.write(value, "", 0);
        return page.page.append('\n').toString();
    }

    /**
     * @param indent of the line that the value begins in
     * @param before characters that stand in this line before the value, and one behind it
     */
    private void write(@Nullable Object value, String indent, int before) {
        boolean small = !(value instanceof Map<?, ?> || value instanceof List<?>);
        if (small || fits(value, WIDTH - before) >= 0) {
            writeFlat(value);
            return;
        }
        boolean object = value instanceof Map<?, ?>;
        String deeper = indent + "  ";
        String between = object ? "{\n" : "[\n";
        for (Object part : parts(value)) {
            page.append(between).append(deeper);
            int used = deeper.length() + 1;
            Object item = part;
            if (part instanceof Map.Entry<?, ?> entry) {
                String name = quoted(String.valueOf(entry.getKey())) + ": ";
                page.append(name);
                used += name.length();
                item = entry.getValue();
            }
            write(item, deeper, used);
            between = ",\n";
        }
        page.append('\n').append(indent).append(object ? '}' : ']');
    }

    private static List<?> parts(@Nullable Object value) {
        if (value instanceof Map<?, ?> map) {
            return new ArrayList<>(map.entrySet());
        }
        return value instanceof List<?> list ? list : List.of();
    }

    /** What is left of the room behind the value on one line, negative as soon as it is too little. */
    private static int fits(@Nullable Object value, int room) {
        if (value instanceof Map<?, ?> || value instanceof List<?>) {
            int left = room - 2;
            boolean first = true;
            for (Object part : parts(value)) {
                left -= first ? 0 : 2;
                first = false;
                Object item = part;
                if (part instanceof Map.Entry<?, ?> entry) {
                    left -= quoted(String.valueOf(entry.getKey())).length() + 2;
                    item = entry.getValue();
                }
                left = left < 0 ? left : fits(item, left);
                if (left < 0) {
                    return left;
                }
            }
            return left;
        }
        return room - atom(value).length();
    }

    private void writeFlat(@Nullable Object value) {
        if (value instanceof Map<?, ?> || value instanceof List<?>) {
            boolean object = value instanceof Map<?, ?>;
            page.append(object ? '{' : '[');
            String between = "";
            for (Object part : parts(value)) {
                page.append(between);
                between = ", ";
                if (part instanceof Map.Entry<?, ?> entry) {
                    page.append(quoted(String.valueOf(entry.getKey()))).append(": ");
                    writeFlat(entry.getValue());
                } else {
                    writeFlat(part);
                }
            }
            page.append(object ? '}' : ']');
        } else {
            page.append(atom(value));
        }
    }

    private static String atom(@Nullable Object value) {
        if (value instanceof Double number) {
            return number(number);
        }
        if (value == null || value instanceof Number || value instanceof Boolean) {
            return String.valueOf(value);
        }
        return quoted(String.valueOf(value));
    }

    private static String number(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("JSON has no number " + value);
        }
        // the shortest text that reads back as the same number; -0.0 is 0
        String plain = new BigDecimal(Double.toString(value + 0.0))
                .stripTrailingZeros()
                .toPlainString();
        return plain.length() <= 24 ? plain : Double.toString(value);
    }

    private static String quoted(String text) {
        return '"' + new String(JsonStringEncoder.getInstance().quoteAsCharArray(text)) + '"';
    }
}
