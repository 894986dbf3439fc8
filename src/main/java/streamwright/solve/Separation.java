package streamwright.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Finds cuts that a solution of the relaxation breaks, by minimum cuts on its support. */
final class Separation {
    private static final double BROKEN = 1e-3;
    private static final double THERE = 1e-7;
    private static final int ROUNDED_MOST = 20;

    /** With more strings cables are not counted whole: looks for that grow with the square of the spots. */
    private static final int STRINGS_FEW = 120;

    private record Seen(int about, List<Boolean> inside) {}

    private final Site site;
    private final Items items;
    private final double[] share;
    private final Rounding rounding;
    private final @Nullable Crowding crowding;
    private final AmpsRounding amps;

    Separation(Site site, Items items) {
        this(site, items, false);
    }

    /**
     * Cables are counted whole only where streams differ: of one kind they are hardly ever too few, for the time it takes.
     *
     * @param brief whether rows that strengthen little for their time are not looked for
     */
    Separation(Site site, Items items, boolean brief) {
        this.site = site;
        this.items = items;
        rounding = new Rounding(site, items, brief);
        amps = new AmpsRounding(site, items);
        boolean few = site.streamsDiffer && site.strings.length <= STRINGS_FEW;
        crowding = brief || !few ? null : new Crowding(site, items);
        share = new double[items.size];
        for (int k = 0; k < items.size; k++) {
            int limit = Math.max(1, site.limitMost(site.kind[items.sample[k]]));
            share[k] = site.pixelsAtLeast[items.sample[k]] / (double) limit;
        }
    }

    /** Rows that every plan keeps and a point breaks; none for a whole solution means that it hangs together. */
    List<Row> broken(Point point) {
        List<Row> found = new ArrayList<>();
        unusedSpots(point, found);
        unconnected(point, found);
        overfull(point, found);
        return found;
    }

    /** Cables without which the streams do not hold all pixels. */
    int cablesAtLeast() {
        double all = 0;
        for (int k = 0; k < items.size; k++) {
            all += items.count[k] * share[k];
        }
        double streams = Math.max(all, streamsAtLeast());
        return Math.max(
                1, (int) Math.ceil(streams / Arrays.stream(site.streams).max().orElse(1) - 1e-9));
    }

    /** A stream carries one kind, so each kind has streams of its own. */
    private int streamsAtLeast() {
        int sum = 0;
        for (int k = 0; k < site.kinds.length; k++) {
            sum += StreamsAtLeast.of(site, k);
        }
        return sum;
    }

    /** Rows that strengthen a fractional solution which hangs together. */
    List<Row> rounded(Point point) {
        List<Row> found = new ArrayList<>(rounding.broken(point, ROUNDED_MOST));
        found.addAll(amps.broken(point, ROUNDED_MOST));
        found.addAll(crowded(point));
        return found;
    }

    /** Those of them that a whole solution may break. */
    List<Row> crowded(Point point) {
        return crowding == null ? List.of() : crowding.broken(point, ROUNDED_MOST);
    }

    private void unusedSpots(Point point, List<Row> found) {
        for (int k = 0; k < items.size; k++) {
            for (int p = 0; p < site.spots.length; p++) {
                double served = point.served()[k][p] - BROKEN;
                if (served <= 0) {
                    continue;
                }
                if (served > items.count[k] * point.used()[p]) {
                    found.add(Cut.usedSpot(k, items.count[k], p));
                }
                if (site.groups > 1 && served > items.count[k] * point.suited(site, items.sample[k], p)) {
                    found.add(Cut.suited(site, k, items.sample[k], items.count[k], p));
                }
            }
        }
    }

    private static MinCut support(Site site, Point point, int sinks) {
        int controllers = site.controllers.length;
        MinCut graph = new MinCut(1 + site.spots.length + sinks);
        for (int from = 0; from < point.arc().length; from++) {
            for (int to = 0; to < site.spots.length; to++) {
                if (point.arc()[from][to] > THERE) {
                    graph.arc(from < controllers ? 0 : 1 + from - controllers, 1 + to, point.arc()[from][to]);
                }
            }
        }
        return graph;
    }

    /**
     * What serves strings: trunk from node 0 through a node for each spot, and from there to one for each item.
     *
     * @param served filled with the share of each item that is served
     */
    static MinCut serving(Site site, Items items, Point point, double[] served) {
        int spots = site.spots.length;
        MinCut graph = support(site, point, items.size);
        for (int k = 0; k < items.size; k++) {
            for (int p = 0; p < spots; p++) {
                if (point.served()[k][p] > THERE) {
                    double share = point.served()[k][p] / items.count[k];
                    graph.arc(1 + p, 1 + spots + k, share);
                    served[k] += share;
                }
            }
        }
        return graph;
    }

    private void unconnected(Point point, List<Row> found) {
        int spots = site.spots.length;
        int controllers = site.controllers.length;
        double[] served = new double[items.size];
        MinCut graph = serving(site, items, point, served);
        Set<Seen> seen = new HashSet<>();
        for (int k = 0; k < items.size; k++) {
            int sink = 1 + spots + k;
            // strings that are left out, at a price, need no arc
            if (graph.flow(0, sink, served[k]) < served[k] - BROKEN) {
                for (boolean[] side : List.of(graph.sinkSide(sink), graph.beyondSource(0))) {
                    boolean[] inside = Arrays.copyOfRange(side, 1, 1 + spots);
                    if (seen.add(new Seen(k, boxed(inside)))) {
                        found.add(Cut.connected(inside, controllers, k, items.count[k]));
                    }
                }
            }
        }
        for (int p = 0; p < spots; p++) {
            double need = point.used()[p];
            if (graph.flow(0, 1 + p, need) < need - BROKEN) {
                boolean[] inside = Arrays.copyOfRange(graph.sinkSide(1 + p), 1, 1 + spots);
                if (seen.add(new Seen(-1 - p, boxed(inside)))) {
                    found.add(Cut.reached(inside, controllers, p));
                }
            }
        }
    }

    /** Pixels as a flow: what W serves must come through the streams of the arcs that enter W. */
    private void overfull(Point point, List<Row> found) {
        int spots = site.spots.length;
        int controllers = site.controllers.length;
        int most = Arrays.stream(site.streams).max().orElse(0);
        MinCut graph = new MinCut(2 + spots);
        double all = 0;
        for (int from = 0; from < point.arc().length; from++) {
            for (int to = 0; to < spots; to++) {
                if (point.arc()[from][to] > THERE) {
                    graph.arc(from < controllers ? 0 : 1 + from - controllers, 1 + to, most * point.arc()[from][to]);
                }
            }
        }
        for (int p = 0; p < spots; p++) {
            double need = 0;
            for (int k = 0; k < items.size; k++) {
                need += share[k] * point.served()[k][p];
            }
            if (need > THERE) {
                graph.arc(1 + p, 1 + spots, need);
                all += need;
            }
        }
        if (graph.flow(0, 1 + spots, all) < all - 10 * BROKEN) {
            // what the source cannot reach would be W with the sink's own arcs cut; W is the part whose need is not
            // cut:
            // not empty where a need is not met
            boolean[] inside = Arrays.copyOfRange(graph.sinkSide(1 + spots), 1, 1 + spots);
            found.add(Cut.carried(inside, site, items, share));
        }
    }

    private static List<Boolean> boxed(boolean[] inside) {
        List<Boolean> list = new ArrayList<>();
        for (boolean in : inside) {
            list.add(in);
        }
        return list;
    }
}
