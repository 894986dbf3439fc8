package streamwright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import streamwright.check.Audit;
import streamwright.check.Finding;
import streamwright.check.Findings;
import streamwright.file.ModelLibrary;
import streamwright.physics.Ground;
import streamwright.physics.GroundPaths;
import streamwright.plan.Board;
import streamwright.plan.Change;
import streamwright.plan.Plan;
import streamwright.plan.change.Difference;
import streamwright.reason.Reasons;
import streamwright.reason.impasse.Explaining;
import streamwright.reason.impasse.Impasse;
import streamwright.report.Cautions;
import streamwright.solve.Budget;
import streamwright.solve.Keep;
import streamwright.solve.Repair;
import streamwright.solve.Repaired;
import streamwright.yard.Yard;

/** One repair: looked for, written with its work order, or explained where there is none. */
final class Rebalancing {
    /** Where things are to be kept and nothing is mended after this share of the time, permissions need the rest. */
    private static final double KEEPING_SHARE = 0.65;

    /** Of the time, for the repair where it is not proved sooner: reasons and remedies need the rest. */
    private static final double REPAIR_SHARE = 0.8;

    /** Seconds for permissions, at least, and for the explanation of a yard without a plan, at least and at most. */
    private static final double PERMISSIONS_LEAST = 0.5;

    private static final double EXPLAINING_LEAST = 1;
    private static final double EXPLAINING_MOST = 20;

    /** Seconds and share of the time: reasons that take longer do without alternatives. */
    private static final double REASONS_SECONDS = 1.5;

    private static final double REASONS_SHARE = 0.08;

    /** Of the time, for each remedy. */
    private static final double REMEDY_SHARE = 0.08;

    /** A search that is shorter finds nothing. */
    private static final double TIME_LEAST = 0.2;

    private final Yard yard;
    private final Plan old;
    private final Set<String> dead;
    private final Set<Keep> keep;
    private final Destination destination;
    private final Console console;
    private final Ground ground;
    private final Interrupt interrupt;
    private final double seconds;
    private final long seed;
    private final int threads;
    private final long begin = System.nanoTime();
    private volatile Repaired.@Nullable Mended best;
    private volatile @Nullable Findings before;
    private @Nullable Integer status;

    /** @param dead boards of the old plan that no longer work */
    Rebalancing(
            Yard yard,
            Plan old,
            Set<String> dead,
            Set<Keep> keep,
            Destination destination,
            Console console,
            double seconds,
            long seed,
            int threads) {
        this.yard = yard;
        this.old = old;
        this.dead = dead;
        this.keep = keep;
        this.destination = destination;
        this.console = console;
        this.seconds = seconds;
        this.seed = seed;
        this.threads = threads;
        ground = GroundPaths.of(yard);
        interrupt = new Interrupt(this::endWithBest);
    }

    int run() {
        return interrupt.watched(console, this::repair);
    }

    private int repair() {
        Findings before = Audit.of(yard, old);
        this.before = before;
        if (before.clean() && dead.isEmpty()) {
            destination.write(old.repairs(List.of(), 0, 0), "No rule is broken: there is nothing to change.", console);
            return Exit.DONE;
        }
        Repaired repaired = Repair.of(
                yard, ground, old, dead, keep, new Watching(), budget(REPAIR_SHARE * seconds - elapsed(), this::ended));
        if (repaired instanceof Repaired.Mended mended) {
            return write(before, mended);
        }
        tell(before);
        if (!keep.isEmpty()) {
            return clash(repaired instanceof Repaired.Impossible);
        }
        if (repaired instanceof Repaired.Impossible impossible) {
            console.err().println("No repair exists.");
            double time = Math.min(EXPLAINING_MOST, Math.max(EXPLAINING_LEAST, seconds - elapsed()));
            Impasse impasse = Explaining.ofImpossible(
                    yard,
                    impossible.because(),
                    ModelLibrary.builtIn().boards().values(),
                    time,
                    interrupt::asked,
                    Explaining.Listener.NONE);
            console.err().println(ImpasseText.of(impasse));
            return Exit.BROKEN;
        }
        console.err().println("Stopped before any repair was found; that none exists is not proved.");
        console.err().println("Give it more --time, or lay the yard out anew with 'streamwright plan'.");
        return interrupt.asked() ? Exit.INTERRUPTED : Exit.STOPPED;
    }

    private boolean ended() {
        return interrupt.asked() || (!keep.isEmpty() && best == null && elapsed() > KEEPING_SHARE * seconds);
    }

    /** Keeps the best repair so far for an end that comes before the search's own. */
    private final class Watching implements Repaired.Judge {
        @Override
        public Repaired.Verdict judge(Plan plan) {
            return Rebalancing.judge(yard, plan);
        }

