package streamwright.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * Finds spots to which more wire goes than what comes there may still carry. What a cable draws within some spots is within
 * the length that is left where it comes in: the flow of {@link Lengths} without a variable for each arc, as cuts between
 * its source and what it feeds (Ford and Fulkerson 1956).
 */
final class LengthCuts {
    /** By such a share of the length of a cable. */
    private static final double BROKEN = 1e-2;

    private final Site site;
    private final double[] nearest;

    LengthCuts(Site site) {
        this.site = site;
        nearest = Lengths.nearest(site);
    }

    /** Rows that a solution breaks, each divided by the length of a cable. */
    List<Row> broken(Point point) {
        int spots = site.spots.length;
        int controllers = site.controllers.length;
        MinCut graph = new MinCut(spots + 2);
        int sink = spots + 1;
        double[] drawn = new double[spots];
        for (int from = 0; from < point.arc().length; from++) {
            for (int to = 0; to < spots; to++) {
                double arc = point.arc()[from][to];
                if (arc > 0) {
                    graph.arc(from < controllers ? 0 : 1 + from - controllers, 1 + to, arc * left(from));
                    drawn[to] += arc * hop(from, to);
                }
            }
        }
        for (int p = 0; p < spots; p++) {
            drawn[p] += loops() * DoubleStream.of(point.board()[p]).sum();
            drawn[p] = Math.max(0, drawn[p]);
            graph.arc(1 + p, sink, drawn[p]);
        }
        double all = DoubleStream.of(drawn).sum();
        List<Row> found = new ArrayList<>();
        if (graph.flow(0, sink, all) < all - BROKEN) {
            boolean[] most = graph.beyondSource(0);
            boolean[] least = graph.sinkSide(sink);
            found.add(row(Arrays.copyOfRange(most, 1, 1 + spots)));
            if (!Arrays.equals(most, least)) {
                found.add(row(Arrays.copyOfRange(least, 1, 1 + spots)));
            }
        }
        return found;
    }

    /** As shares of the length of a cable: what one that has come to a node can still carry. */
    private double left(int from) {
        int controllers = site.controllers.length;
        return 1 - (from < controllers ? 0 : nearest[from - controllers]) / site.cableMost;
    }

    private double loops() {
        return site.loops() / site.cableMost;
    }

    /** What a hop takes beyond the loops of the board it leads to. */
    private double hop(int from, int to) {
        return site.arcLength(from, to) / site.cableMost - loops();
    }

    private Row row(boolean[] inside) {
        int controllers = site.controllers.length;
        return new Row() {
            @Override
            public double low() {
                return 0;
            }

            @Override
            public double arc(int from, int to) {
                if (!inside[to]) {
                    return 0;
                }
                boolean enters = from < controllers || !inside[from - controllers];
                return (enters ? left(from) : 0) - hop(from, to);
            }

            @Override
            public void addArcs(double times, double[][] sums) {
                for (int to = 0; to < inside.length; to++) {
                    for (int from = 0; inside[to] && from < sums.length; from++) {
                        sums[from][to] += times * arc(from, to);
                    }
                }
            }

            @Override
            public boolean hasArcs() {
                return true;
            }

            @Override
            public double board(int spot, int model) {
                return inside[spot] ? -loops() : 0;
            }
        };
    }
}
