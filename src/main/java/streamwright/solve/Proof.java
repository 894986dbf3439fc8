package streamwright.solve;

import com.google.ortools.linearsolver.MPConstraint;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Future;
import org.jspecify.annotations.Nullable;

/**
 * Proves how little any plan can cost. The relaxation is solved for each number of cables and boards that could still
 * beat the best plan known; what could not be in such a plan by its reduced cost goes; the rest is solved in whole
 * numbers. The bound is the least over all these cases, and a case that ends with a plan is a theorem about it.
 */
final class Proof {
    private static final double SAME = 1e-5;

    /** A dual that is nothing but rounding. */
    private static final double FLAT = 1e-9;

    private static final int PRICED_AT_ONCE = 400;
    private static final int ROUNDS_MOST = 1_000;

    /** Rounds of cuts that together must gain a share of the value, or separation ends. */
    private static final int PATIENCE = 10;

    /** That share while cases are told apart, and when one is to be closed. */
    private static final double GAIN_FIRST = 1e-3;

    private static final double GAIN_LAST = 2e-4;

    /** Whole solutions of one case that may turn out to be no plan before it is left open. */
    private static final int WHOLE_ROUNDS_MOST = 60;

    /** So many cuts are too many. */
    private static final int CUTS_MANY = 600;

    /** Fewer broken rows than this leave time to look for rounded ones. */
    private static final int FEW = 5;

    /** One number of cables and boards, with a bound on all plans that have them. */
    private record Case(int cables, int boards, double bound) {}

    private record Closed(double bound, @Nullable Snapshot plan) {}

    private final Site site;
    private final Items items;
    private final Strands strands;
    private final Separation separation;
    private final Effort effort;
    private final Incumbent incumbent;
    private Master root;
    private MPConstraint cables;
    private MPConstraint boards;

    /**
     * @param incumbent the best plan known, by which cases are closed, and to which better ones go
     */
    Proof(Site site, Strands strands, Items items, Effort effort, Incumbent incumbent) {
        this.site = site;
        this.items = items;
        this.strands = strands;
        this.effort = effort;
        this.incumbent = incumbent;
        separation = new Separation(site, items);
        root = new Master(site, items, strands, false, effort::stopped);
        Rows.of(site, items).forEach(root::addRow);
        cables = root.addRow(Rows.cables(site, 0, Double.POSITIVE_INFINITY));
        boards = root.addRow(Rows.boards(0, Integer.MAX_VALUE));
        new Neighbours(site).arcs().forEach(arc -> root.addArc(arc[0], arc[1]));
        Start start = new Start(site, items);
        start.alone().forEach(root::addColumn);
        Snapshot best = incumbent.best();
        if (best != null) {
            start.of(best).forEach(root::addColumn);
        }
    }

    /**
     * Raises the incumbent's bound as far as the effort allows.
     *
     * @param wide told when all workers will be needed from now on
     */
    void run(ExecutorService workers, Runnable wide) throws InterruptedException, ExecutionException {
        double all = tighten(GAIN_FIRST);
        incumbent.raise(all);
        List<Case> open = new ArrayList<>();
        if (closes(all)) {
            incumbent.raise(incumbent.cost());
            return;
        }
        if (!cases(all, open)) {
            return;
        }
        incumbent.raise(Math.min(least(open), incumbent.cost()));
        wide.run();
        open.sort(Comparator.comparingDouble(Case::bound));
        List<Case> left = new ArrayList<>(open);
        double stuck = Double.POSITIVE_INFINITY;
        while (!left.isEmpty() && !effort.stopped()) {
            List<Callable<Closed>> work = new ArrayList<>();
            int together = Math.min(effort.workers(), left.size());
            double cutoff = incumbent.cost();
            for (Case one : left.subList(0, together)) {
                Master whole = whole(one, cutoff);
                work.add(() -> close(one, whole, cutoff));
            }
            for (Future<Closed> future : workers.invokeAll(work)) {
                Closed closed = future.get();
                if (closed.plan != null) {
                    incumbent.offer(closed.plan);
                }
                stuck = Math.min(stuck, closed.bound);
            }
            left.subList(0, together).clear();
            incumbent.raise(Math.min(Math.min(stuck, least(left)), incumbent.cost()));
        }
    }

    /** The same relaxation with only those cuts that bind: the others make each solution slower. */
    private void slim() {
        if (root.cuts() < CUTS_MANY) {
            return;
        }
        Master slimmer = new Master(site, items, strands, false, effort::stopped);
        Rows.of(site, items).forEach(slimmer::addRow);
        cables = slimmer.addRow(Rows.cables(site, 0, Double.POSITIVE_INFINITY));
        boards = slimmer.addRow(Rows.boards(0, Integer.MAX_VALUE));
        root.bindingCuts().forEach(slimmer::addRow);
        root.arcs().forEach(arc -> slimmer.addArc(arc[0], arc[1]));
        root.columns().forEach(slimmer::addColumn);
        root = slimmer;
    }

    private static double least(List<Case> cases) {
        return cases.stream().mapToDouble(Case::bound).min().orElse(Double.POSITIVE_INFINITY);
    }

    private boolean closes(double value) {
        return value >= incumbent.cost() - SAME;
    }

