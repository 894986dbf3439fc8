package streamwright.reason.impasse;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.function.BiConsumer;
import streamwright.yard.Yard;

/**
 * A figure of a yard that could be another.
 *
 * @param field as the yard file names it
 * @param unit of the figure, or empty
 * @param from what it is
 * @param loosest what never forbids anything
 * @param step in which it is loosened; negative where less is looser
 */
record Lever(String field, String unit, double from, double loosest, double step, BiConsumer<YardDraft, Double> set) {
    private static final int DECIMALS = 3;

    /** Steps from the figure as it is to the loosest. */
    long steps() {
        return (long) Math.ceil((loosest - from) / step);
    }

    /** The figure so many steps on, in whole steps: 40.5 frames a second and a step of one give 40, then 39. */
    double at(long steps) {
        double size = Math.abs(step);
        double whole = step > 0 ? Math.floor(from / size + 1e-9) : Math.ceil(from / size - 1e-9);
        double value = BigDecimal.valueOf((whole + Math.signum(step) * steps) * size)
                .setScale(DECIMALS, RoundingMode.HALF_EVEN)
                .doubleValue();
        return step > 0 ? Math.min(value, loosest) : Math.max(value, loosest);
    }

    Yard applied(Yard yard, double value) {
        YardDraft draft = new YardDraft(yard);
        set.accept(draft, value);
        return draft.yard();
    }

    String said(double value) {
        String figure = plain(value);
        return unit.isEmpty() ? figure : figure + " " + unit;
    }

    static String plain(double value) {
        return BigDecimal.valueOf(value)
                .setScale(DECIMALS, RoundingMode.HALF_EVEN)
                .stripTrailingZeros()
                .toPlainString();
    }
}
