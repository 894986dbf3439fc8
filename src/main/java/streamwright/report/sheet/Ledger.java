package streamwright.report.sheet;

import java.util.List;
import streamwright.report.Figures;
import streamwright.report.walk.Walk;

/** One line of what the plan's cost is made of. */
public record Ledger(String item, String quantity, String sum) {
    /** Everything with a price, and the sum last. */
    public static List<Ledger> of(Walk walk) {
        List<List<Object>> rows = Shopping.of(walk).rows();
        return rows.stream()
                .filter(row -> row.get(SUM) instanceof Number)
                .map(row -> new Ledger(
                        row.get(ITEM).toString(),
                        row.get(BUY) instanceof Number buy
                                ? (Figures.plain(buy.doubleValue()) + " " + row.get(UNIT)).strip()
                                : "",
                        Figures.money(((Number) row.get(SUM)).doubleValue())))
                .toList();
    }

    private static final int ITEM = 1;
    private static final int UNIT = 3;
    private static final int BUY = 5;
    private static final int SUM = 7;
}
