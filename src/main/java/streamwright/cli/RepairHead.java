package streamwright.cli;

import java.util.List;
import java.util.stream.Stream;
import streamwright.check.Findings;
import streamwright.plan.Change;
import streamwright.plan.Plan;
import streamwright.report.Figures;
import streamwright.solve.Repaired;

/**
 * What is said first of a repair: its work, what it mends and moves, and its cost.
 *
 * @param yard its name
 * @param dead boards that no longer work
 */
record RepairHead(String yard, int dead) {
    String of(Findings before, Repaired.Mended mended, List<Change> changes) {
        int broken = WorkTable.count(before);
        boolean least = mended.workBound() > mended.work() - 1e-6;
        String bound = least
                ? "proved the least"
                : mended.workBound() > 0
                        ? "no repair takes less than " + Figures.plain(mended.workBound()) + " minutes"
                        : "and how little would do is not proved";
        long moved = changes.stream()
                .filter(change -> change.minutes() > 0)
                .filter(change -> change.kind().equals("lead") || change.kind().equals("replug"))
                .filter(change -> change.from() != null)
                .count();
        long fresh = changes.stream()
                .filter(change -> change.kind().equals("lead") && change.from() == null)
                .count();
        Plan plan = mended.plan();
        return "%s: %s, %s%n".formatted(yard, WorkTable.sum(changes), bound)
                + "  mends    %s%n".formatted(mends(broken))
                + "  moves    %s of %s, and plugs %s in%n"
                        .formatted(
                                Figures.plain(moved),
                                Figures.count(plan.totals().strings() - fresh, "string"),
                                Figures.count(fresh, "new one"))
                + "  cost     %s, with what is installed %s"
                        .formatted(
                                Figures.money(plan.cost()),
                                Figures.money(before.restated().cost()));
    }

    private String mends(int broken) {
        return Stream.of(
                        broken == 0 ? "" : Figures.count(broken, "broken rule"),
                        dead == 0 ? "" : Figures.count(dead, "dead board"))
                .filter(each -> !each.isEmpty())
                .reduce((one, other) -> one + " and " + other)
                .orElse("what the plan says wrongly of itself");
    }
}
