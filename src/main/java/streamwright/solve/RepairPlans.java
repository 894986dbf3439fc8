package streamwright.solve;

import java.util.List;
import streamwright.plan.Board;
import streamwright.plan.Cable;
import streamwright.plan.Plan;

/** Plans with parts of them replaced. */
final class RepairPlans {
    private RepairPlans() {}

    static Plan with(Plan plan, List<Cable> cables, List<Board> boards) {
        return new Plan(
                plan.format(),
                plan.yard(),
                plan.status(),
                plan.cost(),
                plan.bound(),
                plan.gap(),
                plan.seconds(),
                plan.seed(),
                plan.totals(),
                cables,
                boards,
                plan.supplies(),
                plan.reasons(),
                plan.changes(),
                plan.work(),
                plan.workBound());
    }
}
