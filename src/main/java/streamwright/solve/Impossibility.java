package streamwright.solve;

import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import java.util.function.BooleanSupplier;
import streamwright.physics.Ground;
import streamwright.yard.Yard;

/**
 * Proves that a yard has no plan, where it has none: first by arithmetic, then by a constraint model that every plan of
 * the yard satisfies ({@link PostModel}, and {@link TrunkModel} for what cables may measure). The model is a
 * relaxation: that it has a solution proves nothing.
 */
public final class Impossibility {
    /** Of the time, for the model without the ways of cables: what it forbids needs no more. */
    private static final double SHARE_WITHOUT_TRUNK = 0.5;

    /** With a smaller share of the time left, a further model is not begun. */
    private static final double SHARE_LEAST = 0.2;

    /** A model with more choices than this takes longer to build than anybody waits. */
    private static final long CHOICES_MOST = 150_000;

    private Impossibility() {}

    /**
     * Whether it is proved in this time that no plan exists.
     *
     * @param ground of the same yard
     * @param stop asked often; true ends the proof without one
     */
    public static boolean proved(Yard yard, Ground ground, double seconds, BooleanSupplier stop) {
        long end = System.nanoTime() + (long) (seconds * 1e9);
        Site site = new Site(yard, ground);
        if (!Obstructions.of(site).isEmpty()) {
            return true;
        }
        if (stop.getAsBoolean() || PostModel.choices(site) > CHOICES_MOST) {
            return false;
        }
        Natives.load();
        PostModel posts = new PostModel(site);
        if (infeasible(posts, Math.min(left(end), seconds * SHARE_WITHOUT_TRUNK), stop)) {
            return true;
        }
        if (TrunkModel.choices(site) > CHOICES_MOST || stop.getAsBoolean() || left(end) < SHARE_LEAST * seconds) {
            return false;
        }
        new TrunkModel(posts).add();
        return infeasible(posts, left(end), stop);
    }

    private static double left(long end) {
        return (end - System.nanoTime()) / 1e9;
    }

    private static boolean infeasible(PostModel model, double seconds, BooleanSupplier stop) {
        CpSolver solver = new CpSolver();
        solver.getParameters()
                .setMaxTimeInSeconds(Math.max(0.01, seconds))
                .setNumWorkers(2)
                .setRandomSeed(1)
                .setCatchSigintSignal(false);
        try (Watch watch = new Watch(solver, stop)) {
            return solver.solve(model.cp) == CpSolverStatus.INFEASIBLE && !watch.stopped();
        }
    }

    /** Ends a search when somebody wants an end. */
    private static final class Watch implements AutoCloseable {
        private static final long MILLIS = 50;

        private final Thread thread;
        private volatile boolean stopped;

        Watch(CpSolver solver, BooleanSupplier stop) {
            thread = new Thread(
                    () -> {
                        try {
                            while (!stop.getAsBoolean()) {
                                Thread.sleep(MILLIS);
                            }
                            stopped = true;
                            solver.stopSearch();
                        } catch (InterruptedException e) {
                            // the search ended by itself
                        }
                    },
                    "streamwright-watch");
            thread.setDaemon(true);
            thread.start();
        }

        boolean stopped() {
            return stopped;
        }

        @Override
        public void close() {
            thread.interrupt();
        }
    }
}
