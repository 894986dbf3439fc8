package streamwright.solve;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import org.jspecify.annotations.Nullable;

/**
 * Proves how little any plan can cost. All plans are told apart, those first that may cost least: where the relaxation
 * has a part of a cable or of a board, by their numbers; then by a spot with boards or without. Where a case comes near
 * the best plan known, what could not be in a better one by its reduced cost goes, and the rest is solved in whole
 * numbers. The bound is the least over all cases, and a case that ends with a plan is a theorem about it.
 */
final class Proof {
    private static final double INF = Double.POSITIVE_INFINITY;
    /** A bound this near to the cost is as good as it: what is left is rounding. */
    static final double SAME = 1e-5;

    /** What rounds of cuts must gain before cases are told apart. */
    private static final Relaxation.Gain GAIN_FIRST = new Relaxation.Gain(10, 2e-4);

    /** That where cables are not yet kept within their length, but will be. */
    private static final Relaxation.Gain GAIN_BEFORE = new Relaxation.Gain(10, 2e-3);

    /** That while they are. */
    private static final Relaxation.Gain GAIN_LAST = new Relaxation.Gain(10, 1e-4);

    /** Cases this near to the best plan, as a share of its cost, are closed in whole numbers. */
    private static final double RIPE = 0.02;

    /** For one case that can still be told apart; and far from the best plan, where streams differ. */
    private static final double SECONDS_WHOLE = 12;

    private static final double SECONDS_FAR = 3;

    /**
     * Whole numbers raise a case by so much at once, as a share of the cost: what is in no plan below a cutoff so near is
     * soon seen, where all below the best plan known are too many to look at.
     */
    private static final double STEP = 0.01;

    /** Where even those are too many, half of it, and half of that down to this. */
    private static final double STEP_LEAST = 0.0025;

    /** Where streams differ, a case is tightened no further once it is so much above the least of all others, as a share of the cost. */
    private static final double AHEAD = 0.003;

    /** Whole solutions of one case that may turn out to be no plan before it is left open. */
    private static final int WHOLE_ROUNDS_MOST = 60;

    /**
     * Plans with so many cables and boards and boards at some spots and not at others, with a bound on all of them.
     *
     * @param parts of its counts, into which it is told apart first
     * @param spot at which it is told apart further; -1 where all are supposed
     * @param decided whether even that spot is as good as decided, so that it is better closed as it is
     * @param tried whether it was tried in whole numbers, in vain
     * @param tight whether its bound is what the relaxation gives: else there was a lesser one to look at
     */
    private record Case(
            Counts counts,
            Chosen spots,
            List<Counts> parts,
            int spot,
            boolean decided,
            double bound,
            boolean tried,
            boolean tight) {}

    /** @param open whether it may be closed when it is told apart further */
    private record Closed(Case one, double bound, @Nullable Snapshot plan, boolean open) {}

    private final Site site;
    private final Items items;
    private final Strands strands;
    private final Effort effort;
    private final Incumbent incumbent;
    private final Relaxation relaxation;
    private final double ripe;

    /** Whether the relaxation keeps cables within their length. */
    private final boolean lengths;

    private final PriorityQueue<Case> left = new PriorityQueue<>(Comparator.comparingDouble(Case::bound));

    private final Closings<Closed> closings;

    /** Null where they are not worth the time. */
    private final @Nullable Fleets fleets;

    private final ExecutorService workers;

    /** The least bound of the cases that are left open for good. */
    private double stuck = INF;

    /**
     * @param incumbent the best plan known, by which cases are closed, and to which better ones go
     * @param workers that close cases
     */
    Proof(Site site, Strands strands, Items items, Effort effort, Incumbent incumbent, ExecutorService workers) {
        this(site, strands, items, effort, incumbent, workers, RIPE);
    }

