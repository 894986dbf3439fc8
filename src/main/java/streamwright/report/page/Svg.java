package streamwright.report.page;

/** Figures as drawings write them. */
final class Svg {
    /** Mean width of a letter as a share of its size, on the generous side: fonts differ from reader to reader. */
    private static final double LETTER = 0.56;

    private Svg() {}

    /** At most one decimal, no decimals where there are none. */
    static String number(double value) {
        double rounded = Math.round(value * 10) / 10.0;
        return rounded == Math.rint(rounded) ? Long.toString((long) rounded) : Double.toString(rounded);
    }

    /** About how wide a text is. */
    static double width(String text, double size) {
        return text.length() * size * LETTER;
    }
}
