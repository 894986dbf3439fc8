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
     * A cable's contents do not go into its streams: at least one of its arcs or chains must be fewer, or one of its
     * spots have more boards, or be reached once more.
     */
    void contents(Realization.Contents contents) {
        int terms = contents.arcs().size() + contents.columns().size();
        MPConstraint row = solver.makeConstraint(-INF, terms - 1);
        for (int[] arc : contents.arcs()) {
            MPVariable variable = java.util.Objects.requireNonNull(master.arc[arc[0]][arc[1]]);
            row.setCoefficient(atLeast(variable, 1, master.limits.arcMost(arc[0], arc[1])), 1);
        }
        for (Master.Column column : contents.columns()) {
            row.setCoefficient(atLeast(column.variable, Math.rint(column.value), column.variable.ub()), 1);
        }
        for (int spot : contents.spots()) {
            for (int m = 0; m < site.offers.length; m++) {
                MPVariable more = solver.makeBoolVar("");
                MPConstraint only = solver.makeConstraint(0, INF);
                only.setCoefficient(master.standing.board[0][spot][m], 1);
                only.setCoefficient(more, -(Math.rint(master.point().board()[spot][m]) + 1));
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
