package streamwright.solve;

import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import streamwright.layout.Layout;
import streamwright.solve.RepairModel.Part;

/** Searches parts of all repairs: solves their model, looks at what it finds, tells it what it did not know. */
final class RepairSearch {
    private static final int CHEAPER_ROUNDS = 40;

    /** What is shorter is no search. */
    private static final double SECONDS_LEAST = 0.02;

    private final Site site;
    private final Installed installed;
    private final Set<Keep> keep;
    private final RepairLook looks;
    private final Effort effort;
    private final RepairSolver solving;
    private final double unit;
    private @Nullable Part bestPart;
    private double bestShown;

    RepairSearch(Site site, Installed installed, Set<Keep> keep, RepairLook looks, Effort effort) {
        this.site = site;
        this.installed = installed;
        this.keep = keep;
        this.looks = looks;
        this.effort = effort;
        solving = new RepairSolver(effort);
        unit = RepairSolver.unit(site.yard.work());
    }

    private static boolean some(CpSolverStatus status) {
        return status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE;
    }

    /**
     * Looks for a repair of less work than the best so far.
     *
     * <p>What a cut takes away either breaks a rule (lengths, power), or is one layout whose own least work is known. So
     * no repair of the part takes less than the least of three: what the solver proves of all layouts left, the work of
     * the layouts looked at, and that of the best repair so far, above which nothing was asked for.
     *
     * @return minutes that each repair of the part takes at least, as far as its model knows them: infinite where it has
     *     none
     */
    double search(Part part, double seconds) {
        long from = System.nanoTime();
        // a model of the whole takes its time to be stated
        if (effort.stopped() || seconds < SECONDS_LEAST) {
            return 0;
        }
        RepairModel model = new RepairModel(site, installed, keep, part, unit);
        RepairCuts cuts = new RepairCuts(model, looks.injected());
        double proved = 0;
        double seen = Double.POSITIVE_INFINITY;
        new RepairHint(model).add();
        while (!effort.stopped()) {
            double left = seconds - (System.nanoTime() - from) / 1e9;
            if (left <= 0) {
                return proved;
            }
            double below = looks.bestWork();
            if (below < Double.POSITIVE_INFINITY) {
                model.cp.addLessOrEqual(model.work, Math.round(below / unit) - 1);
            }
            model.cp.minimize(model.work);
            CpSolver solver = solving.solver(left, part.whole());
            CpSolverStatus status = solving.solve(solver, model);
            if (status == CpSolverStatus.INFEASIBLE) {
                return Math.max(proved, Math.min(seen, below));
            }
            if (some(status) || status == CpSolverStatus.UNKNOWN) {
                double shown = solver.bestObjectiveBound() * unit;
                proved = Math.max(proved, Math.min(Math.min(seen, below), shown));
            }
            if (!some(status)) {
                return proved;
            }
            RepairFound found = new RepairFound(model, solver);
            double shown = solver.objectiveValue() * unit;
            RepairCuts.Learned learned = cuts.learn(found);
            if (learned == RepairCuts.Learned.FORBIDDEN) {
                continue;
            }
            RepairLook.Seen look = look(found);
            if (looks.bestWork() < below) {
                bestShown = shown;
                bestPart = part;
            }
            if (learned == RepairCuts.Learned.MORE) {
                continue;
            }
            // what was looked at is worth its own work, or what the model says of it if that is not certain
            double least = status == CpSolverStatus.OPTIMAL ? Math.max(look.least(), shown) : look.least();
            seen = Math.min(seen, look.least() < 0 ? shown : least);
            if (look.work() <= shown + 1e-9 && status == CpSolverStatus.OPTIMAL) {
                return Math.max(proved, Math.min(seen, looks.bestWork()));
            }
            cuts.forbidThis(found);
        }
        return proved;
    }

    /** The least of what each layout of a solution takes. */
    private RepairLook.Seen look(RepairFound found) {
        double work = Double.POSITIVE_INFINITY;
        double least = Double.POSITIVE_INFINITY;
        for (Layout layout : found.layouts()) {
            RepairLook.Seen seen = looks.look(layout);
            work = Math.min(work, seen.work());
            least = Math.min(least, seen.least());
        }
        return new RepairLook.Seen(work, found.exact() ? least : -1);
    }

    /**
     * Looks for a cheaper layout of the same work, among those of the part in which the best was found.
     *
     * @param part where the best comes from elsewhere
     */
    void cheapen(Part part) {
        if (effort.secondsLeft() < SECONDS_LEAST) {
            return;
        }
        Part of = bestPart == null ? part : bestPart;
        RepairModel model = new RepairModel(site, installed, keep, of, unit);
        RepairCuts cuts = new RepairCuts(model, looks.injected());
        LinearExprBuilder cost = RepairCost.of(model);
        model.cp.addLessOrEqual(model.work, Math.round((bestPart == null ? looks.bestWork() : bestShown) / unit));
        new RepairHint(model).add();
        model.cp.minimize(cost);
        for (int round = 0; round < CHEAPER_ROUNDS && !effort.stopped(); round++) {
            CpSolver solver = solving.solver(effort.secondsLeft(), false);
            CpSolverStatus status = solving.solve(solver, model);
            if (!some(status)) {
                return;
            }
            RepairFound found = new RepairFound(model, solver);
            if (cuts.learn(found) == RepairCuts.Learned.FORBIDDEN) {
                continue;
            }
            RepairLook.Seen look = look(found);
            if (look.work() <= looks.bestWork() + 1e-9 && status == CpSolverStatus.OPTIMAL) {
                return;
            }
            cuts.forbidThis(found);
        }
    }
}
