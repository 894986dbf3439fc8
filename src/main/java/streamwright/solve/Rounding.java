package streamwright.solve;

import java.util.ArrayList;
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

    private final Site site;
    private final Items items;
    private final int ports;

    Rounding(Site site, Items items) {
        this.site = site;
        this.items = items;
        int most = 1;
        for (int m = 0; m < site.offers.length; m++) {
            most = Math.max(most, site.ports(m));
        }
        ports = most;
    }

    private record Found(Set<Integer> spots, List<Integer> leads, int strings, double broken, int group) {}

    List<Row> broken(Master master, int most) {
        List<Integer> active = IntStream.range(0, site.spots.length)
                .filter(p -> boards(master, p) > 1e-6)
                .boxed()
                .toList();
        List<Found> all = new ArrayList<>();
        Set<Set<Integer>> tried = new HashSet<>();
        for (int seed : active) {
            grow(master, active, Set.of(seed), tried, all);
            for (int second : active) {
                if (second > seed) {
                    grow(master, active, Set.of(seed, second), tried, all);
                }
            }
        }
        return all.stream()
                .sorted(Comparator.comparingDouble(f -> -f.broken))
                .limit(most)
                .map(this::row)
                .toList();
    }

    private void grow(
            Master master, List<Integer> active, Set<Integer> seed, Set<Set<Integer>> tried, List<Found> all) {
        Set<Integer> spots = seed;
        while (spots.size() <= SPOTS_MOST && tried.add(spots)) {
            Found found = best(master, spots);
            if (found.broken > BROKEN) {
                all.add(found);
            }
            Set<Integer> next = null;
            double most = -Double.MAX_VALUE;
            for (int p : active) {
                if (!spots.contains(p)) {
                    Set<Integer> wider = new HashSet<>(spots);
                    wider.add(p);
                    double broken = best(master, wider).broken;
                    if (broken > most) {
                        most = broken;
                        next = wider;
                    }
                }
            }
            if (next == null) {
                return;
            }
            spots = next;
        }
    }

    private static double boards(Master master, int spot) {
        double sum = 0;
        for (double value : master.boardValue[spot]) {
            sum += value;
        }
        return sum;
    }

    /** The most broken row for a set of spots: items join in the order of how wholly they are led from there. */
    private Found best(Master master, Set<Integer> spots) {
        Found best = best(master, spots, 0);
        for (int group = 1; group < site.groups; group++) {
            Found found = best(master, spots, group);
            best = found.broken > best.broken ? found : best;
        }
        return best;
    }

    private Found best(Master master, Set<Integer> spots, int group) {
        double[] led = new double[items.size];
        for (int k = 0; k < items.size; k++) {
            for (int p : spots) {
                led[k] += master.led[k][p];
            }
        }
        List<Integer> order = IntStream.range(0, items.size)
                .filter(k -> led[k] > 1e-6
                        && site.group[items.sample[k]] == group
                        && site.sort[items.sample[k]] == Drives.PIXELS)
                .boxed()
                .sorted(Comparator.comparingDouble(k -> (items.count[k] - led[k]) / items.count[k]))
                .toList();
        int strings = 0;
        double heads = 0;
        double most = -Double.MAX_VALUE;
        int cut = 0;
        int bestStrings = 0;
        for (int i = 0; i < order.size(); i++) {
            strings += items.count[order.get(i)];
            heads += led[order.get(i)];
            int rest = strings % ports;
            if (rest != 0) {
                double weighed = 0;
                for (int p : spots) {
                    for (int m = 0; m < site.offers.length; m++) {
                        if (site.groupOf[m] != group) {
                            continue;
                        }
                        weighed += master.boardValue[p][m] * rest * Math.min(1.0, site.ports(m) / (double) rest);
                    }
                }
                double broken = (rest * (Math.floorDiv(strings, ports) + 1.0) - strings - weighed + heads) / rest;
                if (broken > most) {
                    most = broken;
                    cut = i + 1;
                    bestStrings = strings;
                }
            }
        }
        return new Found(spots, order.subList(0, cut), bestStrings, most, group);
    }

    private Row row(Found found) {
        boolean[] inside = new boolean[site.spots.length];
        boolean[] leads = new boolean[items.size];
        found.spots.forEach(p -> inside[p] = true);
        found.leads.forEach(k -> leads[k] = true);
        return Cut.wholeBoards(inside, leads, found.strings, site, found.group);
    }
}
