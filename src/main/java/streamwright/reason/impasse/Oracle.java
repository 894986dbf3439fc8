package streamwright.reason.impasse;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;
import streamwright.check.Audit;
import streamwright.layout.Assembly;
import streamwright.layout.Layout;
import streamwright.physics.Ground;
import streamwright.physics.GroundPaths;
import streamwright.plan.Plan;
import streamwright.solve.Budget;
import streamwright.solve.Impossibility;
import streamwright.solve.Obstructions;
import streamwright.solve.Outcome;
import streamwright.solve.Planner;
import streamwright.yard.Obstacle;
import streamwright.yard.Yard;

/** Says of yards whether they have a plan, as far as that can be found out in the time. */
final class Oracle {
    /** What is known of a yard: a plan that the audit finds clean, a proof that there is none, or neither. */
    enum Answer {
        PLAN,
        NONE,
        OPEN
    }

    private static final double FIRST_LOOK = 0.1;
    private static final double PROOF = 2.5;
    private static final double SECOND_LOOK = 1;

    /** Of the time left, at most for a proof or a second look: a few hard questions must not use up that of all others. */
    private static final double SHARE_MOST = 0.2;

    private static final double SECONDS_A_STRING = 0.003;

    private final long deadline;
    private final BooleanSupplier stop;
    private final Map<List<Obstacle>, Ground> grounds = new HashMap<>();

    /**
     * @param deadline {@link System#nanoTime} from which on all answers are {@link Answer#OPEN}
     * @param stop asked often; true has the same effect
     */
    Oracle(long deadline, BooleanSupplier stop) {
        this.deadline = deadline;
        this.stop = stop;
    }

    /** The same with an earlier end: after this share of the time left. */
    Oracle share(double share) {
        long left = Math.max(0, deadline - System.nanoTime());
        return new Oracle(System.nanoTime() + (long) (left * share), stop);
    }

    boolean over() {
        return stop.getAsBoolean() || System.nanoTime() >= deadline;
    }

    private double left() {
        return (deadline - System.nanoTime()) / 1e9;
    }

    private double within(double seconds) {
        return Math.max(0.01, Math.min(seconds, left()));
    }

    private double some(double seconds) {
        return Math.max(FIRST_LOOK, Math.min(seconds, SHARE_MOST * left()));
    }

    Ground ground(Yard yard) {
        return grounds.computeIfAbsent(yard.obstacles(), obstacles -> GroundPaths.of(yard));
    }

    Answer of(Yard yard) {
        if (yard.props().isEmpty()) {
            return yard.boardCount().least() == 0 ? Answer.PLAN : Answer.NONE;
        }
        if (over()) {
            return Answer.OPEN;
        }
        if (!Obstructions.of(yard, ground(yard)).isEmpty()) {
            return Answer.NONE;
        }
        if (plan(yard, FIRST_LOOK) != null) {
            return Answer.PLAN;
        }
        if (!over() && Impossibility.proved(yard, ground(yard), within(some(PROOF)), this::over)) {
            return Answer.NONE;
        }
        return plan(yard, some(SECOND_LOOK)) != null ? Answer.PLAN : Answer.OPEN;
    }

    /** The first plan found in a short time. */
    @Nullable
    Plan plan(Yard yard) {
        return plan(yard, FIRST_LOOK);
    }

    /** The first plan found. */
    @Nullable
    Plan plan(Yard yard, double seconds) {
        AtomicReference<Layout> first = new AtomicReference<>();
        return plan(yard, seconds, () -> over() || first.get() != null, new Outcome.Progress() {
            @Override
            public void moved(double at, double cost, double bound) {
                // only plans count
            }

            @Override
            public void found(Layout layout) {
                first.set(layout);
            }
        });
    }

    /** The best plan found in all of this time. */
    @Nullable
    Plan bestPlan(Yard yard, double seconds) {
        return plan(yard, seconds, this::over, Outcome.SILENT);
    }

    private @Nullable Plan plan(Yard yard, double seconds, BooleanSupplier end, Outcome.Progress progress) {
        if (over() || yard.props().isEmpty()) {
            return null;
        }
        Ground ground = ground(yard);
        Outcome outcome = Planner.plan(
                yard,
                ground,
                new Budget(within(seconds + yard.strings().size() * SECONDS_A_STRING), 0, 1, 2, end),
                progress);
        if (!(outcome instanceof Outcome.Found found)) {
            return null;
        }
        Plan plan = Assembly.plan(yard, ground, found.layout()).proved(found.bound(), 0, 1);
        return Audit.of(yard, plan).clean() ? plan : null;
    }
}