    /** Prices and cuts until nothing more comes; the value, a bound under the rows in force. */
    private double tighten(double gain) {
        double bound = Double.NEGATIVE_INFINITY;
        List<Double> values = new ArrayList<>();
        for (int round = 0; round < ROUNDS_MOST && !effort.stopped(); round++) {
            double value = root.solve(effort.secondsLeft());
            if (Double.isNaN(value)) {
                return bound;
            }
            if (Double.isInfinite(value)) {
                return value;
            }
            root.read();
            Master.Priced priced = root.price(PRICED_AT_ONCE);
            if (priced == Master.Priced.MORE) {
                continue;
            }
            if (priced == Master.Priced.UNKNOWN) {
                return bound;
            }
            bound = Math.max(bound, value - 1e-9 * Math.abs(value));
            if (closes(bound)) {
                return bound;
            }
            List<Row> broken = separation.broken(root);
            if (broken.size() < FEW) {
                broken.addAll(separation.rounded(root));
            }
            values.add(value);
            boolean stalled =
                    values.size() > PATIENCE && value - values.get(values.size() - 1 - PATIENCE) < gain * value;
            if (broken.isEmpty() || stalled) {
                return bound;
            }
            broken.forEach(root::addRow);
        }
        return bound;
    }

    /**
     * Every number of cables and boards that could still beat the incumbent; false where the list was cut short. Numbers
     * are tried from the relaxation's own outwards. The dual of a number's row is a subgradient of the relaxation's
     * value, which is convex in the number: where a number closes and the value does not fall beyond it, all beyond close.
     */
    private boolean cases(double all, List<Case> open) {
        int least = separation.cablesAtLeast();
        int middle = Math.max(least, (int) Math.floor(root.cables() + 1e-6));
        for (int u = middle; u >= least && !effort.stopped() && withCables(u, -1, all, open); u--) {}
        for (int u = middle + 1; u <= site.jacks() && !effort.stopped() && withCables(u, 1, all, open); u++) {}
        cables.setBounds(0, Double.POSITIVE_INFINITY);
        return !effort.stopped();
    }

    /** False where no plan with so many cables, nor with any number beyond, beats the incumbent. */
    private boolean withCables(int u, int direction, double floor, List<Case> open) {
        slim();
        cables.setBounds(u, u);
        boards.setBounds(0, Double.POSITIVE_INFINITY);
        double any = Math.max(floor, tighten(GAIN_FIRST));
        if (closes(any)) {
            return !Double.isInfinite(any) && direction * cables.dualValue() < -FLAT;
        }
        int middle = (int) Math.floor(root.boards() + 1e-6);
        for (int k = middle; k >= 1 && withBoards(u, k, -1, any, open); k--) {}
        for (int k = middle + 1; k <= site.strings.length && withBoards(u, k, 1, any, open); k++) {}
        boards.setBounds(0, Double.POSITIVE_INFINITY);
        return true;
    }

    private boolean withBoards(int u, int k, int direction, double floor, List<Case> open) {
        if (effort.stopped()) {
            return false;
        }
        slim();
        cables.setBounds(u, u);
        boards.setBounds(k, k);
        double bound = Math.max(floor, tighten(GAIN_LAST));
        if (closes(bound)) {
            return !Double.isInfinite(bound) && direction * boards.dualValue() < -FLAT;
        }
        open.add(new Case(u, k, bound));
        return true;
    }

    /** Solves until nothing prices in; false where that is not reached. */
    private boolean priced() {
        Master.Priced priced = Master.Priced.MORE;
        while (priced == Master.Priced.MORE && !effort.stopped()) {
            if (!Double.isFinite(root.solve(effort.secondsLeft()))) {
                return false;
            }
            root.read();
            priced = root.price(PRICED_AT_ONCE);
        }
        return priced == Master.Priced.NONE;
    }

    /** The case in whole numbers, without what no plan below the cutoff can have. */
    private @Nullable Master whole(Case one, double cutoff) {
        cables.setBounds(one.cables, one.cables);
        boards.setBounds(one.boards, one.boards);
        // rows that came in for other cases since may have made strands that are out too cheap to stay out
        if (!priced()) {
            return null;
        }
        Master.Survivors survivors = root.survivors(cutoff);
        if (survivors == null) {
            return null;
        }
        Master whole = new Master(site, items, strands, true, effort::stopped);
        Rows.of(site, items).forEach(whole::addRow);
        root.bindingCuts().forEach(whole::addRow);
        whole.addRow(Rows.cables(site, one.cables, one.cables));
        whole.addRow(Rows.boards(one.boards, one.boards));
        survivors.arcs().forEach(arc -> whole.addArc(arc[0], arc[1]));
        survivors.columns().forEach(whole::addColumn);
        return whole;
    }

    private Closed close(Case one, @Nullable Master whole, double cutoff) {
        if (whole == null) {
            return new Closed(one.bound, null);
        }
        Separation cuts = new Separation(site, items);
        double bound = one.bound;
        boolean measured = false;
        for (int round = 0; round < WHOLE_ROUNDS_MOST && !effort.stopped(); round++) {
            Master.Ending ending = whole.solveWhole(cutoff - SAME, effort.secondsLeft(), effort.nodes());
            bound = Math.max(bound, Math.min(whole.value, cutoff));
            if (ending == Master.Ending.NONE) {
                return new Closed(cutoff, null);
            }
            if (ending == Master.Ending.GIVEN_UP) {
                return new Closed(bound, null);
            }
            whole.read();
            List<Row> broken = cuts.broken(whole);
            if (broken.isEmpty()) {
                // a whole solution is a plan, unless a rule that the relaxation does not know forbids it
                Realization.Result result = new Realization(whole).result();
                if (result instanceof Realization.Result.Plan plan) {
                    return new Closed(bound, plan.plan());
                } else if (result instanceof Realization.Result.Unpackable unpackable) {
                    whole.exclude().contents(unpackable.contents());
                } else if (result instanceof Realization.Result.TooLong && !measured) {
                    whole.exclude().cableLengths();
                    measured = true;
                } else {
                    return new Closed(bound, null);
                }
            }
            broken.forEach(whole::addRow);
        }
        return new Closed(bound, null);
    }
}
