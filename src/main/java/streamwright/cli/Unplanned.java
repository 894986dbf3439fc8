package streamwright.cli;

import java.util.Collection;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import streamwright.file.ModelLibrary;
import streamwright.physics.Ground;
import streamwright.reason.impasse.Explaining;
import streamwright.solve.Budget;
import streamwright.solve.Impossibility;
import streamwright.solve.Outcome;
import streamwright.yard.BoardModel;
import streamwright.yard.Yard;

/**
 * Planning that may find no plan: then part of its time goes to a proof that there is none, and what is proved is
 * explained.
 */
final class Unplanned {
    /** A yard of which so soon no plan is found mostly has none; planning that is broken off begins anew. */
    private static final double SECONDS_SOON = 1.5;

    private static final double SECONDS_A_STRING = 0.01;

    /** Of the time, before it is doubted at length that there is a plan; then for a proof that there is none. */
    private static final double PLANNING = 0.6;

    private static final double PROOF = 0.15;

    /** An explanation may take so much longer than the time, but never longer than anybody waits. */
    private static final double SECONDS_BEYOND = 3.5;

    private static final double SECONDS_MOST = 12;

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
        Outcome outcome =
                clock ? byTheClock(budget, planner, found, begin) : doubted(planner.apply(budget), SECONDS_MOST);
        if (outcome instanceof Outcome.Impossible impossible) {
            double left = budget.seconds() - seconds(begin) + SECONDS_BEYOND;
            double time = clock ? Math.min(SECONDS_MOST, left) : SECONDS_MOST;
            Explaining.ofImpossible(yard, impossible.because(), models(), time, interrupted, listener);
        } else if (outcome instanceof Outcome.Stopped && !interrupted.getAsBoolean()) {
            Explaining.ofUnknown(yard, models(), clock ? SECONDS_BEYOND : SECONDS_MOST, interrupted, listener);
        }
        return outcome;
    }

    /** Plans, doubts soon that there is a plan, plans on, doubts it at length, and plans on. */
    private Outcome byTheClock(Budget budget, Function<Budget, Outcome> planner, BooleanSupplier found, long begin) {
        double all = budget.seconds();
        double soon = SECONDS_SOON + SECONDS_A_STRING * yard.strings().size();
        Doubt atLength = new Doubt(PLANNING * all, PROOF * all);
        Outcome outcome = new Outcome.Stopped();
        for (Doubt doubt : soon > PROOF * all ? List.of(atLength) : List.of(new Doubt(soon, PROOF * all), atLength)) {
            BooleanSupplier late = () -> !found.getAsBoolean() && seconds(begin) > doubt.from;
            outcome = planner.apply(ending(budget, all - seconds(begin), late));
            outcome = doubted(outcome, doubt.seconds);
            if (!(outcome instanceof Outcome.Stopped) || interrupted.getAsBoolean()) {
                return outcome;
            }
            listener.begins("still planning");
        }
        double left = all - seconds(begin);
        return left > 0 ? planner.apply(ending(budget, left, () -> false)) : outcome;
    }

    /**
     * A time for doubt.
     *
     * @param from seconds from the begin
     * @param seconds for a proof
     */
    private record Doubt(double from, double seconds) {}

    /** Where no plan was found, whether that is proved to be no wonder. */
    private Outcome doubted(Outcome outcome, double seconds) {
        if (!(outcome instanceof Outcome.Stopped) || interrupted.getAsBoolean()) {
            return outcome;
        }
        listener.begins("looking for a proof that there is none");
        return Impossibility.proved(yard, ground, seconds, interrupted) ? new Outcome.Impossible(List.of()) : outcome;
    }

    private static Collection<BoardModel> models() {
        return ModelLibrary.builtIn().boards().values();
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
