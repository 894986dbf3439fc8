package streamwright.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * A bound for yards that are too large for one relaxation: the sum of bounds of their regions.
 *
 * <p>The spots fall into regions, and what a plan costs falls to them: a board and its chains to the region of its spot,
 * a hop to the region of the spot where it ends. Each string belongs to one region. Let price(i) be any number from 0,
 * and let each region leave out strings at these prices. What a plan pays in region r is then, for strings that belong
 * there, at least the value of r's relaxation less the price of those that other regions serve; and for strings that
 * belong elsewhere, at least that value less the price of those that r does not serve. Summed over the regions the
 * prices of strings served elsewhere cancel, and what is left to take off the sum of the values is, for each string, its
 * price once for each region that could carry it but to which it does not belong (Lagrangian relaxation of the strings
 * shared by regions; Held and Karp 1971). Cables are not told apart by regions: since the streams of all cables hold all
 * pixels, they cost at least their price shared out over the pixels of full streams.
 *
 * <p>Prices are moved along the subgradient: up where a string is left out by its region, down where it is served twice.
 */
final class Regions {

    /** Bounds for each level of effort, where no clock ends it. */
    private static final int PASSES = 2;

    private static final Relaxation.Gain GAIN_FIRST = new Relaxation.Gain(10, 4e-3);
    private static final double GAIN_LAST = 5e-4;

    /** The bound lies under the best plan known by at least so much, or so one thinks while prices move. */
    private static final double TARGET = 0.98;

    /** Shares of the time left that all regions together may take: for first prices, and for one bound. */
    private static final double SHARE_ALONE = 0.3;

    private static final double SHARE_EACH = 0.9;

    /** The share that may go before another bound is begun. */
    private static final double SHARE_ALL = 0.85;

    /** A step beside the one before: the second, later ones where the bound rose, and where it fell. */
    private static final double STEP_SECOND = 0.3;

    private static final double STEP_AFTER_RISE = 0.8;
    private static final double STEP_AFTER_FALL = 0.5;

    /** So many bounds in turn that are no better, or hardly, are enough. */
    private static final int WEARY = 3;

    private static final double WORTHWHILE = 2e-3;

    private static final double FLAT = 1e-12;

    private final Site site;
    private final Items items;
    private final int most;
    private final Effort effort;
    private final Incumbent incumbent;
    private final List<Part> parts = new ArrayList<>();

    /** Of each item: the part to which it belongs. */
    private final int[] owner;

    private double[] price;

    /**
     * Some spots, the time for them, their last value, 0 while none is known, and what its solution left out. Of its
     * relaxation only what was found is kept from one bound to the next: the rest takes memory, and is soon built.
     */
    private static final class Part {
        final int[] spots;
        final Turn turn;
        int[] whole = new int[0];
        double value;
        double[] missed = new double[0];
        Master.Known known = Master.Known.NOTHING;

        /** Strands to begin with, until more is known. */
        List<Pricing.Found> begun = List.of();

        Part(int[] spots, Turn turn) {
            this.spots = spots;
            this.turn = turn;
        }
    }

    /** The time that one region may take, so that all have theirs. */
    private final class Turn {
        private volatile long end = Long.MAX_VALUE;

        /** Begins: an even part of a share of the time left. */
        void begin(double share, int waiting) {
            boolean timed = effort.level() == 0;
            double seconds = effort.secondsLeft() * share * effort.workers() / Math.max(1, waiting);
            end = timed ? System.nanoTime() + (long) (seconds * 1e9) : Long.MAX_VALUE;
        }

        boolean over() {
            return effort.stopped() || System.nanoTime() >= end;
        }

        double secondsLeft() {
            return end == Long.MAX_VALUE ? effort.secondsLeft() : Math.max(0.001, (end - System.nanoTime()) / 1e9);
        }

        Relaxation relaxation(Region region, double[] missing) {
            var workings = new Relaxation.Workings(new Strands(), 1, this::over, this::secondsLeft, true);
            return new Relaxation(region.site, region.items, workings, missing);
        }
    }

    /** @param most strings to a region: fewer cost less time, more lose less of the bound */
    Regions(Site site, Items items, int most, Effort effort, Incumbent incumbent) {
        this.most = most;
        this.site = site;
        this.items = items;
        this.effort = effort;
        this.incumbent = incumbent;
        owner = new int[items.size];
        price = new double[items.size];
    }

    /** Raises the incumbent's bound until the effort ends or prices no longer help. */
    void run(ExecutorService workers) throws InterruptedException, ExecutionException {
        begin(workers);
        double best = Double.NEGATIVE_INFINITY;
        double[] bestPrice = price.clone();
        double step = 1;
        Relaxation.Gain gain = GAIN_FIRST;
        double seconds = effort.secondsLeft();
        int weary = 0;
        for (int pass = 0; weary < WEARY && goesOn(pass, seconds); pass++) {
            double total = solve(workers, gain);
            weary = total > best + WORTHWHILE * incumbent.cost() ? 0 : weary + 1;
            if (total > best) {
                best = total;
                bestPrice = price.clone();
                incumbent.raise(Math.min(best, incumbent.cost()));
                step *= pass == 0 ? 1 : pass == 1 ? STEP_SECOND : STEP_AFTER_RISE;
            } else {
                step *= STEP_AFTER_FALL;
                price = bestPrice.clone();
            }
            gain = gain.halved(GAIN_LAST);
            if (!move(step, best)) {
                return;
            }
        }
    }

    /** The rest of the time is better spent on plans. */
    private boolean goesOn(int pass, double seconds) {
        boolean timed = effort.level() == 0;
        return !effort.stopped()
                && (timed
                        ? pass == 0 || effort.secondsLeft() > (1 - SHARE_ALL) * seconds
                        : pass < PASSES * effort.level());
    }

