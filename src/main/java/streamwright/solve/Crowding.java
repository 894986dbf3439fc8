package streamwright.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import streamwright.solve.StreamNeeds.Need;

/** Finds sets of spots that too few cables enter when cables are counted whole ({@link Cut#wholeCables}): grown greedily. */
final class Crowding {
    private static final double BROKEN = 0.03;
    private static final double THERE = 1e-6;
    private static final int SPOTS_MOST = 16;

    /** How much more it counts by what a row is broken with whole cables than with parts of cables, while a set grows. */
    private static final double[] WHOLE = {20, 0.1};

    /** A smaller part of a cable makes strings that are served elsewhere weigh too much. */
    private static final double REST_LEAST = 0.05;

    private static final double ROUNDING = 1e-9;

    private final Site site;
    private final Items items;
    private final StreamNeeds needs;
    private final int streams;

    Crowding(Site site, Items items) {
        this.site = site;
        this.items = items;
        needs = new StreamNeeds(site, items);
        streams = Math.max(1, Arrays.stream(site.streams).max().orElse(1));
    }

    private record Found(BitSet spots, List<Need> needs, double broken) {}

    /** The rows that a point breaks most. */
    List<Row> broken(Point point, int most) {
        List<Found> all = new ArrayList<>();
        Growth growth = new Growth(point);
        Set<BitSet> seen = new HashSet<>();
        for (double whole : WHOLE) {
            Set<BitSet> tried = new HashSet<>();
            for (int seed : growth.active) {
                growth.from(seed, whole, tried, seen, all);
            }
        }
        return all.stream()
                .sorted(Comparator.comparingDouble(found -> -found.broken))
                .limit(most)
                .map(found -> row(found.spots, found.needs))
                .toList();
    }

    /** The row that some needs of a set of spots lead to. */
    Row row(BitSet spots, List<Need> needed) {
        boolean[] inside = new boolean[site.spots.length];
        spots.stream().forEach(p -> inside[p] = true);
        double[] weight = new double[items.size];
        double need = 0;
        for (Need each : needed) {
            for (int i = 0; i < each.items().length; i++) {
                weight[each.items()[i]] = each.weight()[i];
            }
            need += each.streams();
        }
        return Cut.wholeCables(inside, site.controllers.length, weight, items.count, need, streams);
    }

    /** A set of spots, with what is served from it and what enters it, summed up as it grows. */
    private final class Growth {
        private final Point point;
        private final int[] active;
        private final BitSet spots = new BitSet();
        private final double[] served = new double[items.size];
        private double entering;

        /** Of the row last looked for. */
        private List<Need> needed = List.of();

        /** By how much parts of cables are too few. */
        private double crowded;

        Growth(Point point) {
            this.point = point;
            active = IntStream.range(0, site.spots.length)
                    .filter(p -> point.used()[p] > THERE)
                    .toArray();
        }

        private void join(int spot, int sign) {
            int controllers = site.controllers.length;
            spots.clear(spot);
            double change = 0;
            for (int from = 0; from < point.arc().length; from++) {
                boolean within = from >= controllers && spots.get(from - controllers);
                change += within ? 0 : point.arc()[from][spot];
            }
            for (int to : active) {
                change -= spots.get(to) ? point.arc()[controllers + spot][to] : 0;
            }
            entering += sign * change;
            for (int k = 0; k < items.size; k++) {
                served[k] += sign * point.served()[k][spot];
            }
            spots.set(spot, sign > 0);
        }

        /** Adds, one by one, the spot that breaks the row of the set the most. */
        void from(int seed, double whole, Set<BitSet> tried, Set<BitSet> seen, List<Found> all) {
            spots.clear();
            Arrays.fill(served, 0);
            entering = 0;
            int next = seed;
            while (next >= 0 && spots.cardinality() < SPOTS_MOST) {
                join(next, 1);
                if (!tried.add((BitSet) spots.clone())) {
                    return;
                }
                double broken = broken();
                if (broken > BROKEN && seen.add((BitSet) spots.clone())) {
                    all.add(new Found((BitSet) spots.clone(), needed, broken));
                }
                next = widest(whole);
            }
        }

        private int widest(double whole) {
            int best = -1;
            double most = Double.NEGATIVE_INFINITY;
            for (int p : active) {
                if (!spots.get(p)) {
                    join(p, 1);
                    double wider = whole * broken() + crowded;
                    join(p, -1);
                    if (wider > most) {
                        most = wider;
                        best = p;
                    }
                }
            }
            return best;
        }

        /** By how much the most broken row of the set is: groups join in the order of how wholly they are served there. */
        private double broken() {
            List<Need> all = needs.of(served);
            all.sort(Comparator.comparingDouble(need -> need.away() / need.streams()));
            double sum = 0;
            double away = 0;
            double most = -1;
            for (int i = 0; i < all.size(); i++) {
                sum += all.get(i).streams();
                away += all.get(i).away();
                double rest = Cut.rest(sum, streams);
                if (rest >= REST_LEAST) {
                    double broken = Math.ceil(sum / streams - ROUNDING) - away / rest - entering;
                    if (broken > most) {
                        most = broken;
                        needed = all.subList(0, i + 1);
                    }
                }
            }
            crowded = (sum - away) / streams - entering;
            return most;
        }
    }
}
