package streamwright.file;

import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A finite number.
 *
 * @param above whether {@code least} itself is excluded
 */
record Numeral(double least, boolean above, double most) implements Shape<Double> {
    /** Far beyond any yard, near enough that sums of products stay finite and exact to the cent. */
    static final double VAST = 1e12;

    /** From 0: a price, a length, minutes. */
    static Numeral fromZero() {
        return new Numeral(0, false, VAST);
    }

    static Numeral aboveZero() {
        return new Numeral(0, true, VAST);
    }

    /** Any finite number. */
    static Numeral anything() {
        return new Numeral(-Double.MAX_VALUE, false, Double.MAX_VALUE);
    }

    static Numeral share() {
        return new Numeral(0, false, 1);
    }

    @Override
    public @Nullable Double read(Place place, Problems problems) {
        Double value = number(place.node());
        if (value == null || !Double.isFinite(value) || value < least || value > most || (above && value == least)) {
            problems.add(place.wrong(wanted()));
            return null;
        }
        // -0.0 is 0
        return value + 0.0;
    }

    /** The number that a node says, or null where it says none; infinite where it is too large. */
    static @Nullable Double number(Node node) {
        if (!(node instanceof Node.Scalar scalar)) {
            return null;
        }
        boolean numeric = scalar.kind() == Node.Kind.NUMBER
                || (scalar.kind() == Node.Kind.CELL
                        && YamlText.NUMBER.matcher(scalar.text()).matches());
        return numeric ? (Double) Double.parseDouble(scalar.text()) : null;
    }

    @Override
    public String wanted() {
        if (most == Double.MAX_VALUE) {
            return "a finite number";
        }
        String from = above ? "above " + text(least) + ", up to " : "from " + text(least) + " to ";
        return "a number " + from + text(most);
    }

    /** Without an exponent, and without a point where it is whole. */
    static String text(double value) {
        return value == Math.rint(value) && Math.abs(value) < 1e15
                ? String.valueOf((long) value)
                : String.valueOf(value);
    }

    @Override
    public Map<String, Object> schema() {
        if (most == Double.MAX_VALUE) {
            return JsonObject.of("type", "number");
        }
        return JsonObject.of("type", "number", above ? "exclusiveMinimum" : "minimum", least, "maximum", most);
    }
}