    /** @param ripe the share of the cost within which cases are closed in whole numbers */
    Proof(
            Site site,
            Strands strands,
            Items items,
            Effort effort,
            Incumbent incumbent,
            ExecutorService workers,
            double ripe) {
        // one worker is for cases that are told apart
        closings = new Closings<>(workers, effort.level() > 0 ? effort.workers() : Math.max(1, effort.workers() - 1));
        this.workers = workers;
        this.ripe = ripe;
        this.site = site;
        this.items = items;
        this.strands = strands;
        this.effort = effort;
        this.incumbent = incumbent;
        Snapshot best = incumbent.best();
        lengths = Lengths.matter(site, best);
        var workings = new Relaxation.Workings(strands, 2, effort::stopped, effort::secondsLeft, false);
        relaxation = new Relaxation(site, items, workings, MasterLimits.missingPrices(site, items));
        fleets = Fleets.matter(site)
                ? new Fleets(site, items, strands, effort, incumbent::cost, incumbent::raise, relaxation)
                : null;
        if (best != null) {
            new Start(site, items).of(best).forEach(relaxation.root()::addColumn);
            relaxation.inside(Point.of(site, items, best));
        }
    }

    /**
     * Raises the incumbent's bound as far as the effort allows.
     *
     * @param wide told when all workers will be needed from now on
     */
    void run(Runnable wide) throws InterruptedException, ExecutionException {
        Counts any = new Counts(relaxation.cablesAtLeast(), site.jacks(), 1, site.strings.length);
        hold(any, Chosen.NONE);
        Relaxation.Gain gain = fleets == null ? GAIN_FIRST : Fleets.GAIN;
        double all = tighten(lengths ? GAIN_BEFORE : gain);
        incumbent.raise(all);
        if (lengths) {
            relaxation.keepLengths();
            all = Math.max(all, tighten(gain));
            incumbent.raise(all);
        }
        if (closes(all)) {
            incumbent.raise(incumbent.cost());
            return;
        }
        if (fleets != null) {
            fleets.run(any, all, workers, wide);
            if (closes(fleets.bound(any))) {
                incumbent.raise(incumbent.cost());
                return;
            }
            hold(any, Chosen.NONE);
            all = Math.max(all, tighten(GAIN_FIRST));
        }
        left.add(found(any, Chosen.NONE, atLeast(any, all), true));
        while (!(left.isEmpty() && closings.isEmpty()) && !effort.stopped()) {
            raiseToLeast();
            if (effort.level() > 0) {
                closeTogether(wide);
            } else {
                step(wide);
            }
        }
        if (left.isEmpty() && closings.isEmpty()) {
            raise(INF);
        }
    }

    /** Closes the least cases, as many as there are workers, and waits for all: the same whoever is done first. */
    private void closeTogether(Runnable wide) throws InterruptedException, ExecutionException {
        while (!left.isEmpty() && !closings.isFull() && !effort.stopped()) {
            Case least = left.remove();
            if (closes(least.bound)) {
                continue;
            }
            if (least.tight && least.parts.isEmpty()) {
                begin(least, wide);
            } else {
                apart(least);
            }
        }
        for (Closed closed : closings.all()) {
            settle(closed);
        }
    }

    /**
     * One case on. Those that are ripe are closed in whole numbers beside all else; others, and ripe ones while that is
     * busy, are told apart.
     */
    private void step(Runnable wide) throws InterruptedException, ExecutionException {
        for (Closed closed : closings.done()) {
            settle(closed);
        }
        Case least = left.poll();
        List<Case> waiting = new ArrayList<>();
        while (least != null && (closes(least.bound) || (least.decided && closings.isFull()))) {
            if (!closes(least.bound)) {
                waiting.add(least);
            }
            least = left.poll();
        }
        left.addAll(waiting);
        if (least == null) {
            if (!closings.isEmpty()) {
                settle(closings.next());
            }
        } else if (!closings.isFull() && ripe(least)) {
            begin(least, wide);
        } else {
            apart(least);
        }
    }

