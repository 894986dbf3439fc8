package streamwright.yard;

/** The unit of every length and coordinate of a yard. */
public enum Units {
    M(1.0, "m"),
    /** The international foot, 0.3048 m exactly (international yard and pound agreement, 1959). */
    FT(0.3048, "ft");

    private final double metres;
    private final String symbol;

    Units(double metres, String symbol) {
        this.metres = metres;
        this.symbol = symbol;
    }

    /** Metres in one unit. */
    public double metres() {
        return metres;
    }

    public String symbol() {
        return symbol;
    }
}
