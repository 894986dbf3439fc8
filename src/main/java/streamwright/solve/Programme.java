package streamwright.solve;

import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPObjective;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPSolverParameters;
import com.google.ortools.linearsolver.MPVariable;
import org.jspecify.annotations.Nullable;

/** A programme that grows, and how it is solved: with parts of everything by the simplex, or in whole numbers by a tree. */
final class Programme {
    private static final double INF = Double.POSITIVE_INFINITY;

    /** Ways to solve from nothing where the last basis leads to numbers too imprecise, the most reliable first. */
    private static final String[] ANEW = {
        "use_preprocessing:true use_dual_simplex:true",
        "use_preprocessing:true use_dual_simplex:true perturb_costs_in_dual_simplex:true",
        "use_preprocessing:true use_dual_simplex:false",
        "use_preprocessing:false use_dual_simplex:true",
        "use_preprocessing:false use_dual_simplex:false",
    };

    final MPSolver solver;
    private final MPObjective objective;
    private final boolean whole;
    private @Nullable MPConstraint costRow;
    private boolean grown = true;
    private boolean scaled = true;
    private boolean afresh;

    /** What the last solution says: its value, or of whole numbers a bound. */
    double value;

    Programme(boolean whole) {
        this.whole = whole;
        solver = MPSolver.createSolver(whole ? "SCIP" : "GLOP");
        objective = solver.objective();
        objective.setMinimization();
    }

    /** A number at this price, which must be whole where all must. */
    MPVariable counted(double most, double price) {
        return priced(solver.makeVar(0, most, whole, ""), price);
    }

    /** A number that may be broken. */
    MPVariable free(double most, double price) {
        return priced(solver.makeNumVar(0, most, ""), price);
    }

    private MPVariable priced(MPVariable variable, double price) {
        objective.setCoefficient(variable, price);
        return variable;
    }

    /** Another price. */
    void price(MPVariable variable, double price) {
        objective.setCoefficient(variable, price);
        grown = true;
    }

    /** Told when something came in, or became cheaper. */
    void grown() {
        grown = true;
    }

    /**
     * Leaves the scale of rows as it is, from now on. Where what comes in is often larger than all before, rows would be
     * scaled anew, and the solver would know nothing of its last basis again.
     */
    void unscaled() {
        scaled = false;
    }

    /**
     * Solves once from nothing: faster where much is in before the first solution. Without preprocessing, which would leave
     * no basis to go on from.
     */
    void afresh() {
        afresh = true;
    }

    /**
     * Solves it as it stands, with parts of everything.
     *
     * @return its value; infinite where it has no solution; NaN where the solver gave up
     */
    double solve(double seconds) {
        // new columns leave the basis primal feasible, new rows and bounds leave it dual feasible
        boolean dual = afresh || !grown;
        String on = "use_preprocessing:false use_scaling:" + scaled + " use_dual_simplex:" + dual;
        MPSolver.ResultStatus status = solve(on, seconds);
        afresh = false;
        grown = false;
        for (int way = 0; way < ANEW.length && status == MPSolver.ResultStatus.ABNORMAL; way++) {
            solver.reset();
            status = solve(ANEW[way], seconds);
        }
        value = status == MPSolver.ResultStatus.OPTIMAL
                ? objective.value()
                : status == MPSolver.ResultStatus.INFEASIBLE ? INF : Double.NaN;
        return value;
    }

    private MPSolver.ResultStatus solve(String way, double seconds) {
        solver.setSolverSpecificParametersAsString(way);
        solver.setTimeLimit(Math.max(1, (long) (1000 * seconds)));
        return solver.solve();
    }

    /** How a search for a whole solution ended. */
    enum Ending {
        /** The best whole solution can be read. */
        SOLVED,
        /** There is none. */
        NONE,
        /** Given up; the bound holds. */
        GIVEN_UP
    }

    /**
     * Looks for the cheapest whole solution.
     *
     * @param cutoff only solutions that cost less matter
     * @param seconds after which the solver gives up
     * @param nodes of its tree after which it gives up
     */
    Ending solveWhole(double cutoff, double seconds, long nodes) {
        if (costRow == null) {
            costRow = solver.makeConstraint(-INF, cutoff);
            for (MPVariable variable : solver.variables()) {
                costRow.setCoefficient(variable, objective.getCoefficient(variable));
            }
        }
        costRow.setUb(cutoff);
        MPSolverParameters exact = new MPSolverParameters();
        exact.setDoubleParam(MPSolverParameters.DoubleParam.RELATIVE_MIP_GAP, 0);
        solver.setSolverSpecificParametersAsString("misc/catchctrlc = FALSE\nlimits/nodes = " + nodes + "\n");
        solver.setTimeLimit(Math.max(1, (long) (1000 * seconds)));
        MPSolver.ResultStatus status = solver.solve(exact);
        if (status == MPSolver.ResultStatus.INFEASIBLE) {
            value = INF;
            return Ending.NONE;
        }
        if (status == MPSolver.ResultStatus.OPTIMAL) {
            value = objective.bestBound();
            return Ending.SOLVED;
        }
        boolean bounded = status == MPSolver.ResultStatus.FEASIBLE || status == MPSolver.ResultStatus.NOT_SOLVED;
        value = bounded ? objective.bestBound() : -INF;
        return Ending.GIVEN_UP;
    }
}