    /** Tells a case apart: by its counts, or by a spot, at which there is a board or none. */
    private void apart(Case one) {
        relaxation.slim();
        if (!one.tight) {
            on(one);
            return;
        }
        List<Case> parts = new ArrayList<>();
        for (Counts counts : one.parts) {
            parts.add(untold(one, counts, one.spots));
        }
        if (parts.isEmpty()) {
            parts.add(untold(one, one.counts, one.spots.withUsed(one.spot)));
            parts.add(untold(one, one.counts, one.spots.withEmpty(one.spot)));
        }
        if (site.streamsDiffer) {
            left.addAll(parts);
        } else {
            parts.forEach(this::on);
        }
    }

    private Case untold(Case whole, Counts counts, Chosen spots) {
        return new Case(counts, spots, List.of(), -1, false, atLeast(counts, whole.bound), false, false);
    }

    /** A bound on plans with such numbers, whatever else is supposed of them. */
    private double atLeast(Counts counts, double bound) {
        return fleets == null ? bound : Math.max(bound, fleets.bound(counts));
    }

    private boolean ripe(Case one) {
        return one.tight && one.parts.isEmpty() && (one.decided || (!one.tried && isNear(one.bound)));
    }

    private boolean isNear(double bound) {
        return bound > (1 - ripe) * incumbent.cost();
    }

    private void begin(Case one, Runnable wide) {
        wide.run();
        boolean sure = one.decided && isNear(one.bound) && !site.streamsDiffer;
        double step = Math.min(incumbent.cost(), one.bound + STEP * incumbent.cost());
        begin(one, sure || effort.level() > 0 ? incumbent.cost() : step);
    }

    private void begin(Case one, double cutoff) {
        Master whole = whole(one, cutoff);
        if (whole != null) {
            closings.begin(one.bound, () -> close(one, whole, cutoff));
        } else if (effort.level() == 0 && !effort.stopped() && cutoff > one.bound + STEP_LEAST * incumbent.cost()) {
            // nearer to its bound less is left to list
            begin(one, (one.bound + cutoff) / 2);
        } else {
            settle(new Closed(one, one.bound, null, true));
        }
    }

    private void settle(Closed closed) {
        if (closed.plan != null) {
            incumbent.offer(closed.plan);
        }
        Case was = closed.one;
        boolean raised = closed.bound > was.bound + STEP_LEAST / 2 * incumbent.cost();
        if (closed.open && (was.spot >= 0 || raised) && effort.level() == 0) {
            left.add(new Case(
                    was.counts, was.spots, List.of(), was.spot, raised && was.decided, closed.bound, !raised, true));
        } else {
            stuck = Math.min(stuck, closed.bound);
        }
    }

    /** Raises the bound to the least of all cases that may still be closed. */
    private void raiseToLeast() {
        raise(Math.min(left.isEmpty() ? INF : left.element().bound, closings.least()));
    }

    private void raise(double least) {
        incumbent.raise(Math.min(Math.min(stuck, least), incumbent.cost()));
    }

    /** Tightens a case; where that is slow, because streams differ, only while no other is less. */
    private void on(Case one) {
        hold(one.counts, one.spots);
        double others = Math.min(left.isEmpty() ? INF : left.element().bound, incumbent.cost());
        double enough = site.streamsDiffer ? Math.max(one.bound, others) + AHEAD * incumbent.cost() : INF;
        double value = relaxation.tighten(GAIN_LAST, each -> closes(each) || each > enough);
        double bound = Math.max(one.bound, value);
        if (!closes(bound)) {
            left.add(found(one.counts, one.spots, bound, value <= enough));
        }
    }

    private void hold(Counts counts, Chosen spots) {
        relaxation.hold(counts);
        relaxation.choose(spots);
    }

