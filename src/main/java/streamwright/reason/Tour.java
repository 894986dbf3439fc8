package streamwright.reason;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import streamwright.layout.Layout;
import streamwright.yard.Point;

/**
 * The order in which a cable visits its boards: shortest up to {@link #EXACT} boards (dynamic programming over subsets;
 * Held and Karp 1962), beyond that from the given order by reversing and moving stretches while it gets shorter.
 */
final class Tour {
    static final int EXACT = 8;

    /** A gain below this is rounding. */
    private static final double GAIN = 1e-9;

    private final int n;

    /** From i to j; row and column n stand for the jack. */
    private final double[][] hop;

    private Tour(Measures measures, Layout.Run run) {
        n = run.boards().size();
        List<Point> points = new ArrayList<>();
        run.boards().forEach(board -> points.add(board.spot().at()));
        points.add(run.controller().at());
        hop = new double[n + 1][n + 1];
        for (int i = 0; i <= n; i++) {
            for (int j = 0; j < i; j++) {
                hop[i][j] = measures.hop(points.get(i), points.get(j));
                hop[j][i] = hop[i][j];
            }
        }
    }

    /** The cable in its best order; as it is where none is shorter. */
    static Layout.Run best(Measures measures, Layout.Run run) {
        if (run.boards().size() < 2) {
            return run;
        }
        Tour tour = new Tour(measures, run);
        int[] given = tour.given();
        int[] best = tour.n <= EXACT ? tour.exact() : tour.improved(given);
        return tour.length(best) < tour.length(given) - GAIN ? ordered(run, best) : run;
    }

    /** The shortest cable that visits its boards in another order, among one stretch reversed and one board moved. */
    static Layout.Run next(Measures measures, Layout.Run run) {
        Tour tour = new Tour(measures, run);
        int[] given = tour.given();
        int[] best = null;
        for (int[] other : tour.around(given)) {
            if (!same(run, other) && (best == null || tour.length(other) < tour.length(best) - GAIN)) {
                best = other;
            }
        }
        return best == null ? run : ordered(run, best);
    }

    /** Whether only boards at one place change their order. */
    private static boolean same(Layout.Run run, int[] order) {
        for (int i = 0; i < order.length; i++) {
            Point at = run.boards().get(i).spot().at();
            if (!run.boards().get(order[i]).spot().at().equals(at)) {
                return false;
            }
        }
        return true;
    }

    static Layout.Run ordered(Layout.Run run, int[] order) {
        return new Layout.Run(
                run.controller(),
                run.jack(),
                Arrays.stream(order).mapToObj(run.boards()::get).toList());
    }

    private int[] given() {
        int[] order = new int[n];
        Arrays.setAll(order, i -> i);
        return order;
    }

    private double length(int[] order) {
        double length = 0;
        int from = n;
        for (int to : order) {
            length += hop[from][to];
            from = to;
        }
        return length;
    }

    private int[] exact() {
        double[][] best = new double[1 << n][n];
        int[][] before = new int[1 << n][n];
        for (int set = 1; set < 1 << n; set++) {
            for (int last = 0; last < n; last++) {
                best[set][last] = Double.POSITIVE_INFINITY;
                int rest = set & ~(1 << last);
                if (rest == set) {
                    continue;
                }
                if (rest == 0) {
                    best[set][last] = hop[n][last];
                }
                for (int from = 0; from < n; from++) {
                    if ((rest & 1 << from) != 0 && best[rest][from] + hop[from][last] < best[set][last]) {
                        best[set][last] = best[rest][from] + hop[from][last];
                        before[set][last] = from;
                    }
                }
            }
        }
        int set = (1 << n) - 1;
        int last = 0;
        for (int i = 1; i < n; i++) {
            last = best[set][i] < best[set][last] ? i : last;
        }
        int[] order = new int[n];
        for (int i = n - 1; i >= 0; i--) {
            order[i] = last;
            int from = before[set][last];
            set &= ~(1 << last);
            last = from;
        }
        return order;
    }

    private int[] improved(int[] given) {
        int[] best = given;
        for (boolean better = true; better; ) {
            better = false;
            for (int[] other : around(best)) {
                if (length(other) < length(best) - GAIN) {
                    best = other;
                    better = true;
                }
            }
        }
        return best;
    }

    /** Every order with one stretch reversed or one board elsewhere. */
    private List<int[]> around(int[] order) {
        List<int[]> orders = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            for (int j = i + 1; j < n; j++) {
                orders.add(reversed(order, i, j));
                if (j > i + 1) {
                    orders.add(moved(order, i, j));
                    orders.add(moved(order, j, i));
                }
            }
        }
        return orders;
    }

    private static int[] reversed(int[] order, int i, int j) {
        int[] other = order.clone();
        for (int k = i; k <= j; k++) {
            other[k] = order[i + j - k];
        }
        return other;
    }

    private static int[] moved(int[] order, int from, int to) {
        int[] other = order.clone();
        int step = from < to ? 1 : -1;
        for (int k = from; k != to; k += step) {
            other[k] = order[k + step];
        }
        other[to] = order[from];
        return other;
    }
}
