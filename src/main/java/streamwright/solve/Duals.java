package streamwright.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * What the rows of a solved programme say that things are worth.
 *
 * @param item of each item and spot, one of its strings on a strand there
 * @param head of each item and spot, a strand there that the item leads
 * @param start of each spot, a strand there
 * @param arcs rows that arcs are in
 */
record Duals(double[][] item, double[][] head, double[] start, List<Master.Held> arcs) {
    Pricing.Worth at(int spot) {
        return new Pricing.Worth(at(item, spot), at(head, spot), start[spot]);
    }

    /** Of each item: what it is worth at the spot where it is worth the most. */
    double[] most() {
        return Arrays.stream(item)
                .mapToDouble(row -> Arrays.stream(row).max().orElse(0))
                .toArray();
    }

    private static double[] at(double[][] ofItem, int spot) {
        return Arrays.stream(ofItem).mapToDouble(row -> row[spot]).toArray();
    }

    /** Of the last solution; must be read before anything changes. */
    static Duals of(int items, int spots, List<Master.Held> rows) {
        double[][] item = new double[items][spots];
        double[][] head = new double[items][spots];
        double[] start = new double[spots];
        List<Master.Held> arcs = new ArrayList<>();
        for (Master.Held held : rows) {
            double dual = held.constraint().dualValue();
            if (dual == 0) {
                continue;
            }
            if (held.row().hasArcs()) {
                arcs.add(held);
            }
            int only = held.row().onlyItem();
            for (int k = 0; k < items && only != -1; k++) {
                if (only == Row.ALL || only == k) {
                    for (int p = 0; p < spots; p++) {
                        item[k][p] += dual * held.row().item(k, p);
                    }
                }
            }
            for (int p = 0; p < spots && held.row().hasStarts(); p++) {
                start[p] += dual * held.row().start(p);
            }
            for (int k = 0; k < items && held.row().hasHeads(); k++) {
                for (int p = 0; p < spots; p++) {
                    head[k][p] += dual * held.row().head(k, p);
                }
            }
        }
        return new Duals(item, head, start, arcs);
    }
}
