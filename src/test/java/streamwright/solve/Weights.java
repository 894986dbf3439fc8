package streamwright.solve;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

/**
 * A point of the relaxation, whole where it is a plan's: what every variable that a cut weighs is.
 *
 * @param arcs from each node (controllers first, then spots) to each spot
 * @param used of each spot
 * @param boards of each spot and model
 * @param served of each item and spot
 * @param led of each item and spot: strands
 */
record Weights(double[][] arcs, double[] used, double[][] boards, double[][] served, double[][] led) {
    private static Weights none(Site site, Items items) {
        int spots = site.spots.length;
        return new Weights(
                new double[site.controllers.length + spots][spots],
                new double[spots],
                new double[spots][site.offers.length],
                new double[items.size][spots],
                new double[items.size][spots]);
    }

    static Weights of(Site site, Items items, EveryPlan.Tried plan) {
        Weights sum = none(site, items);
        for (Cabling cable : plan.cables()) {
            int node = cable.controller();
            for (Hanging board : cable.boards()) {
                int spot = board.spot();
                if (node != site.controllers.length + spot) {
                    sum.arcs[node][spot]++;
                }
                node = site.controllers.length + spot;
                sum.used[spot] = 1;
                sum.boards[spot][model(site, board)]++;
                for (Measured.Link link : board.links()) {
                    sum.led[items.of[link.strings().get(0)]][spot]++;
                    link.strings().forEach(string -> sum.served[items.of[string]][spot]++);
                }
            }
        }
        return sum;
    }

    static Weights of(Point point) {
        return new Weights(point.arc(), point.used(), point.board(), point.served(), point.led());
    }

    /** A model stands in a site once for each group of strings that may share a board. */
    private static int model(Site site, Hanging board) {
        int group = site.group[board.links().get(0).strings().get(0)];
        var offers = site.yard.boards();
        for (int m = 0; m < site.offers.length; m++) {
            if (site.groupOf[m] == group && site.offers[m].equals(offers.get(board.model()))) {
                return m;
            }
        }
        throw new IllegalStateException("no model for " + board);
    }

    /** Between plans, and a bit aside: what a relaxation might say. */
    static Weights amid(Site site, Items items, List<Weights> plans, SplittableRandom random) {
        Weights mean = none(site, items);
        int parts = 2 + random.nextInt(3);
        for (int part = 0; part < parts; part++) {
            Weights plan = plans.get(random.nextInt(plans.size()));
            add(mean.arcs, plan.arcs, (random.nextBoolean() ? 1 : random.nextDouble()) / parts);
            add(new double[][] {mean.used}, new double[][] {plan.used}, random.nextDouble(0.5, 1) / parts);
            add(mean.boards, plan.boards, random.nextDouble(0.5, 1) / parts);
            add(mean.served, plan.served, 1.0 / parts);
            add(mean.led, plan.led, 1.0 / parts);
        }
        return mean;
    }

    private static void add(double[][] sum, double[][] more, double times) {
        for (int i = 0; i < sum.length; i++) {
            for (int j = 0; j < sum[i].length; j++) {
                sum[i][j] += times * more[i][j];
            }
        }
    }

    Point point() {
        return new Point(arcs, used, boards, served, led);
    }

    /** What a row adds up to here. */
    double sum(Row row) {
        double sum = 0;
        for (int p = 0; p < used.length; p++) {
            for (int from = 0; from < arcs.length; from++) {
                sum += arcs[from][p] * row.arc(from, p);
            }
            sum += used[p] * row.used(p);
            for (int m = 0; m < boards[p].length; m++) {
                sum += boards[p][m] * row.board(p, m);
            }
            for (int k = 0; k < served.length; k++) {
                sum += served[k][p] * row.item(k, p) + led[k][p] * (row.head(k, p) + row.start(p));
            }
        }
        return sum;
    }

    /** How far a row is from holding here; 0 or less where it holds. */
    double broken(Row row) {
        double sum = sum(row);
        return Math.max(row.low() - sum, sum - row.high());
    }

    @Override
    public String toString() {
        return "arcs %s used %s boards %s served %s led %s"
                .formatted(
                        Arrays.deepToString(arcs),
                        Arrays.toString(used),
                        Arrays.deepToString(boards),
                        Arrays.deepToString(served),
                        Arrays.deepToString(led));
    }
}
