package streamwright.report.sheet;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** What may stand in a cell. */
final class Cells {
    /** Where a text begins with one of these, a spreadsheet may take it for a formula. */
    private static final String FORMULA_STARTS = "=+-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20";

    private Cells() {}

    /** Text that no spreadsheet takes for a formula: one that could be begins with an apostrophe. */
    static String text(String text) {
        String start = text.stripLeading();
        boolean formula = (!start.isEmpty() && FORMULA_STARTS.indexOf(start.charAt(0)) >= 0)
                || (!text.isEmpty() && FORMULA_STARTS.indexOf(text.charAt(0)) >= 0);
        return formula ? "'" + text : text;
    }

    /** A figure with at most so many decimals; where it has no end or none is known, an empty cell. */
    static Object figure(double figure, int decimals) {
        return Double.isFinite(figure) ? rounded(figure, decimals, RoundingMode.HALF_EVEN) : "";
    }

    /** A length to cut: up to the next tenth, since wire that is too short is of no use. */
    static BigDecimal cut(double length) {
        return rounded(length, 1, RoundingMode.CEILING);
    }

    private static BigDecimal rounded(double figure, int decimals, RoundingMode rounding) {
        BigDecimal rounded = BigDecimal.valueOf(figure).setScale(decimals, rounding);
        return rounded.signum() == 0 ? BigDecimal.ZERO : rounded.stripTrailingZeros();
    }
}
