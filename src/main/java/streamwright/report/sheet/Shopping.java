package streamwright.report.sheet;

import java.util.ArrayList;
import java.util.List;
import streamwright.report.Cautions;
import streamwright.report.walk.Walk;

/** One row a thing to buy; the sums are whole cents and add up to the plan's cost. */
final class Shopping {
    private Shopping() {}

    static Sheet of(Walk walk) {
        List<String> columns = List.of("kind", "item", "quantity", "unit", "have", "buy", "price each", "sum", "note");
        List<List<Object>> rows = new ArrayList<>();
        rows.add(List.of("caution", Cautions.line(), "", "", "", "", "", "", ""));
        double before = 0;
        for (Purchase each : Purchases.of(walk)) {
            boolean priced = !Double.isNaN(each.each());
            double after = before + each.sum();
            rows.add(List.of(
                    each.kind(),
                    each.item(),
                    Cells.figure(each.quantity(), 3),
                    each.unit(),
                    Cells.figure(each.have(), 3),
                    Cells.figure(each.buy(), 3),
                    priced ? Cells.figure(each.each(), 6) : "",
                    priced ? Cells.figure(cents(after) - cents(before), 2) : "",
                    each.note()));
            before = after;
        }
        rows.add(List.of(Purchase.SUM, "all that has a price", "", "", "", "", "", Cells.figure(cents(before), 2), ""));
        return new Sheet("shopping", columns, rows);
    }

    /** Rounded where the running sum stands, so that no cent is lost or found between the rows. */
    private static double cents(double sum) {
        return Math.rint(sum * 100) / 100;
    }
}