    private void begin(ExecutorService workers) throws InterruptedException, ExecutionException {
        double[] weight = new double[site.spots.length];
        for (int i = 0; i < site.strings.length; i++) {
            weight[site.leads[i][0].to()]++;
        }
        Halves.of(site.spots, weight, most).forEach(spots -> parts.add(new Part(spots, new Turn())));
        int[] partOf = new int[site.spots.length];
        for (int r = 0; r < parts.size(); r++) {
            for (int spot : parts.get(r).spots) {
                partOf[spot] = r;
            }
        }
        for (int k = 0; k < items.size; k++) {
            owner[k] = partOf[site.leads[items.sample[k]][0].to()];
        }
        AtomicInteger waiting = new AtomicInteger(parts.size());
        List<Callable<Void>> alone = new ArrayList<>();
        for (int r = 0; r < parts.size(); r++) {
            Part part = parts.get(r);
            BitSet own = new BitSet();
            for (int k = 0; k < items.size; k++) {
                own.set(k, owner[k] == r);
            }
            alone.add(() -> alone(part, own, waiting));
        }
        for (Future<Void> done : workers.invokeAll(alone)) {
            done.get();
        }
    }

    /** Prices to begin with: what each string is worth to its own region's relaxation, were there no other strings. */
    private @Nullable Void alone(Part part, BitSet own, AtomicInteger waiting) {
        if (own.isEmpty()) {
            return null;
        }
        Region region = Region.of(site, items, part.spots, own);
        Turn turn = new Turn();
        turn.begin(SHARE_ALONE, waiting.getAndDecrement());
        Relaxation relaxation = turn.relaxation(region, MasterLimits.missingPrices(region.site, region.items));
        if (Double.isFinite(relaxation.tighten(GAIN_FIRST, bound -> false))) {
            for (int k = 0; k < region.whole.length; k++) {
                price[region.whole[k]] = Math.max(0, relaxation.worth()[k]);
            }
        }
        part.begun = region.outward(relaxation.known().columns());
        return null;
    }

    /** One bound, with the prices as they are. */
    private double solve(ExecutorService workers, Relaxation.Gain gain)
            throws InterruptedException, ExecutionException {
        List<Part> open = parts;
        // those that did not end in their time have what the others leave
        for (int attempt = 0; attempt < 2 && !open.isEmpty() && !effort.stopped(); attempt++) {
            AtomicInteger waiting = new AtomicInteger(open.size());
            List<Callable<Boolean>> work = new ArrayList<>();
            for (Part part : open) {
                work.add(() -> solve(part, waiting.getAndDecrement(), gain));
            }
            List<Part> unknown = new ArrayList<>();
            List<Future<Boolean>> done = workers.invokeAll(work);
            for (int r = 0; r < open.size(); r++) {
                if (!done.get(r).get()) {
                    unknown.add(open.get(r));
                }
            }
            open = unknown;
        }
        double total = cablesAtLeast() - ownedMost();
        for (int r = 0; r < parts.size(); r++) {
            Part part = parts.get(r);
            total += part.value;
            for (int k : part.whole) {
                if (owner[k] != r) {
                    total -= price[k] * items.count[k];
                }
            }
        }
        return total;
    }

    /** Whether the part's value is known after it. */
    private boolean solve(Part part, int waiting, Relaxation.Gain gain) {
        part.turn.begin(SHARE_EACH, waiting);
        Region region = Region.of(site, items, part.spots);
        part.whole = region.whole;
        double[] prices = Arrays.stream(part.whole).mapToDouble(k -> price[k]).toArray();
        Relaxation relaxation = part.turn.relaxation(region, prices);
        relaxation.take(part.known);
        region.inward(part.begun).forEach(relaxation.root()::addColumn);
        double value = relaxation.tighten(gain, bound -> false);
        boolean found = Double.isFinite(value);
        part.value = found ? value : 0;
        part.missed = found ? relaxation.missed() : part.missed;
        part.known = relaxation.known();
        part.begun = List.of();
        return found;
    }

    /** What all cables cost at least, were they sold by the pixel of a full stream. */
    private double cablesAtLeast() {
        int streams = Math.max(1, Arrays.stream(site.streams).max().orElse(1));
        double full = 0;
        for (int i = 0; i < site.strings.length; i++) {
            full += site.pixelsAtLeast[i] / (double) Math.max(1, site.limitMost(site.kind[i]));
        }
        return site.cablePrice * full / streams;
    }

    /** What owned boards can save at most. */
    private double ownedMost() {
        return IntStream.range(0, site.offers.length)
                .filter(m -> site.stock[m] == m)
                .mapToDouble(m -> site.offers[m].have() * site.offers[m].price())
                .sum();
    }

    /** Prices one step along the subgradient; false where it is flat. */
    private boolean move(double step, double bound) {
        double[] slope = new double[items.size];
        for (int r = 0; r < parts.size(); r++) {
            Part part = parts.get(r);
            for (int k = 0; k < part.missed.length; k++) {
                int whole = part.whole[k];
                slope[whole] += part.missed[k] - (owner[whole] == r ? 0 : items.count[whole]);
            }
        }
        double square = Arrays.stream(slope).map(s -> s * s).sum();
        if (square < FLAT) {
            return false;
        }
        double length = step * Math.max(0.001 * incumbent.cost(), TARGET * incumbent.cost() - bound) / square;
        for (int k = 0; k < items.size; k++) {
            price[k] = Math.max(0, price[k] + length * slope[k]);
        }
        return true;
    }
}
