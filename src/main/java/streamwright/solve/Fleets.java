package streamwright.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.function.DoubleConsumer;
import java.util.function.DoubleSupplier;
import org.jspecify.annotations.Nullable;

/** Bounds yards of several kinds: plans are told apart by their number of cables, then by what these carry ({@link MakeupProof}). */
final class Fleets {
    /** What rounds of cuts must gain over all plans: what cables carry gains more. */
    static final Relaxation.Gain GAIN = new Relaxation.Gain(3, 3e-3);

    /** That over plans with so many cables. */
    private static final Relaxation.Gain GAIN_EACH = new Relaxation.Gain(3, 1e-2);

    /** What plans may cost above a bound and still be looked at, as a share of the cost: half of it where that is too much. */
    private static final double LISTED = 0.06;

    private static final double LISTED_LEAST = 0.002;
    private static final double ROUNDING = 1e-6;

    /** By how much the bound is raised at once, as a share of the cost. */
    private static final double STEP = 0.01;

    /** How far above the least of all others, where that is less: when time ends, what is above it is of no use. */
    private static final double AHEAD = 0.003;

    private static final double INF = Double.POSITIVE_INFINITY;

    /** Cases to solve for each level of effort. */
    private static final int CASES = 30;

    /** With more strings there are more cables than can be told apart. */
    private static final int STRINGS_MOST = 120;

    /** Plans with so many cables. */
    private static final class Fleet {
        final Counts counts;
        double bound;
        MakeupCase.@Nullable Listing listing;

        @Nullable
        MakeupProof proof;

        boolean stuck;

        Fleet(Counts counts, double bound) {
            this.counts = counts;
            this.bound = bound;
        }
    }

    private final Site site;
    private final Items items;
    private final Strands strands;
    private final Effort effort;
    private final DoubleSupplier cost;
    private final DoubleConsumer raised;
    private final Relaxation relaxation;
    private int[] need = new int[0];
    private final PriorityQueue<Fleet> fleets = new PriorityQueue<>(Comparator.comparingDouble(fleet -> fleet.bound));

    /**
     * @param cost of the best plan known, below which bounds matter
     * @param raised told of each bound on all plans
     * @param relaxation of the whole yard; what is held in it changes
     */
    Fleets(
            Site site,
            Items items,
            Strands strands,
            Effort effort,
            DoubleSupplier cost,
            DoubleConsumer raised,
            Relaxation relaxation) {
        this.site = site;
        this.items = items;
        this.strands = strands;
        this.effort = effort;
        this.cost = cost;
        this.raised = raised;
        this.relaxation = relaxation;
    }

    /** Whether it is worth the time. */
    static boolean matter(Site site) {
        return site.kinds.length > 1 && site.strings.length <= STRINGS_MOST;
    }

    /**
     * Raises the bound on all plans until the least fleet cannot be told apart further, or all is proved.
     *
     * @param any all plans
     * @param bound on them
     * @param wide told when all workers will be needed from now on
     */
    void run(Counts any, double bound, ExecutorService workers, Runnable wide)
            throws InterruptedException, ExecutionException {
        need = streamsAtLeast();
        fleets.add(new Fleet(any, bound));
        raiseLeast(workers, wide);
        List<Fleet> ended = List.copyOf(fleets);
        fleets.clear();
        for (Fleet fleet : ended) {
            if (fleet.proof != null) {
                fleet.proof.end();
                fleet.bound = Math.max(fleet.bound, fleet.proof.bound());
            }
            fleets.add(fleet);
        }
        raised.accept(Math.min(fleets.element().bound, cost.getAsDouble()));
    }

    /** Raises the least fleet, and then what is the least, as long as that helps. */
    private void raiseLeast(ExecutorService workers, Runnable wide) throws InterruptedException, ExecutionException {
        for (int cases = casesLeft(); cases > 0 && !effort.stopped(); cases = casesLeft()) {
            Fleet least = fleets.remove();
            if (least.stuck || closes(least.bound)) {
                fleets.add(least);
                return;
            }
            if (least.counts.leastCables() < least.counts.mostCables()) {
                least.counts.byCables().forEach(part -> fleets.add(new Fleet(part, tightened(part, least.bound))));
            } else {
                wide.run();
                raise(least, cases, workers);
                fleets.add(least);
            }
            raised.accept(Math.min(fleets.element().bound, cost.getAsDouble()));
        }
    }

