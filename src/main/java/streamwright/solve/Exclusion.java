package streamwright.solve;

import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPVariable;
import org.jspecify.annotations.Nullable;

/** Rows of whole-number programmes that keep rules which the relaxation does not know. */
final class Exclusion {
    private static final double INF = Double.POSITIVE_INFINITY;

    private final Master master;
    private final MPSolver solver;
    private final Site site;

    Exclusion(Master master, MPSolver solver) {
        this.master = master;
        this.solver = solver;
        site = master.site;
    }

    /**
     * No cable is longer than the rules allow: each arc carries the length of its cable from its own start to the
     * cable's end, as a flow that each hop draws from (after Gavish and Graves 1978); what leaves a controller by an arc
     * is at most the limit.
     */
    void cableLengths() {
        int controllers = site.controllers.length;
        double loops = site.loops();
        MPVariable[][] rest = new MPVariable[master.arc.length][site.spots.length];
        for (int from = 0; from < rest.length; from++) {
            for (int to = 0; to < site.spots.length; to++) {
                @Nullable MPVariable arc = master.arc[from][to];
                if (arc != null) {
                    rest[from][to] = solver.makeNumVar(0, INF, "");
                    MPConstraint room = solver.makeConstraint(-INF, 0);
                    room.setCoefficient(rest[from][to], 1);
                    room.setCoefficient(arc, -(site.cableMost - nearest(from)));
                }
            }
        }
        for (int p = 0; p < site.spots.length; p++) {
            MPConstraint drawn = solver.makeConstraint(0, INF);
            for (int from = 0; from < rest.length; from++) {
                @Nullable MPVariable arc = master.arc[from][p];
                if (arc != null) {
                    drawn.setCoefficient(rest[from][p], 1);
                    drawn.setCoefficient(arc, -(site.arcLength(from, p) - loops));
                }
            }
            for (int to = 0; to < site.spots.length; to++) {
                if (rest[controllers + p][to] != null) {
                    drawn.setCoefficient(rest[controllers + p][to], -1);
                }
            }
            for (MPVariable board : master.board[p]) {
                drawn.setCoefficient(board, -loops);
            }
        }
    }

    /** Least length from any controller to a node; 0 for a controller. */
    private double nearest(int node) {
        int controllers = site.controllers.length;
        double least = node < controllers ? 0 : INF;
        for (int c = 0; c < controllers && node >= controllers; c++) {
            least = Math.min(least, site.hopFrom(c, node - controllers));
        }
        return least;
    }

    /**
     * A cable's contents do not go into its streams: at least one of its arcs or chains must be fewer, or one of its
     * spots have more boards, or be reached once more.
     */
    void contents(Realization.Contents contents) {
        int terms = contents.arcs().size() + contents.columns().size();
        MPConstraint row = solver.makeConstraint(-INF, terms - 1);
        for (int[] arc : contents.arcs()) {
            MPVariable variable = java.util.Objects.requireNonNull(master.arc[arc[0]][arc[1]]);
            row.setCoefficient(atLeast(variable, 1, master.arcMost(arc[0], arc[1])), 1);
        }
        for (Master.Column column : contents.columns()) {
            row.setCoefficient(atLeast(column.variable, Math.rint(column.value), column.variable.ub()), 1);
        }
        for (int spot : contents.spots()) {
            for (int m = 0; m < site.offers.length; m++) {
                MPVariable more = solver.makeBoolVar("");
                MPConstraint only = solver.makeConstraint(0, INF);
                only.setCoefficient(master.board[spot][m], 1);
                only.setCoefficient(more, -(Math.rint(master.point.board()[spot][m]) + 1));
                row.setCoefficient(more, -1);
            }
            MPVariable again = solver.makeBoolVar("");
            MPConstraint only = solver.makeConstraint(0, INF);
            only.setCoefficient(again, -2);
            for (int from = 0; from < master.arc.length; from++) {
                @Nullable MPVariable arc = master.arc[from][spot];
                if (arc != null) {
                    only.setCoefficient(arc, 1);
                }
            }
            row.setCoefficient(again, -1);
        }
    }

    /** A number that is 1 where the variable is at least so much. */
    private MPVariable atLeast(MPVariable variable, double least, double most) {
        if (least == 1 && most == 1) {
            return variable;
        }
        MPVariable reached = solver.makeBoolVar("");
        MPConstraint row = solver.makeConstraint(-INF, least - 1);
        row.setCoefficient(variable, 1);
        row.setCoefficient(reached, -(most - least + 1));
        return reached;
    }
}
