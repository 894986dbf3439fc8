package streamwright.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;
import streamwright.check.Audit;
import streamwright.check.Finding;
import streamwright.layout.Assembly;
import streamwright.physics.Ground;
import streamwright.physics.GroundPaths;
import streamwright.plan.Plan;
import streamwright.plan.Status;
import streamwright.yard.Yard;

/**
 * The planner and brute force on one yard, and all in which they contradict each other or the audit.
 *
 * @param solvable whether brute force found a plan
 * @param wrong empty where all agree
 */
record Trial(boolean solvable, Outcome outcome, boolean optimal, List<String> wrong) {
    private static final double ROUNDING = 1e-6;
    private static final double CENT = 0.005;

    Trial {
        wrong = List.copyOf(wrong);
    }

    /** @param interrupted ends the planner early: then less is proved, but nothing that is said may be wrong */
    static Trial of(Yard yard, int workers, BooleanSupplier interrupted) {
        Ground ground = GroundPaths.of(yard);
        EveryPlan.Tried best = EveryPlan.cheapest(yard, ground);
        List<String> wrong = new ArrayList<>();
        if (best != null) {
            Plan plan = Assembly.plan(yard, ground, EveryPlan.layout(yard, ground, best));
            audit(yard, plan, best.cost(), wrong, "the plan of brute force");
        }
        Outcome outcome = Planner.plan(yard, ground, new Budget(0, 1, 1, workers, interrupted), Outcome.SILENT);
        boolean optimal = false;
        if (outcome instanceof Outcome.Found found) {
            Plan plan = Assembly.plan(yard, ground, found.layout()).proved(found.bound(), 0, 1);
            audit(yard, plan, found.cost(), wrong, "the plan");
            optimal = plan.status() == Status.OPTIMAL;
            compare(best, found, optimal, wrong);
        } else if (outcome instanceof Outcome.Impossible && best != null) {
            wrong.add("a plan for " + best.cost() + " exists, but " + outcome);
        }
        return new Trial(best != null, outcome, optimal, wrong);
    }

    private static void audit(Yard yard, Plan plan, double cost, List<String> wrong, String whose) {
        for (Finding finding : Audit.of(yard, plan).list()) {
            wrong.add(whose + ": " + finding);
        }
        if (Math.abs(plan.cost() - cost) > ROUNDING) {
            wrong.add(whose + " was said to cost " + cost + " and costs " + plan.cost());
        }
    }

    private static void compare(
            EveryPlan.@Nullable Tried best, Outcome.Found found, boolean optimal, List<String> wrong) {
        double optimum = best == null ? Double.POSITIVE_INFINITY : best.cost();
        if (found.cost() < optimum - ROUNDING) {
            wrong.add("brute force missed a plan for " + found.cost() + ", its best costs " + optimum);
        }
        if (found.bound() > optimum + ROUNDING) {
            wrong.add("bound " + found.bound() + " lies above the optimum " + optimum);
        }
        if (optimal && found.cost() > optimum + CENT) {
            wrong.add("'optimal' costs " + found.cost() + ", the optimum is " + optimum);
        }
    }

    /** Whether there is a plan and the planner ended without one. */
    boolean missed() {
        return solvable && outcome instanceof Outcome.Stopped;
    }

    boolean found() {
        return outcome instanceof Outcome.Found;
    }
}
