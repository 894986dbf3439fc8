package streamwright.check;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Figures in words. */
final class Say {
    /** Figures of broken plans may be longer than anyone reads. */
    private static final double LONG = 1e15;

    private Say() {}

    /** Up to three digits after the point. */
    static String number(double value) {
        return number(value, 3);
    }

    private static String number(double value, int digits) {
        if (!Double.isFinite(value)) {
            return Double.isNaN(value) ? "unknown" : value > 0 ? "no limit" : "below all limits";
        }
        if (Math.abs(value) >= LONG) {
            return String.valueOf(value);
        }
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(digits, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    static String count(long count, String one, String many) {
        return count + " " + (count == 1 ? one : many);
    }

    static String over(double figure, double limit, String unit) {
        return apart(figure, limit, unit, "more than");
    }

    static String under(double figure, double limit, String unit) {
        return apart(figure, limit, unit, "less than");
    }

    static String other(double figure, double limit, String unit) {
        return apart(figure, limit, unit, "where it should be");
    }

    static String other(long figure, long limit, String unit) {
        String tail = unit.isEmpty() ? "" : " " + unit;
        return figure + tail + ", where it should be " + limit + tail;
    }

    /** Both figures, with as many digits as it takes to tell them apart. */
    private static String apart(double figure, double limit, String unit, String between) {
        int digits = 3;
        while (digits < 9 && figure != limit && number(figure, digits).equals(number(limit, digits))) {
            digits += 3;
        }
        String tail = unit.isEmpty() ? "" : " " + unit;
        return number(figure, digits) + tail + ", " + between + " " + number(limit, digits) + tail;
    }
}
