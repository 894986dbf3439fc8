package streamwright.file;

import java.util.List;
import streamwright.plan.Board;
import streamwright.plan.Cable;
import streamwright.plan.Change;
import streamwright.plan.Plan;
import streamwright.plan.Reason;
import streamwright.plan.Status;
import streamwright.plan.Supply;
import streamwright.plan.Totals;

/** A plan file. */
final class PlanShape extends Struct<Plan> {
    private final Field<Integer> format =
            required("format", Whole.of(Plan.FORMAT, Plan.FORMAT), "of this file; always " + Plan.FORMAT);
    private final Field<String> yard = required("yard", Words.LINE, "name of the yard");
    private final Field<Status> status =
            optional("status", Choice.of(Status.class), Status.FEASIBLE, "how much is proved");
    private final Field<Double> cost = required("cost", Numbers.REAL, "what all of it costs");
    private final Field<Double> bound =
            optional("bound", Numbers.REAL, 0.0, "no plan for this yard under these rules can cost less");
    private final Field<Double> gap = optional("gap", Numbers.REAL, "(cost - bound) / cost");
    private final Field<Double> work = optional("work", Numbers.REAL, "rebalance: minutes in all");
    private final Field<Double> workBound = optional("workBound", Numbers.REAL, "rebalance: no repair takes less");
    private final Field<Double> seconds = optional("seconds", Numbers.REAL, 0.0, "spent");
    private final Field<Long> seed = optional("seed", Numbers.LONG, 0L, "of the search");
    private final Field<Totals> totals = required("totals", new TotalsShape(), "sums");
    private final Field<List<Cable>> cables =
            required("cables", Items.of(new CableShape(), 0, "cables"), "what leaves the jacks");
    private final Field<List<Board>> boards =
            required("boards", Items.unique(new BoardInPlace(), 0, "id", "boards"), "the boards in their places");
    private final Field<List<Supply>> supplies =
            optional("supplies", Items.of(new SupplyShape(), 0, "supplies"), List.of(), "one a place with boards");
    private final Field<List<Reason>> reasons =
            optional("reasons", Items.of(new ReasonShape(), 0, "reasons"), List.of(), "why it is as it is");
    private final Field<List<Change>> changes = optional(
            "changes",
            Items.of(new ChangeShape(), 0, "changes"),
            List.of(),
            "rebalance: in the order in which to do them");

    PlanShape() {
        super("a plan");
    }

    @Override
    protected Plan build(Values values) {
        double total = values.get(cost);
        double least = values.get(bound);
        return new Plan(
                values.get(format),
                values.get(yard),
                values.get(status),
                total,
                least,
                values.get(gap, total > 0 ? (total - least) / total : 0.0),
                values.get(seconds),
                values.get(seed),
                values.get(totals),
                values.get(cables),
                values.get(boards),
                values.get(supplies),
                values.get(reasons),
                values.get(changes),
                values.find(work),
                values.find(workBound));
    }
}
