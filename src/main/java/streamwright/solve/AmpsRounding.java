package streamwright.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import streamwright.yard.Drives;

/** Finds spots whose boards are too few for the amps drawn there when counted whole ({@link Cut#wholeAmps}). */
final class AmpsRounding {
    private static final double BROKEN = 0.02;
    private static final double THERE = 1e-6;

    /** Shares of a board's amps by which sums may miss them without a need for one board more. */
    private static final double REST_LEAST = 0.02;

    private final Site site;
    private final Items items;

    /** Of each item the amps that one of its strings draws. */
    private final double[] draw;

    /** Of each model the amps that it can give, and of each group those that are less than its strings could draw. */
    private final double[] most;

    final double[][] limits;

    AmpsRounding(Site site, Items items) {
        this.site = site;
        this.items = items;
        draw = Arrays.stream(items.sample).mapToDouble(i -> site.draw[i]).toArray();
        most = Amps.most(site);
        limits = new double[site.groups][];
        for (int g = 0; g < limits.length; g++) {
            int group = g;
            limits[g] = IntStream.range(0, most.length)
                    .filter(m -> site.groupOf[m] == group && Amps.isLimited(site, m, most[m]))
                    .mapToDouble(m -> most[m])
                    .distinct()
                    .sorted()
                    .toArray();
        }
    }

    private record Found(int spot, int group, double by, List<Integer> drawing, double broken) {}

    /** The rows that a point breaks most. */
    List<Row> broken(Point point, int atMost) {
        List<Found> all = new ArrayList<>();
        for (int p = 0; p < site.spots.length; p++) {
            for (int g = 0; g < limits.length && point.used()[p] > THERE; g++) {
                for (double by : limits[g]) {
                    look(point, p, g, by, all);
                }
            }
        }
        return all.stream()
                .sorted(Comparator.comparingDouble(found -> -found.broken))
                .limit(atMost)
                .map(found -> row(found.spot, found.group, found.by, found.drawing))
                .toList();
    }

    /** The row of some items of a group, divided by so many amps, which are no divisor of what they draw. */
    Row row(int spot, int group, double by, List<Integer> drawing) {
        double sum = drawing.stream().mapToDouble(k -> items.count[k] * draw[k]).sum();
        return Cut.wholeAmps(spot, drawing, weights(group, by, sum), items, draw, by);
    }

    /** Items join in the order of how wholly they are served from the spot. */
    private void look(Point point, int spot, int group, double by, List<Found> all) {
        List<Integer> order = IntStream.range(0, items.size)
                .filter(k -> site.group[items.sample[k]] == group
                        && site.sort[items.sample[k]] == Drives.PIXELS
                        && point.served()[k][spot] > THERE)
                .boxed()
                .sorted(Comparator.comparingDouble(k -> 1 - point.served()[k][spot] / items.count[k]))
                .toList();
        double sum = 0;
        double away = 0;
        Found best = null;
        for (int i = 0; i < order.size(); i++) {
            int k = order.get(i);
            sum += items.count[k] * draw[k];
            away += (items.count[k] - point.served()[k][spot]) * draw[k];
            double rest = sum % by;
            if (rest >= REST_LEAST * by) {
                double[] weight = weights(group, by, sum);
                double weighed = IntStream.range(0, weight.length)
                        .mapToDouble(m -> weight[m] * point.board()[spot][m])
                        .sum();
                double broken = Math.ceil(sum / by) - (weighed + away) / rest;
                if (broken > BROKEN && (best == null || broken > best.broken)) {
                    best = new Found(spot, group, by, order.subList(0, i + 1), broken);
                }
            }
        }
        if (best != null) {
            all.add(best);
        }
    }

    /** What a board of each model counts in the row: 0 of other groups. */
    private double[] weights(int group, double by, double sum) {
        double rest = sum % by;
        return IntStream.range(0, most.length)
                .mapToDouble(m -> site.groupOf[m] == group ? Cut.weight(most[m], rest, by, sum) : 0)
                .toArray();
    }
}
