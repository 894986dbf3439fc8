package streamwright.solve;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import streamwright.yard.Drives;

/**
 * Bounds all plans with so many cables by telling apart which kinds of streams each cable carries: a relaxation in which
 * a part of a cable may carry anything sees little of what kinds cost.
 */
final class MakeupProof {
    private static final double SAME = 1e-6;

    private static final double NEAR = Double.parseDouble(System.getProperty("near", "1e-3"));

    private final Site site;
    private final Items items;
    private final Strands strands;
    private final Effort effort;
    private final ExecutorService workers;
    private final int[] need;
    private final double[] missing;
    private final PriorityQueue<MakeupCase> open = new PriorityQueue<>(Comparator.comparingDouble(c -> c.bound));

    /** The least bound of what cannot be told apart further. */
    private double stuck = Double.POSITIVE_INFINITY;

    private final List<Row> rows;

    /**
     * @param rows that such plans obey, all cables together
     * @param bound on them
     */
    MakeupProof(
            Site site,
            Items items,
            Strands strands,
            Effort effort,
            ExecutorService workers,
            int cables,
            List<Row> rows,
            List<MakeupMaster.Entered> begin,
            double bound) {
        this.rows = rows;
        this.site = site;
        this.items = items;
        this.strands = strands;
        this.effort = effort;
        this.workers = workers;
        missing = MasterLimits.missingPrices(site, items);
        need = IntStream.range(0, site.kinds.length).map(this::streamsAtLeast).toArray();
        int streams = IntStream.of(site.streams).max().orElse(1);
        Makeups any = Makeups.any(site.kinds.length, streams, cables);
        MakeupMaster whole = master(any);
        whole.begin(begin);
        open.add(new MakeupCase(site, items, whole, bound));
    }

    private MakeupMaster master(Makeups makeups) {
        MakeupMaster master = new MakeupMaster(site, items, strands, makeups, missing);
        master.addRows(rows);
        return master;
    }

    private int streamsAtLeast(int kind) {
        int limit = Math.max(1, site.limitMost(kind));
        int[] sizes = IntStream.range(0, site.strings.length)
                .filter(i -> site.kind[i] == kind && site.sort[i] == Drives.PIXELS)
                .map(i -> Math.min(limit, site.pixelsAtLeast[i]))
                .toArray();
        return sizes.length == 0 ? 0 : Math.max(1, StreamsAtLeast.of(sizes, limit));
    }

    int solved;
    @Override public String toString() { return "open " + open.size() + " solved " + solved + (stuck < 1e18 ? " stuck " + stuck : ""); }

    double bound() {
        return Math.min(stuck, open.isEmpty() ? Double.POSITIVE_INFINITY : open.element().bound);
    }

    boolean isStuck() {
        return stuck <= bound();
    }

    /**
     * Raises the bound to a target, or as far as it goes.
     *
     * @param listing up to the target at least
     */
    void raise(MakeupCase.Listing listing, double target)
            throws InterruptedException, ExecutionException {
        while (bound() < target - SAME && !isStuck() && !effort.stopped()) {
            List<Callable<MakeupCase>> work = new ArrayList<>();
            List<MakeupCase> later = new ArrayList<>();
            while (!open.isEmpty() && work.size() < effort.workers() && open.element().bound < target - SAME) {
                MakeupCase least = open.remove();
                if (!least.isTight()) {
                    work.add(() -> tightened(least, listing, target));
                } else {
                    apart(least, later);
                }
            }
            open.addAll(later);
            for (Future<MakeupCase> each : workers.invokeAll(work)) {
                open.add(each.get());
            }
        }
    }

    private MakeupCase tightened(MakeupCase one, MakeupCase.Listing listing, double target) {
        solved++;
        long t = System.nanoTime();
        one.tighten(listing, target, effort::secondsLeft, effort::stopped);
        if (System.getProperty("trace") != null) { StringBuilder sb = new StringBuilder(); for (int s = 0; s < one.makeups.sorts().size(); s++) sb.append(one.makeups.cables().get(s)).append("x").append(java.util.Arrays.toString(one.makeups.sorts().get(s).least())).append(java.util.Arrays.toString(one.makeups.sorts().get(s).most())).append(' '); System.err.printf("   %s -> %.2f %.2f s%n", sb, one.bound, (System.nanoTime() - t) / 1e9); }
        return one;
    }

    private void apart(MakeupCase one, List<MakeupCase> parts) {
        MakeupCase.Split split = one.split();
        if (split == null) {
            stuck = Math.min(stuck, one.bound);
            return;
        }
        List<MakeupMaster.Of> cuts = one.master().bindingCuts();
        List<MakeupMaster.Entered> near = one.master().nearly(NEAR * one.bound);
        for (Makeups.Part part : one.makeups.apart(split.sort(), split.kind(), split.upTo())) {
            if (!part.makeups().holds(need)) {
                continue;
            }
            MakeupMaster master = master(part.makeups());
            List<MakeupMaster.Entered> entered = new ArrayList<>();
            for (int s = 0; s < part.from().size(); s++) {
                int from = part.from().get(s);
                int sort = s;
                near.stream()
                        .filter(each -> each.sort() == from)
                        .map(each -> new MakeupMaster.Entered(sort, each.arc(), each.found()))
                        .forEach(entered::add);
                master.addCuts(cuts.stream()
                        .filter(cut -> cut.sort() == from)
                        .map(cut -> new MakeupMaster.Of(sort, cut.row()))
                        .toList());
            }
            master.begin(entered);
            parts.add(new MakeupCase(site, items, master, one.bound));
        }
    }
}
