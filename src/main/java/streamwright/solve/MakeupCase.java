package streamwright.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.DoubleSupplier;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** All plans whose cables have certain make-ups, and a bound on them. */
final class MakeupCase {
    private static final int ROUNDS_MOST = 60;
    private static final int CUTS_AT_ONCE = 60;
    private static final double BROKEN = 0.01;

    /** Where fewer rows than these are broken, those that count boards whole come as well. */
    private static final int FEW = 25;

    /** A part that is so much above the bound, as a share of it, is as good as closed. */
    private static final double CLOSED = 0.02;

    private static final Relaxation.Gain GAIN = new Relaxation.Gain(4, 5e-3);

    final Makeups makeups;
    final Chosen chosen;

    /** By which numbers it was told from other cases of the same make-ups. */
    final List<MakeupMaster.Of> told;

    /** How to tell it apart by what cables carry, and by which number once that is known. */
    private @Nullable MakeupSplit split;

    private @Nullable Tally tally;

    private final Site site;
    private final Items items;

    /** How to build the programme, which is done by whoever solves it. */
    private final Supplier<MakeupMaster> built;

    private @Nullable MakeupMaster programme;

    /** No plan of this case costs less. */
    double bound;

    /** Whether the bound is all that the relaxation gives: else it was enough. */
    private boolean tight;

    private @Nullable Listing listing;

    private List<Point> points = List.of();
    private double[] used = new double[0];

    /** @param built the programme, but for what is chosen and told */
    MakeupCase(
            Site site,
            Items items,
            Makeups makeups,
            Chosen chosen,
            List<MakeupMaster.Of> told,
            double bound,
            Supplier<MakeupMaster> built) {
        this.told = told;
        this.site = site;
        this.items = items;
        this.built = built;
        this.bound = bound;
        this.makeups = makeups;
        this.chosen = chosen;
    }

    /**
     * What a plan can have that costs less than so much.
     *
     * @param below that cost: no bound found with it is above
     */
    record Listing(Entering.Survivors survivors, double below) {}

    boolean isTight() {
        return tight;
    }

    /** The programme as last solved. */
    MakeupMaster master() {
        if (programme == null) {
            programme = built.get();
            programme.choose(chosen);
            programme.addTold(told);
        }
        return programme;
    }

    /**
     * Raises the bound as far as it goes.
     *
     * @param of what may come in; the programme begins with what it had
     * @param target that is enough, no more than what is listed
     */
    void tighten(Listing of, double target, DoubleSupplier secondsLeft, BooleanSupplier stopped) {
        MakeupMaster master = master();
        if (!of.equals(listing)) {
            master.list(of.survivors);
            listing = of;
        }
        List<Double> values = new ArrayList<>();
        boolean full = false;
        for (int round = 0; round < ROUNDS_MOST && !stopped.getAsBoolean(); round++) {
            double value = master.solve(secondsLeft.getAsDouble());
            if (Double.isNaN(value)) {
                break;
            }
            if (Double.isInfinite(value)) {
                if (full) {
                    bound = Math.max(bound, of.below);
                    return;
                }
                master.enterAll();
                full = true;
                continue;
            }
            points = read();
            used = master.used();
            if (master.price()) {
                round--;
                continue;
            }
            bound = Math.max(bound, Math.min(of.below, value - 1e-9 * Math.abs(value)));
            values.add(value);
            if (bound >= target) {
                return;
            }
            List<MakeupMaster.Of> broken = GAIN.stalled(values) ? List.of() : broken();
            if (broken.isEmpty()) {
                break;
            }
            master.addCuts(broken);
        }
        split = MakeupSplit.of(site, items, makeups, points);
        if (split == null) {
            tally = tally(secondsLeft, stopped);
        }
        tight = true;
    }

    /** The number that raises both its parts most, as far as a look at each shows; null where all are whole. */
    private @Nullable Tally tally(DoubleSupplier secondsLeft, BooleanSupplier stopped) {
        Tally best = null;
        double most = Double.NEGATIVE_INFINITY;
        for (Tally each : Tally.undecided(site, points)) {
            if (stopped.getAsBoolean()) {
                break;
            }
            double few = gain(master().tried(each.few(), secondsLeft.getAsDouble()));
            double many = gain(master().tried(each.many(), secondsLeft.getAsDouble()));
            double score = MakeupSplit.score(few, many);
            if (score > most) {
                most = score;
                best = each;
            }
        }
        if (best != null) {
            // the parts begin with what this solution has, without the last row tried
            master().solve(secondsLeft.getAsDouble());
        }
        return best;
    }

    /** By how much a look raises a part, as far as it matters. */
    private double gain(double value) {
        return Double.isNaN(value) ? 0 : Math.min(value - bound, CLOSED * bound);
    }

    private List<Point> read() {
        List<Point> all = new ArrayList<>();
        for (int s = 0; s < makeups.sorts().size(); s++) {
            all.add(master().point(s));
        }
        return all;
    }

    /** Strings that a sort of cables serves where not enough of it comes, and other rows of a sort. */
    private List<MakeupMaster.Of> broken() {
        record Broken(MakeupMaster.Of cut, double by) {}
        List<Broken> found = new ArrayList<>();
        int spots = site.spots.length;
        int controllers = site.controllers.length;
        for (int s = 0; s < points.size(); s++) {
            double[] served = new double[items.size];
            MinCut graph = Separation.serving(site, items, points.get(s), served);
            for (int k = 0; k < items.size; k++) {
                int sink = 1 + spots + k;
                double flow = served[k] < BROKEN ? served[k] : graph.flow(0, sink, served[k]);
                if (flow < served[k] - BROKEN) {
                    boolean[] side = graph.sinkSide(sink);
                    boolean[] inside = Arrays.copyOfRange(side, 1, 1 + spots);
                    Row row = Cut.connected(inside, controllers, k, items.count[k]);
                    found.add(new Broken(new MakeupMaster.Of(s, row), served[k] - flow));
                }
            }
        }
        List<MakeupMaster.Of> all = new ArrayList<>();
        for (int s = 0; s < points.size(); s++) {
            all.addAll(master().broken(s, points.get(s)));
        }
        found.stream()
                .sorted(Comparator.comparingDouble(broken -> -broken.by))
                .limit(CUTS_AT_ONCE)
                .map(Broken::cut)
                .forEach(all::add);
        boolean few = all.size() < FEW;
        for (int s = 0; few && s < points.size(); s++) {
            all.addAll(master().rounded(s, points.get(s)));
        }
        return all;
    }

    /** How to tell it apart by what cables carry, once its bound is tight; null where that is known. */
    @Nullable
    MakeupSplit split() {
        return split;
    }

    /** The number by which to tell it apart where make-ups are known; null where there is none. */
    @Nullable
    Tally tally() {
        return tally;
    }

    /** The spot at which to tell it apart where all else is told; -1 where there is none. */
    int spot() {
        return chosen.leastDecided(used);
    }
}
