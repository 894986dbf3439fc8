package streamwright.file;

import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A whole number, both ends included. */
record Whole(long least, long most) implements Shape<Long> {
    /** Doubles are whole numbers without gaps up to here. */
    private static final double EXACT = 1L << 53;

    /** The same for an {@code int}. */
    static Shape<Integer> of(int least, int most) {
        return new Whole(least, most).map(Long::intValue);
    }

    @Override
    public @Nullable Long read(Place place, Problems problems) {
        Long value = number(place.node());
        if (value == null || value < least || value > most) {
            problems.add(place.wrong(wanted()));
            return null;
        }
        return value;
    }

    private static @Nullable Long number(Node node) {
        Double value = Numeral.number(node);
        if (value == null || value != Math.rint(value)) {
            return null;
        }
        if (Math.abs(value) <= EXACT) {
            return value.longValue();
        }
        try {
            return Long.parseLong(((Node.Scalar) node).text());
        } catch (NumberFormatException e) {
            // beyond 64 bits, or beyond 2^53 with an exponent
            return null;
        }
    }

    @Override
    public String wanted() {
        return least == most ? String.valueOf(least) : "a whole number from " + least + " to " + most;
    }

    @Override
    public Map<String, Object> schema() {
        return JsonObject.of("type", "integer", "minimum", least, "maximum", most);
    }
}
