package streamwright.solve;

import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Bounds all plans with so many cables by telling apart which kinds of streams each cable carries: a relaxation in which
 * a part of a cable may carry anything sees little of what kinds cost.
 */
final class MakeupProof {
    private static final double SAME = 1e-6;

    /** What has a reduced cost below this share of the bound is in from the first where a case is told apart. */
    private static final double NEAR = 1e-2;

    private final Site site;
    private final Items items;
    private final Strands strands;
    private final Effort effort;
    private final int[] need;
    private final double[] missing;
    private final Windows windows;
    private final PriorityQueue<MakeupCase> open = new PriorityQueue<>(Comparator.comparingDouble(c -> c.bound));

    /** The least bound of what cannot be told apart further. */
    private double stuck = Double.POSITIVE_INFINITY;

    private final List<Row> rows;
    private final Closings<MakeupCase> solving;

    private int begun;

    /**
     * What is known of all plans with so many cables.
     *
     * @param need of each kind, streams without which its strings do not fit
     * @param rows that they obey, all cables together
     * @param entered what may be in a cheap one
     */
    record Beginning(int cables, int[] need, List<Row> rows, List<MakeupMaster.Entered> entered, double bound) {}

    MakeupProof(Site site, Items items, Strands strands, Effort effort, ExecutorService workers, Beginning beginning) {
        rows = beginning.rows;
        this.site = site;
        this.items = items;
        this.strands = strands;
        this.effort = effort;
        solving = new Closings<>(workers, effort.workers());
        missing = MasterLimits.missingPrices(site, items);
        windows = new Windows(site, items);
        need = beginning.need;
        int streams = IntStream.of(site.streams).max().orElse(1);
        Makeups any = Makeups.any(site.kinds.length, streams, beginning.cables);
        open.add(new MakeupCase(site, items, any, Chosen.NONE, List.of(), beginning.bound, () -> {
            MakeupMaster whole = master(any);
            whole.begin(beginning.entered);
            return whole;
        }));
    }

    private MakeupMaster master(Makeups makeups) {
        MakeupMaster master = new MakeupMaster(site, items, strands, makeups, missing, windows);
        master.addRows(rows);
        return master;
    }

    /** Cases that were solved, or are being. */
    int begun() {
        return begun;
    }

    /** No plan costs less. */
    double bound() {
        return Math.min(
                Math.min(stuck, solving.least()), open.isEmpty() ? Double.POSITIVE_INFINITY : open.element().bound);
    }

    /** Whether what holds the bound back cannot be told apart further. */
    boolean isStuck() {
        return stuck <= bound();
    }

    /**
     * Raises the bound to a target, or as far as it goes. Unless effort is counted some cases are still in work
     * afterwards, until {@link #end}: no worker waits for another.
     *
     * @param listing up to the target at least
     * @param cases to solve at most
     */
    void raise(MakeupCase.Listing listing, double target, int cases) throws InterruptedException, ExecutionException {
        int most = cases > Integer.MAX_VALUE - begun ? Integer.MAX_VALUE : begun + cases;
        boolean counted = effort.level() > 0;
        double step = target - bound();
        // rather than wait for the last of those below the target, a worker looks at what comes next
        double below = (counted ? target : listing.below()) - SAME;
        open.addAll(solving.done());
        while (bound() < target - SAME && !isStuck() && begun < most && !effort.stopped()) {
            while (!open.isEmpty() && !solving.isFull() && open.element().bound < below) {
                MakeupCase least = open.remove();
                if (least.isTight()) {
                    apart(least);
                } else {
                    begun++;
                    double enough = Math.min(listing.below(), Math.max(target, least.bound + step));
                    solving.begin(least.bound, () -> tightened(least, listing, enough));
                }
            }
            if (!solving.isEmpty()) {
                // where the clock must not matter, all are waited for
                open.addAll(counted ? solving.all() : solving.some());
            }
        }
        if (counted) {
            end();
        }
    }

    /** Waits for the cases in work. */
    void end() throws InterruptedException, ExecutionException {
        open.addAll(solving.all());
    }

    private MakeupCase tightened(MakeupCase one, MakeupCase.Listing listing, double target) {
        one.tighten(listing, target, effort::secondsLeft, effort::stopped);
        return one;
    }

    /** Tells a case apart by what cables carry; where that is known, by numbers that are not whole, and last by a spot with boards or without. */
    private void apart(MakeupCase one) {
        Left left = new Left(one.master().bindingCuts(), one.master().nearly(NEAR * one.bound));
        MakeupSplit split = one.split();
        if (split != null) {
            one.makeups.apart(split).stream()
                    .filter(part -> part.makeups().holds(need))
                    .forEach(part -> open.add(part(one, part, one.chosen, one.told, left)));
            return;
        }
        List<Integer> same =
                IntStream.range(0, one.makeups.sorts().size()).boxed().toList();
        Makeups.Part all = new Makeups.Part(one.makeups, same);
        Tally tally = one.tally();
        if (tally != null) {
            open.add(part(one, all, one.chosen, and(one.told, tally.few()), left));
            open.add(part(one, all, one.chosen, and(one.told, tally.many()), left));
            return;
        }
        int spot = one.spot();
        if (spot < 0) {
            stuck = Math.min(stuck, one.bound);
            return;
        }
        open.add(part(one, all, one.chosen.withUsed(spot), one.told, left));
        open.add(part(one, all, one.chosen.withEmpty(spot), one.told, left));
    }

    private static List<MakeupMaster.Of> and(List<MakeupMaster.Of> told, MakeupMaster.Of more) {
        return Stream.concat(told.stream(), Stream.of(more)).toList();
    }

    /** What a case leaves to its parts: cuts that bind, and what its solution has or nearly has. */
    private record Left(List<MakeupMaster.Of> cuts, List<MakeupMaster.Entered> near) {}

    private MakeupCase part(MakeupCase one, Makeups.Part part, Chosen chosen, List<MakeupMaster.Of> told, Left left) {
        return new MakeupCase(
                site, items, part.makeups(), chosen, told, one.bound, () -> master(part.makeups(), part.from(), left));
    }

    private MakeupMaster master(Makeups makeups, List<Integer> from, Left left) {
        MakeupMaster master = master(makeups);
        for (int s = 0; s < from.size(); s++) {
            int was = from.get(s);
            int sort = s;
            master.begin(left.near.stream()
                    .filter(each -> each.sort() == was)
                    .map(each -> new MakeupMaster.Entered(sort, each.arc(), each.found()))
                    .toList());
            master.addCuts(left.cuts.stream()
                    .filter(cut -> cut.sort() == was)
                    .map(cut -> new MakeupMaster.Of(sort, cut.row()))
                    .toList());
        }
        return master;
    }
}
