package streamwright.solve;

import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPVariable;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * No cable is longer than the rules allow: each arc carries the length of its cable from its own start to the cable's
 * end, as a flow that each hop draws from (after Gavish and Graves 1978). What an arc carries is at most the limit
 * less the shortest way to its start.
 *
 * <p>Each arc has a row that says so. That of an arc that is out costs nothing: it is there with the best price it can
 * have.
 */
final class Lengths {
    private static final double INF = Double.POSITIVE_INFINITY;

    /** A cable of so great a share of the limit shows that the limit may matter. */
    private static final double NEAR = 0.8;

    /** Rows come in so many at once, empty, since the solver begins anew where both rows and arcs came in. */
    private static final int ROWS_AT_ONCE = 500;

    private final Site site;
    private final MPSolver solver;
    private final int controllers;
    private final MPConstraint[] drawn;

    /** Rows that are empty still. */
    private final Deque<MPConstraint> spare = new ArrayDeque<>();

    private final double[] nearest;

    /** @param drawn the row of each spot, {@link #drawn} */
    Lengths(Site site, MPSolver solver, MPConstraint[] drawn) {
        this.site = site;
        this.solver = solver;
        this.drawn = drawn;
        controllers = site.controllers.length;
        nearest = nearest(site);
    }

    /** Of each spot: the least length of a cable that comes there. */
    static double[] nearest(Site site) {
        return IntStream.range(0, site.spots.length)
                .mapToDouble(p -> IntStream.range(0, site.controllers.length)
                        .mapToDouble(c -> site.hopFrom(c, p))
                        .min()
                        .orElse(0))
                .toArray();
    }

    /** Whether some cable of a plan comes near the limit. */
    static boolean matter(Site site, @Nullable Snapshot plan) {
        return plan != null && plan.cables().stream().anyMatch(cable -> length(site, cable) > NEAR * site.cableMost);
    }

    private static double length(Site site, Snapshot.SavedCable cable) {
        int node = Point.controller(site, cable.cable());
        double sum = 0;
        for (Snapshot.SavedBoard board : cable.boards()) {
            sum += site.arcLength(node, board.spot());
            node = site.controllers.length + board.spot();
        }
        return sum;
    }

    /** What comes to a spot is, but for what is drawn there, at least what leaves it. */
    static Row drawn(Site site, int spot) {
        double loops = site.loops();
        return new Row() {

            @Override
            public double arc(int from, int to) {
                return to == spot ? loops - site.arcLength(from, to) : 0;
            }

            @Override
            public void addArcs(double times, double[][] sums) {
                for (int from = 0; from < sums.length; from++) {
                    sums[from][spot] += times * arc(from, spot);
                }
            }

            @Override
            public boolean hasArcs() {
                return true;
            }

            @Override
            public double board(int at, int model) {
                return at == spot ? -loops : 0;
            }
        };
    }

    /** So many cables together are no longer than the rules allow. */
    static Row together(Site site, int cables) {
        double loops = site.loops();
        return new Row() {
            @Override
            public double low() {
                return -cables * site.cableMost;
            }

            @Override
            public double arc(int from, int to) {
                return loops - site.arcLength(from, to);
            }

            @Override
            public boolean hasArcs() {
                return true;
            }

            @Override
            public double board(int at, int model) {
                return -loops;
            }
        };
    }

    /**
     * Tells of an arc that came in.
     *
     * @return what the arc carries
     */
    MPVariable add(int from, int to, MPVariable arc) {
        MPVariable rest = solver.makeNumVar(0, INF, "");
        drawn[to].setCoefficient(rest, 1);
        if (from >= controllers) {
            drawn[from - controllers].setCoefficient(rest, -1);
        }
        if (spare.isEmpty()) {
            for (int r = 0; r < ROWS_AT_ONCE; r++) {
                spare.add(solver.makeConstraint(-INF, 0));
            }
        }
        MPConstraint room = spare.remove();
        room.setCoefficient(rest, 1);
        room.setCoefficient(arc, -most(from));
        return rest;
    }

    /** What an arc can carry at most: no way to its start is shorter than the shortest. */
    double most(int from) {
        return site.cableMost - (from < controllers ? 0 : nearest[from - controllers]);
    }

    /** Of each spot: the dual of what is drawn there. */
    double[] duals() {
        double[] duals = new double[drawn.length];
        for (int p = 0; p < duals.length; p++) {
            duals[p] = drawn[p].dualValue();
        }
        return duals;
    }

    /** What the best price of an arc's own row takes off its reduced cost: 0 or less. */
    double room(double[] duals, int from, int to) {
        double start = from < controllers ? 0 : duals[from - controllers];
        return Math.min(0, start - duals[to]) * most(from);
    }
}
