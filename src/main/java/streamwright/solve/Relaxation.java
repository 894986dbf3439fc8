package streamwright.solve;

import com.google.ortools.linearsolver.MPConstraint;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.DoublePredicate;
import java.util.function.DoubleSupplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The linear relaxation of a site, tightened by pricing and cuts; numbers of cables and boards can be held. */
final class Relaxation {
    private static final int PRICED_AT_ONCE = 400;
    private static final int ROUNDS_MOST = 1_000;

    /** So many cuts are too many, if half of them do not bind. */
    private static final int CUTS_MANY = 600;

    /** Fewer broken rows than this leave time to look for rounded ones. */
    private static final int FEW = 5;

    /** Cuts of before that come back at once, and by how much a solution must break one. */
    private static final int BACK_AT_ONCE = 100;

    private static final double BROKEN = 2e-3;

    private static final double HALF = 0.5;

    /** Steps towards the last solution before it is looked at itself. */
    private static final int WAYS_MOST = 2;

    /**
     * Rounds of cuts between two looks that see all strands: cuts hold whatever is still out, a bound does not. With half
     * the time gone and no bound yet, each looks.
     */
    private static final int UNSURE_MOST = 8;

    /** How often the solver may lose its way, the last time without cuts. */
    private static final int RENEWED_MOST = 6;

    private final Site site;
    private final Items items;
    private final Separation separation;
    private final Workings workings;

    /** Every cut found, whatever numbers and spots were held. */
    private final List<Row> pool = new ArrayList<>();

    /** A point that no cut found so far cuts off; null where none is known. */
    private @Nullable Point inside;

    private final List<Pricing> pricings;
    private Master root;
    private MPConstraint cables;
    private MPConstraint boards;
    private double[] missing;
    private Chosen chosen = Chosen.NONE;
    private boolean lengths;
    private double[] missed = new double[0];
    private double[] worth = new double[0];

    /** The cuts that bound when the last were looked for: any change to the programme makes it forget them. */
    private List<Row> binding = List.of();

    /**
     * With what a relaxation works.
     *
     * @param pricings places that are priced at the same time
     * @param secondsLeft for one solution of the linear programme
     * @param brief whether it is one of many, which share the time
     */
    record Workings(
            Strands strands, int pricings, BooleanSupplier stopped, DoubleSupplier secondsLeft, boolean brief) {}

    /** What separation must gain, or it ends: in so many rounds of cuts such a share of the value. */
    record Gain(int rounds, double share) {
        /** Whether the last values show less. */
        boolean stalled(List<Double> values) {
            int before = values.size() - 1 - rounds;
            if (before < 0) {
                return false;
            }
            double value = values.get(values.size() - 1);
            return value - values.get(before) < share * value;
        }

        /** Half of that share, but no less than so much. */
        Gain halved(double least) {
            return new Gain(rounds, Math.max(least, share / 2));
        }
    }

    /** @param missing of each item: the price of leaving one of its strings out */
    Relaxation(Site site, Items items, Workings workings, double[] missing) {
        this.site = site;
        this.items = items;
        this.workings = workings;
        this.missing = missing;
        pricings = Stream.generate(() -> new Pricing(site, items, workings.stopped))
                .limit(workings.pricings)
                .toList();
        separation = new Separation(site, items, workings.brief);
        root = bare();
        cables = root.addRow(Rows.cables(site, 0, Double.POSITIVE_INFINITY));
        boards = root.addRow(Rows.boards(0, Integer.MAX_VALUE));
        new Neighbours(site).arcs().forEach(arc -> root.addArc(arc[0], arc[1]));
        new Start(site, items).alone().forEach(root::addColumn);
    }

    private Master bare() {
        Master master = new Master(site, items, workings.strands, Master.Kind.linear(missing));
        Rows.of(site, items).forEach(master::addRow);
        if (lengths) {
            master.keepLengths();
        }
        return master;
    }

    /** The programme as it stands; another one after each {@link #tighten}. */
    Master root() {
        return root;
    }

    /** What is not in it yet. */
    Entering entering() {
        return new Entering(root, pricings);
    }

    int cablesAtLeast() {
        return separation.cablesAtLeast();
    }

    /** Leaves only plans with so many cables and boards. */
    void hold(Counts counts) {
        cables.setBounds(counts.leastCables(), counts.mostCables());
        boards.setBounds(counts.leastBoards(), counts.mostBoards());
        choose(Chosen.NONE);
    }

    /** Leaves only plans in which these spots are empty or used, until {@link #hold} is called again. */
    void choose(Chosen spots) {
        chosen = spots;
        root.choose(spots);
    }

    /** Of each item, when the last bound was found: strings left out, and what one string more would add. */
    double[] missed() {
        return missed;
    }

    double[] worth() {
        return worth;
    }

    /** Keeps cables within their length from now on: the bound is better then, and takes longer. */
    void keepLengths() {
        lengths = true;
        root.keepLengths();
    }

    /** Sets other prices for leaving strings out. */
    void missing(double[] prices) {
        missing = prices;
        root.missing(prices);
    }

    /** The same relaxation with only those cuts that bind: the others make each solution slower. */
    void slim() {
        if (root.cuts() < CUTS_MANY) {
            return;
        }
        if (binding.size() <= root.cuts() / 2) {
            renew(binding);
        }
    }

