package streamwright.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** What a solved programme has not in yet although it is too cheap to stay out: strands, by pricing, and arcs. */
final class Entering {
    private static final double PRICED = 1e-6;

    /** Chains looked at for each spot: at first, before chains may repeat items, and where all must be known. */
    private static final long LABELS_QUICK = 500;

    /** The same, where the first look found nothing. */
    private static final long LABELS_MORE = 20_000;

    /** The same, for all spots together. */
    private static final long LABELS_LONG = 6_000_000;

    /** The same, with many items: what is not seen then is bounded by what may be no real chain. */
    private static final long LABELS_MORE_OF_MANY = 1_000;

    private static final long LABELS_LONG_OF_MANY = 30_000;

    private static final long LABELS_MOST = 200_000;
    private static final int COLUMNS_MOST = 40_000;

    private final Master master;
    private final Items items;
    private final int spots;

    /** What prices, each by itself at the same time. */
    private final List<Pricing> pricings;

    Entering(Master master, List<Pricing> pricings) {
        this.master = master;
        this.pricings = pricings;
        items = master.items;
        spots = master.site.spots.length;
    }

    /** How pricing ended. */
    enum Priced {
        /** Something came in. */
        MORE,
        /** Nothing is too cheap to stay out: the value is a bound. */
        NONE,
        /** There is too much to look at. */
        UNKNOWN
    }

    /**
     * Brings in what the last solution's duals find too cheap to stay out.
     *
     * @param most strands that come in, and arcs
     * @param thorough whether to look on where a quick look finds nothing and has not seen all
     */
    Priced price(int most, boolean thorough) {
        Duals duals = master.duals();
        List<Pricing.Found> found = new ArrayList<>();
        BitSet open = everySpot();
        lookAhead(duals);
        columnsBelow(duals, -PRICED, LABELS_QUICK, Look.SHARED, open, found);
        if (thorough && found.isEmpty() && !open.isEmpty()) {
            long labels = Growth.isMany(items) ? LABELS_MORE_OF_MANY : LABELS_MORE;
            columnsBelow(duals, -PRICED, labels, Look.ALONE, open, found);
        }
        if (thorough && found.isEmpty() && !open.isEmpty()) {
            long labels = Growth.isMany(items) ? LABELS_LONG_OF_MANY : LABELS_LONG;
            columnsBelow(duals, -PRICED, labels / spots, Look.RELAXED, open, found);
        }
        boolean complete = open.isEmpty() && found.size() <= COLUMNS_MOST;
        double[][] reducedArcs = reducedArcs(duals, true);
        found.subList(0, Math.min(most, found.size())).forEach(master::addColumn);
        boolean more = !found.isEmpty();
        List<int[]> cheap = below(reducedArcs, -PRICED);
        cheap.subList(0, Math.min(most, cheap.size())).forEach(between -> master.addArc(between[0], between[1]));
        more |= !cheap.isEmpty();
        return more ? Priced.MORE : complete ? Priced.NONE : Priced.UNKNOWN;
    }

    /** How far ahead to look at a spot. */
    private enum Look {
        /** Once for all spots. */
        SHARED,
        /** For each spot. */
        ALONE,
        /** For each spot, and let in chains with items that repeat where all others are too many to look at. */
        RELAXED
    }

    private BitSet everySpot() {
        BitSet all = new BitSet();
        all.set(0, spots);
        return all;
    }

    /** Before any look. */
    private void lookAhead(Duals duals) {
        double[] most = duals.most();
        pricings.stream().parallel().forEach(pricing -> pricing.lookAhead(most));
    }

    /**
     * Looks at some spots, shared out evenly; what is found comes in a fixed order.
     *
     * @param open the spots; those at which nothing is missing leave
     */
    private void columnsBelow(Duals duals, double bar, long labels, Look look, BitSet open, List<Pricing.Found> found) {
        int[] at = open.stream().toArray();
        List<Pricing.Result> results = IntStream.range(0, pricings.size())
                .parallel()
                .mapToObj(w -> at(w, at, duals, bar, labels, look))
                .flatMap(List::stream)
                .toList();
        for (Pricing.Result result : results) {
            found.addAll(result.found());
            if (result.complete()) {
                open.clear(result.spot());
            }
        }
        found.sort(Comparator.comparingDouble(Pricing.Found::reduced)
                .thenComparingInt(Pricing.Found::spot)
                .thenComparing(Pricing.Found::order, Arrays::compare));
    }

    private List<Pricing.Result> at(int first, int[] at, Duals duals, double bar, long labels, Look look) {
        Pricing pricing = pricings.get(first);
        List<Pricing.Result> results = new ArrayList<>();
        for (int i = first; i < at.length; i += pricings.size()) {
            Pricing.Result result = pricing.below(at[i], duals.at(at[i]), bar, labels, look != Look.SHARED);
            boolean enough =
                    result.complete() || look != Look.RELAXED || !result.found().isEmpty();
            results.add(enough ? result : new Pricing.Result(at[i], pricing.relaxed(), true));
        }
        return results;
    }

    /** The arcs below a bar, least first. */
    private static List<int[]> below(double[][] reduced, double bar) {
        List<int[]> found = new ArrayList<>();
        for (int from = 0; from < reduced.length; from++) {
            for (int to = 0; to < reduced[from].length; to++) {
                if (reduced[from][to] < bar) {
                    found.add(new int[] {from, to});
                }
            }
        }
        found.sort(Comparator.comparingDouble(between -> reduced[between[0]][between[1]]));
        return found;
    }

    private double[][] reducedArcs(Duals duals, boolean onlyOut) {
        double[][] reduced = new double[master.arc.length][spots];
        double[][] worth = new double[master.arc.length][spots];
        for (Master.Held held : duals.arcs()) {
            held.row().addArcs(held.constraint().dualValue(), worth);
        }
        Lengths lengths = master.lengths();
        double[] drawn = lengths == null ? new double[0] : lengths.duals();
        for (int from = 0; from < master.arc.length; from++) {
            for (int to = 0; to < spots; to++) {
                boolean skip = (onlyOut && master.arc[from][to] != null) || !master.limits.mayJoin(from, to);
                double room = skip || lengths == null ? 0 : lengths.room(drawn, from, to);
                reduced[from][to] =
                        skip ? Double.POSITIVE_INFINITY : master.limits.arcCost(from, to) - worth[from][to] + room;
            }
        }
        return reduced;
    }

    /** What may be in a plan that costs less than the bar: all whose reduced cost does not lift the value above it. */
    record Survivors(List<int[]> arcs, List<Pricing.Found> columns) {}

    /** Null where they are too many to list. */
    @Nullable
    Survivors survivors(double bar) {
        Duals duals = master.duals();
        double room = bar - master.value() + PRICED;
        List<int[]> arcs = new ArrayList<>();
        double[][] reduced = reducedArcs(duals, false);
        for (int from = 0; from < master.arc.length; from++) {
            for (int to = 0; to < spots; to++) {
                if (reduced[from][to] <= room) {
                    arcs.add(new int[] {from, to});
                }
            }
        }
        List<Pricing.Found> found = new ArrayList<>();
        BitSet open = everySpot();
        lookAhead(duals);
        columnsBelow(duals, room, LABELS_MOST, Look.ALONE, open, found);
        return open.isEmpty() && found.size() <= COLUMNS_MOST ? new Survivors(arcs, found) : null;
    }
}
