package streamwright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import streamwright.check.Audit;
import streamwright.check.Findings;
import streamwright.plan.Change;
import streamwright.plan.Plan;
import streamwright.plan.Totals;
import streamwright.plan.change.Difference;
import streamwright.report.Cautions;
import streamwright.report.Figures;
import streamwright.yard.Yard;

/**
 * Two plans of one yard: what differs, the work from one to the other, and what each costs; all figures computed anew.
 *
 * @param brokenBefore rules that the first plan breaks, by the audit, other than in what it says of itself; likewise
 *     after
 */
record Compared(
        double work,
        double costBefore,
        double costAfter,
        Totals before,
        Totals after,
        int brokenBefore,
        int brokenAfter,
        List<Change> changes) {

    static Compared of(Yard yard, Plan before, Plan after) {
        Findings was = Audit.of(yard, before);
        Findings now = Audit.of(yard, after);
        Map<String, String> broken = WorkTable.broken(was);
        List<Change> changes = Difference.between(yard, before, after, Set.of(), broken);
        return new Compared(
                Difference.minutes(changes),
                was.restated().cost(),
                now.restated().cost(),
                was.restated().totals(),
                now.restated().totals(),
                WorkTable.count(was),
                WorkTable.count(now),
                changes);
    }

    String text(Yard yard) {
        String unit = yard.units().symbol();
        List<String> parts = new ArrayList<>();
        if (changes.stream().anyMatch(change -> change.kind().equals("injection"))) {
            parts.add(Cautions.POWER + "\n");
        }
        parts.add(
                changes.isEmpty()
                        ? "Nothing differs that a crew would touch."
                        : "From the first plan to the second: " + WorkTable.sum(changes) + ".\n\n"
                                + WorkTable.of(changes));
        Table table = new Table("", ">before", ">after", ">more");
        table.row("cost", Figures.money(costBefore), Figures.money(costAfter), Figures.money(costAfter - costBefore));
        row(table, "boards", before.boards(), after.boards());
        row(table, "cables", before.cables(), after.cables());
        row(table, "trunk " + unit, before.trunk(), after.trunk());
        row(table, "leads " + unit, before.lead(), after.lead());
        row(table, "jumpers " + unit, before.jumper(), after.jumper());
        row(table, "null pixels", before.nulls(), after.nulls());
        row(table, "rules broken", brokenBefore, brokenAfter);
        parts.add("\n" + table);
        return String.join("\n", parts);
    }

    private static void row(Table table, String what, double was, double now) {
        table.row(what, figure(was), figure(now), figure(now - was));
    }

    private static String figure(double figure) {
        return Figures.plain(Math.round(100 * figure) / 100.0);
    }
}
