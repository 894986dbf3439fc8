package streamwright.cli;

import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import streamwright.physics.Ground;
import streamwright.reason.impasse.Explaining;
import streamwright.solve.Budget;
import streamwright.solve.Impossibility;
import streamwright.solve.Outcome;
import streamwright.yard.Yard;

/**
 * Planning that may find no plan: then part of its time goes to a proof that there is none, and what is proved is
 * explained.
 */
final class Unplanned {
    /** Of the time, for planning before it is doubted that there is a plan; then for a proof that there is none. */
    private static final double PLANNING = 0.6;

    private static final double PROOF = 0.15;

    /** An explanation may take so much longer than the time, but never longer than anybody waits. */
    private static final double SECONDS_BEYOND = 3.5;

    private static final double SECONDS_MOST = 20;

    private final Yard yard;
    private final Ground ground;
    private final BooleanSupplier interrupted;
    private final Explaining.Listener listener;

    Unplanned(Yard yard, Ground ground, BooleanSupplier interrupted, Explaining.Listener listener) {
        this.yard = yard;
        this.ground = ground;
        this.interrupted = interrupted;
        this.listener = listener;
    }

    /** @param found whether there is some plan by now */
    Outcome planned(Budget budget, Function<Budget, Outcome> planner, BooleanSupplier found) {
        long begin = System.nanoTime();
        boolean clock = budget.effort() == 0;
        Outcome outcome = planner.apply(
                clock
                        ? ending(
                                budget,
                                budget.seconds(),
                                () -> !found.getAsBoolean() && seconds(begin) > PLANNING * budget.seconds())
                        : budget);
        if (outcome instanceof Outcome.Stopped && !interrupted.getAsBoolean()) {
            listener.begins("looking for a proof that there is none");
            double time = clock ? PROOF * budget.seconds() : SECONDS_MOST;
            if (Impossibility.proved(yard, ground, time, interrupted)) {
                outcome = new Outcome.Impossible(List.of());
            } else if (clock && budget.seconds() > seconds(begin)) {
                listener.begins("still planning");
                outcome = planner.apply(ending(budget, budget.seconds() - seconds(begin), () -> false));
            }
        }
        if (outcome instanceof Outcome.Impossible impossible) {
            double left = budget.seconds() - seconds(begin) + SECONDS_BEYOND;
            double time = clock ? Math.min(SECONDS_MOST, left) : SECONDS_MOST;
            Explaining.ofImpossible(yard, impossible.because(), time, interrupted, listener);
        } else if (outcome instanceof Outcome.Stopped && !interrupted.getAsBoolean()) {
            Explaining.ofUnknown(yard, clock ? SECONDS_BEYOND : SECONDS_MOST, interrupted, listener);
        }
        return outcome;
    }

    private static double seconds(long begin) {
        return (System.nanoTime() - begin) / 1e9;
    }

    private static Budget ending(Budget all, double seconds, BooleanSupplier end) {
        return new Budget(
                seconds,
                all.effort(),
                all.seed(),
                all.workers(),
                () -> end.getAsBoolean() || all.interrupted().getAsBoolean());
    }
}
