package streamwright.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Locale;

/** Figures as they are shown: thousands set apart, no more digits than mean something, the same in every country. */
public final class Figures {
    private static final DecimalFormatSymbols SYMBOLS = DecimalFormatSymbols.getInstance(Locale.ROOT);

    private Figures() {}

    /** At most three decimals, no zeros at the end. */
    public static String plain(double figure) {
        return format("#,##0.###", figure, RoundingMode.HALF_EVEN);
    }

    public static String plain(long number) {
        return String.format(Locale.ROOT, "%,d", number);
    }

    /** A number of things, e.g. {@code 1 cable} or {@code 6,071 pixels}. */
    public static String count(long number, String thing) {
        return plain(number) + " " + thing + (number == 1 ? "" : "s");
    }

    /** Two decimals. */
    public static String money(double amount) {
        return format("#,##0.00", amount, RoundingMode.HALF_EVEN);
    }

    /** One decimal. */
    public static String length(double length) {
        return format("#,##0.0", length, RoundingMode.HALF_EVEN);
    }

    /** A share as a percentage with one decimal, rounded up: a gap must not look smaller than it is. */
    public static String percentUp(double share) {
        return format("0.0", share * 100, RoundingMode.CEILING) + " %";
    }

    private static String format(String pattern, double figure, RoundingMode rounding) {
        DecimalFormat format = new DecimalFormat(pattern, SYMBOLS);
        format.setRoundingMode(rounding);
        return format.format(Double.isFinite(figure) ? BigDecimal.valueOf(figure) : figure);
    }
}