    /**
     * A case as the last solution of the relaxation leaves it. Its numbers should be known before it is closed: that makes
     * whole numbers easier to find. Where streams differ that is far off, and most numbers never come to it.
     */
    private Case found(Counts counts, Chosen spots, double bound, boolean tight) {
        Point point = relaxation.root().point();
        boolean fix = !site.streamsDiffer || effort.level() > 0 || isNear(bound);
        List<Counts> parts = counts.apart(point.cables(site.controllers.length), point.boards(), fix);
        int spot = spots.leastDecided(point.used());
        if (parts.isEmpty() && spot < 0 && !fix) {
            parts = counts.apart(point.cables(site.controllers.length), point.boards(), true);
        }
        boolean decided = parts.isEmpty() && (spot < 0 || (fix && point.decided(spot)));
        return new Case(counts, spots, parts, spot, decided, bound, false, tight);
    }

    private boolean closes(double value) {
        return value >= incumbent.cost() - SAME;
    }

    private double tighten(Relaxation.Gain gain) {
        return relaxation.tighten(gain, this::closes);
    }

    /** The case in whole numbers, without what no plan below the cutoff can have. */
    private @Nullable Master whole(Case one, double cutoff) {
        hold(one.counts, one.spots);
        // rows that came in for other cases since may have made strands that are out too cheap to stay out
        if (!relaxation.priced()) {
            return null;
        }
        Master root = relaxation.root();
        Entering.Survivors survivors = relaxation.entering().survivors(cutoff);
        if (survivors == null) {
            return null;
        }
        Master whole = new Master(site, items, strands, Master.Kind.WHOLE);
        Rows.of(site, items).forEach(whole::addRow);
        root.bindingCuts().forEach(whole::addRow);
        whole.addRow(Rows.cables(site, one.counts.leastCables(), one.counts.mostCables()));
        whole.addRow(Rows.boards(one.counts.leastBoards(), one.counts.mostBoards()));
        whole.choose(one.spots);
        survivors.arcs().forEach(arc -> whole.addArc(arc[0], arc[1]));
        survivors.columns().forEach(whole::addColumn);
        if (lengths) {
            whole.keepLengths();
        }
        return whole;
    }

    private Closed close(Case one, Master whole, double cutoff) {
        long begin = System.nanoTime();
        Separation cuts = new Separation(site, items);
        double bound = one.bound;
        boolean measured = lengths;
        for (int round = 0; round < WHOLE_ROUNDS_MOST && !effort.stopped(); round++) {
            Programme.Ending ending = whole.solveWhole(cutoff - SAME, secondsLeft(one, begin), effort.nodes());
            bound = Math.max(bound, Math.min(whole.value(), cutoff));
            if (ending == Programme.Ending.NONE) {
                return new Closed(one, cutoff, null, cutoff < incumbent.cost() - SAME);
            }
            if (ending == Programme.Ending.GIVEN_UP) {
                return new Closed(one, bound, null, true);
            }
            whole.read();
            List<Row> broken = cuts.broken(whole.point());
            if (broken.isEmpty()) {
                broken = cuts.crowded(whole.point());
            }
            if (broken.isEmpty()) {
                // a whole solution is a plan, unless a rule that the relaxation does not know forbids it
                Realization.Result result = new Realization(whole).result();
                if (result instanceof Realization.Result.Plan plan) {
                    return new Closed(one, bound, plan.plan(), false);
                } else if (result instanceof Realization.Result.Unpackable unpackable) {
                    whole.exclude().contents(unpackable.contents());
                } else if (result instanceof Realization.Result.TooLong && !measured) {
                    whole.keepLengths();
                    measured = true;
                } else {
                    return new Closed(one, bound, null, true);
                }
            }
            broken.forEach(whole::addRow);
        }
        return new Closed(one, bound, null, false);
    }

    /** A case that can still be told apart is not worth all the time that is left. */
    private double secondsLeft(Case one, long begin) {
        double left = effort.secondsLeft();
        double spent = (System.nanoTime() - begin) / 1e9;
        boolean far = site.streamsDiffer && !isNear(one.bound);
        return one.spot < 0 || effort.level() > 0 ? left : Math.min(left, (far ? SECONDS_FAR : SECONDS_WHOLE) - spent);
    }
}