    /** The same relaxation with these cuts alone. */
    private void renew(List<Row> cuts) {
        Master.Known known = root.known(cuts);
        root = bare();
        cables = root.addRow(Rows.cables(site, cables.lb(), cables.ub()));
        boards = root.addRow(Rows.boards(boards.lb(), boards.ub()));
        take(known);
        root.choose(chosen);
    }

    /** What {@link #tighten} found so far. */
    Master.Known known() {
        return root.known(root.cutsInForce());
    }

    /** Goes on from what the same relaxation found, were its prices others. */
    void take(Master.Known known) {
        known.cuts().forEach(root::addRow);
        known.arcs().forEach(arc -> root.addArc(arc[0], arc[1]));
        known.columns().forEach(root::addColumn);
    }

    /**
     * Prices and cuts until nothing more comes, or little.
     *
     * @param gain of some rounds of cuts, at least
     * @param enough ends it as soon as the bound is
     * @return the value, a bound under the rows in force; negative infinity where nothing is known
     */
    double tighten(Gain gain, DoublePredicate enough) {
        root.purge();
        double bound = Double.NEGATIVE_INFINITY;
        List<Double> values = new ArrayList<>();
        int renewed = 0;
        int unsure = 0;
        double seconds = workings.secondsLeft.getAsDouble();
        for (int round = 0; round < ROUNDS_MOST && !workings.stopped.getAsBoolean(); round++) {
            double value = root.solve(workings.secondsLeft.getAsDouble());
            if (Double.isNaN(value)) {
                if (renewed == RENEWED_MOST || workings.stopped.getAsBoolean()) {
                    return bound;
                }
                // the solver may lose its way in the numbers of its last basis, and finds it from the start
                renewed++;
                renew(renewed == RENEWED_MOST ? List.of() : root.cutsInForce());
                continue;
            }
            if (Double.isInfinite(value)) {
                return value;
            }
            root.read();
            Entering.Priced priced = entering().price(PRICED_AT_ONCE, false);
            if (priced == Entering.Priced.MORE) {
                continue;
            }
            binding = root.bindingCuts();
            List<Row> broken = broken();
            values.add(value);
            boolean last = broken.isEmpty() || gain.stalled(values) || enough.test(value);
            boolean late = bound == Double.NEGATIVE_INFINITY && workings.secondsLeft.getAsDouble() < HALF * seconds;
            if (priced == Entering.Priced.UNKNOWN && (last || late || ++unsure == UNSURE_MOST)) {
                unsure = 0;
                priced = entering().price(PRICED_AT_ONCE, true);
                if (priced == Entering.Priced.MORE) {
                    continue;
                }
                if (priced == Entering.Priced.UNKNOWN) {
                    return bound;
                }
            }
            if (priced == Entering.Priced.NONE) {
                bound = found(bound, value - 1e-9 * Math.abs(value));
                if (last || enough.test(bound)) {
                    return bound;
                }
            }
            slim();
            broken.forEach(root::addRow);
        }
        return bound;
    }

    /** The better of two bounds, the second of the solution as it stands, and what the better one rests on. */
    private double found(double before, double bound) {
        if (bound <= before) {
            return before;
        }
        missed = IntStream.range(0, items.size).mapToDouble(root::missed).toArray();
        worth = IntStream.range(0, items.size).mapToDouble(root::worth).toArray();
        return bound;
    }

    /** Cuts that the last solution breaks: those of before that it breaks most, or else new ones. */
    private List<Row> broken() {
        record Broken(Row row, double by) {}
        List<Row> back = pool.stream()
                .map(row -> new Broken(row, root.broken(row)))
                .filter(broken -> broken.by > BROKEN)
                .sorted(Comparator.comparingDouble(broken -> -broken.by))
                .limit(BACK_AT_ONCE)
                .map(Broken::row)
                .toList();
        if (!back.isEmpty()) {
            return back;
        }
        List<Row> found = new ArrayList<>(broken(root.point()));
        pool.addAll(found);
        return found;
    }

    /**
     * New cuts. Those that a point half way to the inside breaks cut deeper, and fewer rounds of them are needed, than those
     * that are looked for where the last solution is (Ben-Ameur and Neto, Networks 49, 2007). Half way to the inside,
     * where nothing is broken, is inside as well.
     */
    private List<Row> broken(Point outside) {
        for (int way = 0; inside != null && way < WAYS_MOST; way++) {
            Point between = inside.towards(outside, HALF);
            List<Row> deep = all(between).stream()
                    .filter(row -> root.broken(row) > BROKEN)
                    .toList();
            if (!deep.isEmpty()) {
                return deep;
            }
            inside = between;
        }
        return all(outside);
    }

    private List<Row> all(Point point) {
        List<Row> found = separation.broken(point);
        if (found.size() < FEW) {
            found.addAll(separation.rounded(point));
        }
        return found;
    }

    /** Tells of a plan, whose point no cut cuts off. */
    void inside(Point plan) {
        inside = plan;
    }

    /** Solves until nothing prices in; false where that is not reached. */
    boolean priced() {
        Entering.Priced priced = Entering.Priced.MORE;
        while (priced == Entering.Priced.MORE && !workings.stopped.getAsBoolean()) {
            if (!Double.isFinite(root.solve(workings.secondsLeft.getAsDouble()))) {
                return false;
            }
            root.read();
            priced = entering().price(PRICED_AT_ONCE, true);
        }
        return priced == Entering.Priced.NONE;
    }
}
