package streamwright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import streamwright.check.Audit;
import streamwright.check.Finding;
import streamwright.check.Findings;
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
import streamwright.report.Figures;
import streamwright.solve.Budget;
import streamwright.solve.Keep;
import streamwright.solve.Repair;
import streamwright.solve.Repaired;
import streamwright.yard.Yard;

/** One repair: looked for, written with its work order, or explained where there is none. */
final class Rebalancing {
    /** Where things are to be kept and nothing is mended after this share of the time, permissions need the rest. */
    private static final double KEEPING_SHARE = 0.65;

    /** Seconds beyond the time until which permissions are tried, and how many they have at least. */
    private static final double PERMISSIONS_BEYOND = 2;

    private static final double PERMISSIONS_LEAST = 2;

    /** Reasons that take longer do without alternatives. */
    private static final double REASONS_SECONDS = 1.5;

    /** Of the time, for each remedy; of all of them together seconds beyond the time. */
    private static final double REMEDY_SHARE = 0.08;

    private static final double REMEDIES_BEYOND = 3;

    /** What the explanation of a yard without a plan may take of the time, beyond it, and in all. */
    private static final double EXPLAINING_SHARE = 0.25;

    private static final double EXPLAINING_BEYOND = 3.5;
    private static final double EXPLAINING_MOST = 20;

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
    private volatile boolean mended;

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
        interrupt = new Interrupt(() -> Exit.STOPPED);
    }

    int run() {
        return interrupt.watched(console, this::repair);
    }

    private int repair() {
        Findings before = Audit.of(yard, old);
        if (before.clean() && dead.isEmpty()) {
            destination.write(old.repairs(List.of(), 0, 0), "No rule is broken: there is nothing to change.", console);
            return Exit.DONE;
        }
        Repaired repaired =
                Repair.of(yard, ground, old, dead, keep, this::watched, budget(seconds - elapsed(), this::ended));
        if (repaired instanceof Repaired.Mended mended) {
            return write(before, mended);
        }
        tell(before);
        if (!keep.isEmpty()) {
            return clash(repaired instanceof Repaired.Impossible);
        }
        if (repaired instanceof Repaired.Impossible impossible) {
            console.err().println("No repair exists.");
            double time = Math.min(EXPLAINING_MOST, EXPLAINING_SHARE * seconds + EXPLAINING_BEYOND);
            Impasse impasse = Explaining.ofImpossible(
                    yard, impossible.because(), time, interrupt::asked, Explaining.Listener.NONE);
            console.err().println(ImpasseText.of(impasse));
            return Exit.BROKEN;
        }
        console.err().println("Stopped before any repair was found; that none exists is not proved.");
        console.err().println("Give it more --time, or lay the yard out anew with 'streamwright plan'.");
        return interrupt.asked() ? Exit.INTERRUPTED : Exit.STOPPED;
    }

    private boolean ended() {
        return interrupt.asked() || (!keep.isEmpty() && !mended && elapsed() > KEEPING_SHARE * seconds);
    }

    private Repaired.Verdict watched(Plan plan) {
        Repaired.Verdict verdict = judge(yard, plan);
        mended |= verdict.broken().isEmpty();
        return verdict;
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
        Plan plan = mended.plan();
        List<Change> changes = Difference.between(yard, old, plan, dead, WorkTable.broken(before));
        plan = plan.repairs(changes, mended.work(), mended.workBound());
        long reasonsFrom = System.nanoTime();
        plan = plan.withReasons(Reasons.of(
                yard,
                ground,
                plan,
                () -> interrupt.asked() || (System.nanoTime() - reasonsFrom) / 1e9 > REASONS_SECONDS));
        List<String> parts = new ArrayList<>();
        if (before.rules().stream().anyMatch(Cautions::needed)
                || changes.stream().anyMatch(change -> change.kind().equals("injection"))) {
            parts.add(Cautions.POWER + "\n");
        }
        parts.add(head(before, mended, changes));
        parts.add("\n" + (changes.isEmpty() ? "There is nothing for a crew to do." : WorkTable.of(changes)));
        List<String> remedies = new Remedies(yard, old, mended.work(), this::trial).list();
        if (!remedies.isEmpty()) {
            parts.add("\nLess work, outside the plan:\n" + String.join("\n", remedies));
        }
        destination.write(plan, String.join("\n", parts), console);
        if (mended.interrupted()) {
            console.err().println("Interrupted: the best repair so far has been written whole.");
            return Exit.INTERRUPTED;
        }
        return Exit.DONE;
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
        double time = Math.min(seconds * REMEDY_SHARE, seconds + REMEDIES_BEYOND - elapsed());
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

    private String head(Findings before, Repaired.Mended mended, List<Change> changes) {
        int broken = WorkTable.count(before);
        boolean least = mended.workBound() > mended.work() - 1e-6;
        String bound = least
                ? "proved the least"
                : mended.workBound() > 0
                        ? "no repair takes less than " + Figures.plain(mended.workBound()) + " minutes"
                        : "and how little would do is not proved";
        long moved = changes.stream()
                .filter(change -> change.minutes() > 0)
                .filter(change -> change.kind().equals("lead") || change.kind().equals("replug"))
                .filter(change -> change.from() != null)
                .count();
        long fresh = changes.stream()
                .filter(change -> change.kind().equals("lead") && change.from() == null)
                .count();
        Plan plan = mended.plan();
        return "%s: %s, %s%n".formatted(yard.name(), WorkTable.sum(changes), bound)
                + "  mends    %s%n".formatted(mends(broken))
                + "  moves    %s of %s, and plugs %s in%n"
                        .formatted(
                                Figures.plain(moved),
                                Figures.count(plan.totals().strings() - fresh, "string"),
                                Figures.count(fresh, "new one"))
                + "  cost     %s, with what is installed %s"
                        .formatted(
                                Figures.money(plan.cost()),
                                Figures.money(before.restated().cost()));
    }

    private String mends(int broken) {
        return Stream.of(
                        broken == 0 ? "" : Figures.count(broken, "broken rule"),
                        dead.isEmpty() ? "" : Figures.count(dead.size(), "dead board"))
                .filter(each -> !each.isEmpty())
                .reduce((one, other) -> one + " and " + other)
                .orElse("what the plan says wrongly of itself");
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
        double until = elapsed() + Math.max(PERMISSIONS_LEAST, seconds + PERMISSIONS_BEYOND - elapsed());
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
