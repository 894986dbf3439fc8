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
    private static final double SAME = 1e-5;

    /** The share of the value that rounds of cuts must gain before cases are told apart. */
    private static final double GAIN_FIRST = 2e-4;

    /** That share where cables are not yet kept within their length, but will be. */
    private static final double GAIN_BEFORE = 2e-3;

    /** That share while they are. */
    private static final double GAIN_LAST = 1e-4;

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
        this.ripe = ripe;
        this.workers = workers;
        this.site = site;
        this.items = items;
        this.strands = strands;
        this.effort = effort;
        this.incumbent = incumbent;
        Snapshot best = incumbent.best();
        lengths = Lengths.matter(site, best);
        var workings = new Relaxation.Workings(strands, 2, effort::stopped, effort::secondsLeft, false);
        relaxation = new Relaxation(site, items, workings, MasterLimits.missingPrices(site, items));
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
        double all = tighten(lengths ? GAIN_BEFORE : GAIN_FIRST);
        incumbent.raise(all);
        if (lengths) {
            relaxation.keepLengths();
            all = Math.max(all, tighten(GAIN_FIRST));
            incumbent.raise(all);
        }
        if (closes(all)) {
            incumbent.raise(incumbent.cost());
            return;
        }
        if (site.streamsDiffer && site.kinds.length > 1) {
            wide.run();
            makeups(any, all);
        }
        left.add(found(any, Chosen.NONE, all, true));
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

    private static final class Fleet {
        final Counts counts;
        double floor;
        @Nullable MakeupProof proof;
        boolean stuck;
        MakeupCase.@Nullable Listing listing;
        Fleet(Counts counts, double floor) { this.counts = counts; this.floor = floor; }
    }

    private List<MakeupMaster.Entered> solution() {
        List<MakeupMaster.Entered> all = new ArrayList<>();
        Point point = relaxation.root().point();
        for (int[] arc : relaxation.root().arcs()) if (point.arc()[arc[0]][arc[1]] > 0) all.add(new MakeupMaster.Entered(0, arc, null));
        for (Master.Column c : relaxation.root().columns) if (c.value > 0 && !c.relaxed) all.add(new MakeupMaster.Entered(0, new int[0], new Pricing.Found(c.spot, c.order, c.cost, 0)));
        return all;
    }

    private void makeups(Counts any, double all) throws InterruptedException, ExecutionException {
        PriorityQueue<Fleet> fleets = new PriorityQueue<>(Comparator.comparingDouble(f -> f.floor));
        fleets.add(new Fleet(any, all));
        long t0 = System.nanoTime();
        while (!effort.stopped() && !fleets.isEmpty()) {
            Fleet least = fleets.remove();
            incumbent.raise(Math.min(least.floor, incumbent.cost()));
            if (least.stuck || closes(least.floor)) { System.err.printf("fleet end %s%n", least.stuck); return; }
            Counts c = least.counts;
            if (c.leastCables() < c.mostCables()) {
                for (Counts part : List.of(new Counts(c.leastCables(), c.leastCables(), c.leastBoards(), c.mostBoards()), new Counts(c.leastCables() + 1, c.mostCables(), c.leastBoards(), c.mostBoards()))) {
                    hold(part, Chosen.NONE);
                    double value = Math.max(least.floor, tighten(Double.parseDouble(System.getProperty("gl", "1e-4"))));
                    System.err.printf("%.1f fleet %d..%d %.2f%n", (System.nanoTime()-t0)/1e9, part.leastCables(), part.mostCables(), value);
                    fleets.add(new Fleet(part, value));
                }
                continue;
            }
            double target = Math.min(incumbent.cost(), least.floor + STEP * incumbent.cost());
            if (least.listing == null || least.listing.below() < target) {
            hold(c, Chosen.NONE);
            if (!relaxation.priced()) { least.stuck = true; fleets.add(least); continue; }
            Entering.Survivors survivors = null;
            double below = 0;
            for (double step = Double.parseDouble(System.getProperty("list", "0.06")); survivors == null && step > STEP_LEAST / 2; step /= 2) {
                below = Math.min(incumbent.cost(), least.floor + step * incumbent.cost());
                survivors = relaxation.entering().survivors(below);
            }
            if (survivors == null) { least.stuck = true; fleets.add(least); System.err.printf("%.1f fleet %d too many%n", (System.nanoTime()-t0)/1e9, c.leastCables()); continue; }
            least.listing = new MakeupCase.Listing(survivors, below);
            System.err.printf("%.1f fleet %d listed %.2f survivors %d %d root %.2f%n", (System.nanoTime()-t0)/1e9, c.leastCables(), below, survivors.arcs().size(), survivors.columns().size(), relaxation.root().value());
            target = Math.min(target, below);
            }
            if (least.proof == null) {
                List<Row> rows = new ArrayList<>(Rows.of(site, items));
                rows.addAll(relaxation.root().bindingCuts());
                least.proof = new MakeupProof(site, items, strands, effort, workers, c.leastCables(), rows, solution(), least.floor);
            }
            least.proof.raise(least.listing, target);
            least.floor = Math.max(least.floor, least.proof.bound());
            least.stuck = least.proof.isStuck();
            System.err.printf("%.1f fleet %d target %.2f floor %.2f %s%n", (System.nanoTime()-t0)/1e9, c.leastCables(), target, least.floor, least.proof);
            fleets.add(least);
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

    private static Case untold(Case whole, Counts counts, Chosen spots) {
        return new Case(counts, spots, List.of(), -1, false, whole.bound, false, false);
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
        relaxation.hold(counts.leastCables(), counts.mostCables(), counts.leastBoards(), counts.mostBoards());
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
        int spot = point.leastDecided(spots);
        if (parts.isEmpty() && spot < 0 && !fix) {
            parts = counts.apart(point.cables(site.controllers.length), point.boards(), true);
        }
        boolean decided = parts.isEmpty() && (spot < 0 || (fix && point.decided(spot)));
        return new Case(counts, spots, parts, spot, decided, bound, false, tight);
    }

    private boolean closes(double value) {
        return value >= incumbent.cost() - SAME;
    }

    private double tighten(double gain) {
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
