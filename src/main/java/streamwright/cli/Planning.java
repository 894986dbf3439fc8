package streamwright.cli;

import java.util.OptionalDouble;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import streamwright.check.Audit;
import streamwright.check.Findings;
import streamwright.layout.Assembly;
import streamwright.layout.Layout;
import streamwright.physics.Ground;
import streamwright.physics.GroundPaths;
import streamwright.plan.Plan;
import streamwright.reason.Reasons;
import streamwright.reason.impasse.Explaining;
import streamwright.reason.impasse.Impasse;
import streamwright.solve.Budget;
import streamwright.solve.Outcome;
import streamwright.yard.Yard;

/** One run of the planner, watched, and ended by a proof, its budget or an interrupt; what it found is audited first. */
final class Planning implements Outcome.Progress {
    /** What the reasons may take beyond the time for planning. */
    private static final double REASONS_SECONDS = 2.5;

    private final Engine engine;
    private final Yard yard;
    private final Ground ground;
    private final Destination destination;
    private final Console console;
    private final boolean json;
    private final @Nullable ProgressLine line;
    private final long start = System.nanoTime();
    private BooleanSupplier interrupted = () -> false;
    private long seed;
    private boolean timed;
    private double reasonsUntil;
    private double bound;
    private OptionalDouble anew = OptionalDouble.empty();
    private @Nullable Layout best;
    private @Nullable Integer status;
    private Impasse known;

    /** The planner, or what stands for it. */
    interface Engine {
        Outcome plan(Yard yard, Ground ground, Budget budget, Outcome.Progress progress);
    }

    /** @param json whether a yard that cannot be laid out is told of as JSON on stdout, not in words */
    Planning(Engine engine, Yard yard, Destination destination, Console console, boolean json) {
        this.json = json;
        this.engine = engine;
        this.yard = yard;
        this.destination = destination;
        this.console = console;
        ground = GroundPaths.of(yard);
        known = Impasse.unknown(yard.name());
        line = !console.quiet() && Terminal.showsErrors() ? new ProgressLine(console.err()) : null;
    }

    /**
     * Plans and writes; returns the exit status.
     *
     * @param budget for a question that says whether the user wants an end
     */
    int run(Function<BooleanSupplier, Budget> budget) {
        Interrupt interrupt = new Interrupt(this::endWithBest);
        interrupted = interrupt::asked;
        int ended = Exit.STOPPED;
        try {
            Budget spent = budget.apply(interrupted);
            seed = spent.seed();
            timed = spent.effort() == 0;
            reasonsUntil = timed ? spent.seconds() + REASONS_SECONDS : Double.POSITIVE_INFINITY;
            Outcome outcome = new Unplanned(yard, ground, interrupted, new Explaining.Listener() {
                        @Override
                        public void begins(String what) {
                            if (line != null) {
                                line.show(what);
                            }
                        }

                        @Override
                        public void known(Impasse impasse) {
                            know(impasse);
                        }
                    })
                    .planned(spent, this::planned, () -> best() != null);
            ended = end(outcome);
            return ended;
        } finally {
            closeLine();
            interrupt.end(ended);
        }
    }

    /** A fault while a plan is bettered or proved must not cost the user the plan that is there. */
    private Outcome planned(Budget budget) {
        try {
            if (!yard.keepChannels()) {
                return engine.plan(yard, ground, budget, this);
            }
            Outcome outcome = engine.plan(yard, ground, NumberedAnew.rest(budget), this);
            if (outcome instanceof Outcome.Found found) {
                anew = NumberedAnew.cost(engine, yard, ground, budget, found.layout());
            }
            return outcome;
        } catch (RuntimeException | Error fault) {
            Outcome.Found before = best();
            if (before == null) {
                throw fault;
            }
            closeLine();
            Complaints.ofFault(fault, console.err());
            console.err().println("The best plan from before that holds all the same; it is audited like any other.");
            return before;
        }
    }

    private synchronized Outcome.@Nullable Found best() {
        return best == null ? null : new Outcome.Found(best, Double.NaN, bound, Double.NaN, false);
    }

    @Override
    public synchronized void moved(double seconds, double cost, double newBound) {
        bound = newBound;
        if (line != null) {
            line.show(cost, newBound);
        }
    }

    @Override
    public synchronized void found(Layout layout) {
        best = layout;
    }

    /** The planner does not come back in time after an interrupt: what it told so far is all there is. */
    private synchronized int endWithBest() {
        Outcome.Found found = best();
        try {
            return end(found == null ? new Outcome.Stopped() : found);
        } catch (RuntimeException | Error end) {
            return Complaints.ofEnd(end, console.err());
        }
    }

    /** Ends once: the planner may still come back while its best is being written. */
    private synchronized int end(Outcome outcome) {
        if (status != null) {
            return status;
        }
        closeLine();
        int ended = outcome instanceof Outcome.Found found ? write(found) : noPlan();
        console.out().flush();
        status = ended;
        return ended;
    }

    private void closeLine() {
        if (line != null) {
            line.close();
        }
    }

    /** After an interrupt the program ends as soon as this returns, so it says itself what went wrong. */
    private int write(Outcome.Found found) {
        try {
            return audited(found);
        } catch (Wrong wrong) {
            console.err().println(wrong.getMessage());
            return Exit.WRONG;
        }
    }

    private int audited(Outcome.Found found) {
        // an effort gives the same file on every run, and no two runs take the same time
        double seconds = timed ? (System.nanoTime() - start) / 1e9 : 0;
        Plan plan = Assembly.plan(yard, ground, found.layout()).proved(found.bound(), seconds, seed);
        Findings findings = Audit.of(yard, plan);
        if (!findings.clean()) {
            console.err().println("The plan that was found breaks rules of its own yard, so nothing is written.");
            console.err().println("This is a fault of streamwright, not of your files; please report it:");
            findings.list()
                    .forEach(finding ->
                            console.err().println("  " + finding.rule().label() + " " + finding.text()));
            return Exit.STOPPED;
        }
        OptionalDouble hand = Double.isNaN(found.hand()) ? OptionalDouble.empty() : OptionalDouble.of(found.hand());
        plan = reasoned(plan);
        destination.write(plan, Summary.of(yard, plan, hand, anew), console);
        destination.writePage(yard, plan, console);
        if (interrupted.getAsBoolean()) {
            console.err().println("Interrupted: the best plan so far has been written whole.");
            return Exit.INTERRUPTED;
        }
        return Exit.DONE;
    }

    /** Nor must a fault in giving reasons. */
    private Plan reasoned(Plan plan) {
        try {
            return plan.withReasons(Reasons.of(yard, ground, plan, this::tooLate));
        } catch (RuntimeException | Error fault) {
            Complaints.ofFault(fault, console.err());
            console.err().println("The plan holds all the same; it is written without its reasons.");
            return plan;
        }
    }

    /** Whether the reasons left must do without alternatives: the user waits. */
    private boolean tooLate() {
        return interrupted.getAsBoolean() || (System.nanoTime() - start) / 1e9 > reasonsUntil;
    }

    private synchronized void know(Impasse impasse) {
        known = impasse;
    }

    /** Tells what is known of a yard without a plan. */
    private int noPlan() {
        Impasse impasse = known;
        if (json) {
            console.out().println(Json.text(impasse));
        } else {
            console.err().println(ImpasseText.of(impasse));
        }
        return impasse.proved() ? Exit.BROKEN : Exit.STOPPED;
    }
}
