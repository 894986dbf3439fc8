package streamwright.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import streamwright.yard.Drives;

/** Finds sets of spots whose boards are too few when counted whole ({@link Cut#wholeBoards}): grown greedily. */
final class Rounding {
    private static final double BROKEN = 0.02;
    private static final int SPOTS_MOST = 7;

    private static final double THERE = 1e-6;

    private final Site site;
    private final Items items;

    /** Of each group: the ports of its models, by which strings are divided. */
    private final int[][] ports;

    /** @param brief whether only the most ports divide, for the time that each number of ports takes */
    Rounding(Site site, Items items, boolean brief) {
        this.site = site;
        this.items = items;
        ports = IntStream.range(0, site.groups)
                .mapToObj(group -> portsOf(group, brief))
                .toArray(int[][]::new);
    }

    private int[] portsOf(int group, boolean brief) {
        int[] all = IntStream.range(0, site.offers.length)
                .filter(m -> site.groupOf[m] == group)
                .map(site::ports)
                .filter(each -> each > 1)
                .distinct()
                .sorted()
                .toArray();
        return brief && all.length > 1 ? new int[] {all[all.length - 1]} : all;
    }

    private record Found(BitSet spots, BitSet leads, int strings, double broken, int group, int by) {}

    /** The rows that a point breaks most. */
    List<Row> broken(Point point, int most) {
        int[] active = IntStream.range(0, site.spots.length)
                .filter(p -> boards(point, p) > THERE)
                .toArray();
        List<Found> all = new ArrayList<>();
        for (int group = 0; group < site.groups; group++) {
            for (int by : ports[group]) {
                grow(new Growth(point, active, group, by), all);
            }
        }
        return all.stream()
                .sorted(Comparator.comparingDouble(f -> -f.broken))
                .limit(most)
                .map(this::row)
                .toList();
    }

    private void grow(Growth growth, List<Found> all) {
        Set<BitSet> tried = new HashSet<>();
        for (int i = 0; i < growth.active.length; i++) {
            growth.from(tried, all, growth.active[i]);
            for (int j = i + 1; j < growth.active.length; j++) {
                growth.from(tried, all, growth.active[i], growth.active[j]);
            }
        }
    }

    private static double boards(Point point, int spot) {
        double sum = 0;
        for (double value : point.board()[spot]) {
            sum += value;
        }
        return sum;
    }

    private Row row(Found found) {
        boolean[] inside = new boolean[site.spots.length];
        boolean[] leads = new boolean[items.size];
        found.spots.stream().forEach(p -> inside[p] = true);
        found.leads.stream().forEach(k -> leads[k] = true);
        return Cut.wholeBoards(inside, leads, found.strings, site, found.group, found.by);
    }

    /** Sets of spots with what is led from them, summed up as they grow: sets are many, so nothing is summed twice. */
    private final class Growth {
        private final Point point;
        private final int[] active;
        private final int group;
        private final int by;

        /** Items of the group. */
        private final int[] of;

        private final int[] models;

        // of the set in hand
        private final BitSet spots = new BitSet();
        private final double[] led = new double[items.size];
        private final double[] boards = new double[site.offers.length];

        // of the row last looked for: its items in order
        private final int[] order = new int[items.size];
        private final double[] away = new double[items.size];
        private int cut;
        private int strings;

        Growth(Point point, int[] active, int group, int by) {
            this.point = point;
            this.active = active;
            this.group = group;
            this.by = by;
            of = IntStream.range(0, items.size)
                    .filter(k -> site.group[items.sample[k]] == group
                            && site.sort[items.sample[k]] == Drives.PIXELS
                            && IntStream.of(active).anyMatch(p -> point.led()[k][p] > THERE))
                    .toArray();
            models = IntStream.range(0, site.offers.length)
                    .filter(m -> site.groupOf[m] == group)
                    .toArray();
        }

        private void join(int spot, int sign) {
            spots.set(spot, sign > 0);
            for (int k : of) {
                led[k] += sign * point.led()[k][spot];
            }
            for (int m : models) {
                boards[m] += sign * point.board()[spot][m];
            }
        }

        /** Adds to a set, one by one, the spot that breaks its row the most. */
        void from(Set<BitSet> tried, List<Found> all, int... seed) {
            clear();
            for (int spot : seed) {
                join(spot, 1);
            }
            while (spots.cardinality() <= SPOTS_MOST && tried.add((BitSet) spots.clone())) {
                double broken = broken();
                if (broken > BROKEN) {
                    BitSet leads = new BitSet();
                    IntStream.range(0, cut).forEach(i -> leads.set(order[i]));
                    all.add(new Found((BitSet) spots.clone(), leads, strings, broken, group, by));
                }
                int next = -1;
                double most = -Double.MAX_VALUE;
                for (int p : active) {
                    if (!spots.get(p)) {
                        join(p, 1);
                        double wider = broken();
                        join(p, -1);
                        if (wider > most) {
                            most = wider;
                            next = p;
                        }
                    }
                }
                if (next < 0) {
                    return;
                }
                join(next, 1);
            }
        }

        private void clear() {
            spots.clear();
            Arrays.fill(led, 0);
            Arrays.fill(boards, 0);
        }

        /** By how much the most broken row of the set is: items join in the order of how wholly they are led from there. */
        private double broken() {
            int size = sort();
            strings = 0;
            cut = 0;
            int joined = 0;
            double heads = 0;
            double most = -Double.MAX_VALUE;
            for (int i = 0; i < size; i++) {
                joined += items.count[order[i]];
                heads += led[order[i]];
                int rest = joined % by;
                if (rest != 0) {
                    double weighed = 0;
                    for (int m : models) {
                        weighed += boards[m] * Cut.weight(site.ports(m), rest, by);
                    }
                    double broken = (rest * (Math.floorDiv(joined, by) + 1.0) - joined - weighed + heads) / rest;
                    if (broken > most) {
                        most = broken;
                        cut = i + 1;
                        strings = joined;
                    }
                }
            }
            return most;
        }

        /** Puts the items that are led from the set in order; few, so by insertion. */
        private int sort() {
            int size = 0;
            for (int k : of) {
                if (led[k] > THERE) {
                    double share = (items.count[k] - led[k]) / items.count[k];
                    int at = size++;
                    while (at > 0 && away[at - 1] > share) {
                        away[at] = away[at - 1];
                        order[at] = order[at - 1];
                        at--;
                    }
                    away[at] = share;
                    order[at] = k;
                }
            }
            return size;
        }
    }
}
