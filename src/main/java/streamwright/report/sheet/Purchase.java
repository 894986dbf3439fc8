package streamwright.report.sheet;

/**
 * One thing to have before building.
 *
 * @param have of these, already owned
 * @param each price of one; NaN where the yard has no price for it
 */
record Purchase(String kind, String item, double quantity, String unit, double have, double each, String note) {
    /** Kind of a box and supply at a spot. */
    static final String PLACE = "place";

    /** Kind of the row that has the sum. */
    static final String SUM = "sum";

    static Purchase priced(String kind, String item, double quantity, String unit, double each, String note) {
        return new Purchase(kind, item, quantity, unit, 0, each, note);
    }

    static Purchase unpriced(String kind, String item, long quantity, String note) {
        return new Purchase(kind, item, (double) quantity, "", 0, Double.NaN, note);
    }

    double buy() {
        return Math.max(0, quantity - have);
    }

    /** Its part of the plan's cost; 0 where it has no price. */
    double sum() {
        return each > 0 ? buy() * each : 0;
    }
}
