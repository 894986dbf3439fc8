package streamwright.solve;

import java.util.List;
import streamwright.plan.Plan;
import streamwright.plan.Rule;

/** How a repair ended. */
public sealed interface Repaired {
    /**
     * A plan that keeps every rule.
     *
     * @param work minutes from the old plan to this one
     * @param workBound no repair takes less
     * @param interrupted whether the user ended it
     */
    record Mended(Plan plan, double work, double workBound, boolean interrupted) implements Repaired {}

    /** No repair exists: for reasons that forbid any plan, or because of what is to be kept. */
    record Impossible(List<Outcome.Obstruction> because) implements Repaired {
        public Impossible {
            because = List.copyOf(because);
        }
    }

    /** Ended before any repair was found, and nothing is proved. */
    record Stopped() implements Repaired {}

    /** Says what is wrong with a plan: the audit, or what stands for it. */
    interface Judge {
        Verdict judge(Plan plan);

        /** Told of each repair that is better than all before, with its work in minutes. */
        default void mended(Plan plan, double work) {}
    }

    /**
     * What a judge says.
     *
     * @param broken rules
     * @param restated the plan with all figures computed anew
     */
    record Verdict(List<Rule> broken, Plan restated) {
        public Verdict {
            broken = List.copyOf(broken);
        }
    }
}
