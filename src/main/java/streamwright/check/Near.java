package streamwright.check;

/** How far a written figure may be from the audit's own, and how far a figure beyond its limit. */
final class Near {
    /** Lengths are written to 0.001, so half of that is lost at each of up to three figures that make one. */
    private static final double LENGTH = 0.0015;

    private static final double SHARE = 1e-6;
    /** Amps are printed to the hundredth. */
    private static final double AMPS = 0.005;
    /** Money is printed to the hundredth. */
    private static final double MONEY = 0.005;

    private static final double LIMIT = 1e-6;

    private static final double VAST = 1e12;

    private Near() {}

    static boolean lengths(double stated, double own) {
        return Math.abs(stated - own) <= LENGTH + SHARE * Math.abs(own);
    }

    static boolean amps(double stated, double own) {
        return Math.abs(stated - own) <= AMPS + LIMIT + SHARE * Math.abs(own);
    }

    static boolean money(double stated, double own) {
        return Math.abs(stated - own) <= MONEY + LIMIT;
    }

    /** A length taken from the plan on trust, so that sums with it stay finite. */
    static double bounded(double stated) {
        return Math.max(-VAST, Math.min(VAST, stated));
    }

    static boolean over(double figure, double limit) {
        return figure > limit + LIMIT;
    }

    static boolean under(double figure, double limit) {
        return figure < limit - LIMIT;
    }
}
