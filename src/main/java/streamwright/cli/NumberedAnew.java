package streamwright.cli;

import java.util.OptionalDouble;
import streamwright.check.Audit;
import streamwright.layout.Assembly;
import streamwright.layout.Layout;
import streamwright.physics.Ground;
import streamwright.plan.Plan;
import streamwright.solve.Budget;
import streamwright.solve.Outcome;
import streamwright.yard.Yard;

/** What a yard with kept channels would cost if they were numbered anew: what keeping them is worth is the user's to say. */
final class NumberedAnew {
    /** Share of the time that goes to it. */
    private static final double SHARE = 0.06;

    private static final int EFFORT = 1;

    private NumberedAnew() {}

    /** What is left of a budget for the plan that keeps the channels. */
    static Budget rest(Budget all) {
        return all.effort() > 0
                ? all
                : new Budget((1 - SHARE) * all.seconds(), 0, all.seed(), all.workers(), all.interrupted());
    }

    /**
     * The cost of the best plan found; empty where none was, or the user wants an end.
     *
     * @param kept a plan that keeps the channels, which is mostly one without that rule too
     */
    static OptionalDouble cost(Planning.Engine engine, Yard yard, Ground ground, Budget all, Layout kept) {
        if (all.interrupted().getAsBoolean()) {
            return OptionalDouble.empty();
        }
        Yard anew = yard.numberedAnew();
        Budget share = new Budget(
                SHARE * all.seconds(),
                all.effort() > 0 ? EFFORT : 0,
                all.seed(),
                all.workers(),
                all.interrupted(),
                false);
        double cost = cost(anew, ground, kept);
        if (engine.plan(anew, ground, share, Outcome.SILENT) instanceof Outcome.Found found) {
            cost = Math.min(cost, cost(anew, ground, found.layout()));
        }
        return Double.isInfinite(cost) ? OptionalDouble.empty() : OptionalDouble.of(cost);
    }

    private static double cost(Yard anew, Ground ground, Layout layout) {
        Plan plan = Assembly.plan(anew, ground, layout);
        return Audit.of(anew, plan).clean() ? plan.cost() : Double.POSITIVE_INFINITY;
    }
}