        @Override
        public void mended(Plan plan, double work) {
            best = new Repaired.Mended(plan, work, 0, true);
        }
    }

    /** The search does not come back in time after an interrupt: what it told so far is all there is. */
    private int endWithBest() {
        Repaired.Mended mended = best;
        Findings found = before;
        try {
            if (mended != null && found != null) {
                return write(found, mended);
            }
            console.err().println("Interrupted before any repair was found; nothing is written.");
            return Exit.STOPPED;
        } catch (RuntimeException | Error end) {
            return Complaints.ofEnd(end, console.err());
        }
    }

    private Repaired repair(Yard of, Set<Keep> kept, double time) {
        return Repair.of(of, ground, old, dead, kept, plan -> judge(of, plan), budget(time, interrupt::asked));
    }

    private Budget budget(double time, BooleanSupplier stopped) {
        return new Budget(Math.max(TIME_LEAST, time), 0, seed, threads, stopped);
    }

    private static Repaired.Verdict judge(Yard yard, Plan plan) {
        Findings findings = Audit.of(yard, plan);
        return new Repaired.Verdict(findings.list().stream().map(Finding::rule).toList(), findings.restated());
    }

    private int write(Findings before, Repaired.Mended mended) {
        best = new Repaired.Mended(mended.plan(), mended.work(), mended.workBound(), true);
        Plan plan = mended.plan();
        List<Change> changes = Difference.between(yard, old, plan, dead, WorkTable.broken(before));
        plan = plan.repairs(changes, mended.work(), mended.workBound());
        double reasonsUntil = elapsed() + Math.min(REASONS_SECONDS, REASONS_SHARE * seconds);
        plan = plan.withReasons(Reasons.of(yard, ground, plan, () -> interrupt.asked() || elapsed() > reasonsUntil));
        List<String> parts = new ArrayList<>();
        if (before.rules().stream().anyMatch(Cautions::needed)
                || changes.stream().anyMatch(change -> change.kind().equals("injection"))) {
            parts.add(Cautions.POWER + "\n");
        }
        parts.add(new RepairHead(yard.name(), dead.size()).of(before, mended, changes));
        parts.add("\n" + (changes.isEmpty() ? "There is nothing for a crew to do." : WorkTable.of(changes)));
        List<String> remedies =
                interrupt.asked() ? List.of() : new Remedies(yard, old, mended.work(), this::trial).list();
        if (!remedies.isEmpty()) {
            parts.add("\nLess work, outside the plan:\n" + String.join("\n", remedies));
        }
        return deliver(plan, String.join("\n", parts), mended.interrupted());
    }

    /** Once: the search may still come back while its best is being written. */
    private synchronized int deliver(Plan plan, String text, boolean early) {
        if (status == null) {
            destination.write(plan, text, console);
            console.out().flush();
            if (early) {
                console.err().println("Interrupted: the best repair so far has been written whole.");
            }
            status = early ? Exit.INTERRUPTED : Exit.DONE;
        }
        return status;
    }

    /** The least work found for another yard in a short time. */
    private Remedies.Trial trial(Yard other) {
        if (interrupt.asked()) {
            return Remedies.Trial.NONE;
        }
        Findings findings = Audit.of(other, old);
        if (dead.isEmpty() && WorkTable.count(findings) == 0) {
            return new Remedies.Trial(0, findings.restated().cost(), Set.of());
        }
        double time = Math.min(seconds * REMEDY_SHARE, seconds - elapsed());
        if (time < TIME_LEAST) {
            return Remedies.Trial.NONE;
        }
        return repair(other, keep, time) instanceof Repaired.Mended mended
                ? new Remedies.Trial(
                        mended.work(),
                        mended.plan().cost(),
                        mended.plan().boards().stream().map(Board::model).collect(Collectors.toSet()))
                : Remedies.Trial.NONE;
    }

    private void tell(Findings before) {
        console.err().println("What is broken:");
        dead.forEach(board -> console.err().println("  board " + board + ": no longer works"));
        before.list().stream()
                .filter(each -> !WorkTable.paper(each))
                .limit(20)
                .forEach(each -> console.err().println("  " + each.rule().label() + ": " + each.text()));
    }

    /** @param proved whether there is no repair, or only none was found */
    private int clash(boolean proved) {
        double until = elapsed() + Math.max(PERMISSIONS_LEAST, seconds - elapsed());
        Permissions permissions =
                new Permissions(keep, proved, (kept, time) -> repair(yard, kept, time), () -> until - elapsed());
        console.err().println(permissions.text());
        if (interrupt.asked()) {
            return Exit.INTERRUPTED;
        }
        return proved ? Exit.BROKEN : Exit.STOPPED;
    }

    private double elapsed() {
        return (System.nanoTime() - begin) / 1e9;
    }
}
