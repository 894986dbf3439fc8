package streamwright.solve;

import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.locks.LockSupport;
import streamwright.yard.Work;

/** Solves repair models within an effort. */
final class RepairSolver {
    private final Effort effort;

    RepairSolver(Effort effort) {
        this.effort = effort;
    }

    /** The largest of some round parts of a minute of which all work is a whole number. */
    static double unit(Work work) {
        double[] all = {work.setting(), work.replug(), work.lead(), work.hop(), work.board(), work.injection()};
        for (double unit : new double[] {1, 0.5, 0.1, 0.05, 0.01, 0.001}) {
            boolean whole = true;
            for (double each : all) {
                whole &= Math.abs(each / unit - Math.rint(each / unit)) < 1e-9;
            }
            if (whole) {
                return unit;
            }
        }
        return 0.001;
    }

    /** @param prove whether the bound matters: one worker then relaxes all that can be written as a sum */
    CpSolver solver(double seconds, boolean prove) {
        CpSolver solver = new CpSolver();
        solver.getParameters()
                .setMaxTimeInSeconds(seconds)
                .setNumWorkers(effort.workers() * 2)
                .setRandomSeed((int) effort.seed())
                .setCatchSigintSignal(false);
        if (prove) {
            solver.getParameters().addSubsolvers("max_lp").addSubsolvers("no_lp");
        }
        return solver;
    }

    /** Solves; a user who does not want to wait longer is heard while it does. */
    CpSolverStatus solve(CpSolver solver, RepairModel model) {
        AtomicBoolean ended = new AtomicBoolean();
        Thread watch = new Thread(
                () -> {
                    while (!ended.get()) {
                        if (effort.interrupted().getAsBoolean()) {
                            solver.stopSearch();
                        }
                        LockSupport.parkNanos(50_000_000);
                    }
                },
                "streamwright-watch");
        watch.setDaemon(true);
        watch.start();
        try {
            CpSolverStatus status = solver.solve(model.cp);
            if (status == CpSolverStatus.MODEL_INVALID) {
                throw new IllegalStateException("the solver does not take this model: " + model.cp.validate());
            }
            return status;
        } finally {
            ended.set(true);
        }
    }
}
