package streamwright.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Locale;

/** Figures as they are shown: thousands set apart, no more digits than mean something, the same in every country. */
public final class Figures {
    private static final ThreadLocal<DecimalFormat> WHOLE = format("#,##0", RoundingMode.HALF_EVEN);
    private static final ThreadLocal<DecimalFormat> PLAIN = format("#,##0.###", RoundingMode.HALF_EVEN);
    private static final ThreadLocal<DecimalFormat> MONEY = format("#,##0.00", RoundingMode.HALF_EVEN);
    private static final ThreadLocal<DecimalFormat> LENGTH = format("#,##0.0", RoundingMode.HALF_EVEN);
    private static final ThreadLocal<DecimalFormat> CUT = format("#,##0.0", RoundingMode.CEILING);
    private static final ThreadLocal<DecimalFormat> PERCENT_UP = format("0.0", RoundingMode.CEILING);

    private Figures() {}

    /** At most three decimals, no zeros at the end. */
    public static String plain(double figure) {
        return text(PLAIN, figure);
    }

    public static String plain(long number) {
        return WHOLE.get().format(number);
    }

    /** A number of things, e.g. {@code 1 cable} or {@code 6,071 pixels}. */
    public static String count(long number, String thing) {
        return plain(number) + " " + thing + (number == 1 ? "" : "s");
    }

    /** Two decimals. */
    public static String money(double amount) {
        return text(MONEY, amount);
    }

    /** One decimal. */
    public static String length(double length) {
        return text(LENGTH, length);
    }

    /** The same rounded up: a wire that is cut too short is of no use. */
    public static String cut(double length) {
        return text(CUT, length);
    }

    /** A share as a percentage with one decimal, rounded up: a gap must not look smaller than it is. */
    public static String percentUp(double share) {
        return text(PERCENT_UP, share * 100) + " %";
    }

    private static String text(ThreadLocal<DecimalFormat> format, double figure) {
        return format.get().format(Double.isFinite(figure) ? BigDecimal.valueOf(figure) : figure);
    }

    /** A format keeps notes while it works, so each thread has one of its own. */
    private static ThreadLocal<DecimalFormat> format(String pattern, RoundingMode rounding) {
        return ThreadLocal.withInitial(() -> {
            DecimalFormat format = new DecimalFormat(pattern, DecimalFormatSymbols.getInstance(Locale.ROOT));
            format.setRoundingMode(rounding);
            return format;
        });
    }
}
