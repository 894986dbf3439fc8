package streamwright.report.sheet;

import java.util.ArrayList;
import java.util.List;
import streamwright.report.Figures;
import streamwright.report.walk.Walk;

/** One line of what the plan's cost is made of. */
public record Ledger(String item, String quantity, String sum) {
    private static final int KIND = 0;
    private static final int ITEM = 1;
    private static final int UNIT = 3;
    private static final int BUY = 5;
    private static final int SUM = 7;

    /** Everything with a price, and the sum last; spots with a box, of which a trail has dozens, in one line. */
    public static List<Ledger> of(Walk walk) {
        List<Ledger> lines = new ArrayList<>();
        int boxes = 0;
        double boxed = 0;
        for (List<Object> row : Shopping.of(walk).rows()) {
            if (!(row.get(SUM) instanceof Number sum)) {
                continue;
            }
            if (row.get(KIND).equals(Purchase.PLACE)) {
                boxes++;
                boxed += sum.doubleValue();
                continue;
            }
            if (row.get(KIND).equals(Purchase.SUM) && boxes > 0) {
                lines.add(new Ledger("box and supply at a spot", Integer.toString(boxes), Figures.money(boxed)));
            }
            String quantity = row.get(BUY) instanceof Number buy
                    ? (Figures.plain(buy.doubleValue()) + " " + row.get(UNIT)).strip()
                    : "";
            lines.add(new Ledger(row.get(ITEM).toString(), quantity, Figures.money(sum.doubleValue())));
        }
        return lines;
    }
}