    private double tightened(Counts counts, double bound) {
        relaxation.hold(counts);
        return Math.max(bound, relaxation.tighten(GAIN_EACH, this::closes));
    }

    private boolean closes(double bound) {
        return bound >= cost.getAsDouble() - Proof.SAME;
    }

    /** Of each kind, streams without which its strings do not fit. */
    private int[] streamsAtLeast() {
        double[] served = Arrays.stream(items.count).asDoubleStream().toArray();
        int[] need = new int[site.kinds.length];
        for (StreamNeeds.Need group : new StreamNeeds(site, items).of(served)) {
            need[site.kind[items.sample[group.items()[0]]]] += (int) Math.ceil(group.streams() - ROUNDING);
        }
        Arrays.setAll(need, k -> Math.max(need[k], StreamsAtLeast.of(site, k)));
        return need;
    }

    private void raise(Fleet fleet, int cases, ExecutorService workers)
            throws InterruptedException, ExecutionException {
        double ahead =
                Math.max(fleet.bound, fleets.isEmpty() ? INF : fleets.element().bound) + AHEAD * cost.getAsDouble();
        double target = Math.min(Math.min(cost.getAsDouble(), fleet.bound + STEP * cost.getAsDouble()), ahead);
        MakeupCase.Listing listing = fleet.listing;
        if (listing == null || listing.below() < target) {
            relaxation.hold(fleet.counts);
            listing = listing(fleet.bound);
            if (listing == null) {
                fleet.stuck = true;
                return;
            }
            fleet.listing = listing;
        }
        if (fleet.proof == null) {
            fleet.proof = new MakeupProof(site, items, strands, effort, workers, begin(fleet));
        }
        int begun = fleet.proof.begun();
        double before = fleet.bound;
        fleet.proof.raise(listing, Math.min(target, listing.below()), cases);
        fleet.bound = Math.max(fleet.bound, fleet.proof.bound());
        // whatever the cost, it must end
        boolean moved = fleet.proof.begun() > begun || fleet.bound > before;
        fleet.stuck = fleet.proof.isStuck() || !moved;
    }

    /** What is in plans that cost little above a bound; null where it is not known. */
    private MakeupCase.@Nullable Listing listing(double bound) {
        // rows that came in for other fleets since may have made strands that are out too cheap to stay out
        boolean priced = relaxation.priced();
        for (double share = LISTED; priced && share > LISTED_LEAST && !effort.stopped(); share /= 2) {
            double below = Math.min(cost.getAsDouble(), bound + share * cost.getAsDouble());
            Entering.Survivors survivors = relaxation.entering().survivors(below);
            if (survivors != null) {
                return new MakeupCase.Listing(survivors, below);
            }
        }
        return null;
    }

    /** Where to begin: with the rows that bind, and what the relaxation has of cables and strands. */
    private MakeupProof.Beginning begin(Fleet fleet) {
        Master root = relaxation.root();
        List<Row> rows = new ArrayList<>(Rows.ofAllCables(site, items));
        rows.addAll(root.bindingCuts());
        List<MakeupMaster.Entered> entered = new ArrayList<>();
        for (int[] arc : root.arcs()) {
            if (root.point().arc()[arc[0]][arc[1]] > 0) {
                entered.add(new MakeupMaster.Entered(0, arc, null));
            }
        }
        for (Master.Column column : root.columns) {
            if (column.value > 0 && !column.relaxed) {
                Pricing.Found found = new Pricing.Found(column.spot, column.order, column.cost, 0);
                entered.add(new MakeupMaster.Entered(0, new int[0], found));
            }
        }
        return new MakeupProof.Beginning(fleet.counts.leastCables(), need, rows, entered, fleet.bound);
    }

    private int casesLeft() {
        int begun = fleets.stream()
                .mapToInt(fleet -> fleet.proof == null ? 0 : fleet.proof.begun())
                .sum();
        return effort.level() == 0 ? Integer.MAX_VALUE : CASES * effort.level() - begun;
    }

    /** The least bound on plans with some numbers of cables. */
    double bound(Counts counts) {
        return fleets.stream()
                .filter(fleet -> fleet.counts.leastCables() <= counts.mostCables()
                        && counts.leastCables() <= fleet.counts.mostCables())
                .mapToDouble(fleet -> fleet.bound)
                .min()
                .orElse(INF);
    }
}
