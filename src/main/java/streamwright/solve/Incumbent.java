package streamwright.solve;

import org.jspecify.annotations.Nullable;

/** The best plan known and what is proved of it, shared by search and proof. */
final class Incumbent {
    /** Told whenever cost or bound move. */
    interface Listener {
        void moved(double cost, double bound);

        /** A better plan than all before. */
        default void better(Snapshot plan) {}
    }

    private final Listener listener;
    private @Nullable Snapshot best;
    private double bound;

    Incumbent(Listener listener) {
        this.listener = listener;
    }

    synchronized @Nullable Snapshot best() {
        return best;
    }

    /** Infinite while there is no plan. */
    synchronized double cost() {
        return best == null ? Double.POSITIVE_INFINITY : best.cost();
    }

    /** Of a plan that is proved the cheapest: its cost, without the rounding of solvers. */
    synchronized double bound() {
        return proved() ? cost() : Math.min(bound, cost());
    }

    synchronized void offer(Snapshot plan) {
        if (plan.cost() < cost() - 1e-9) {
            best = plan;
            listener.better(plan);
            listener.moved(cost(), bound());
        }
    }

    /** No plan costs less. */
    synchronized void raise(double proved) {
        if (proved > bound) {
            bound = proved;
            listener.moved(cost(), bound());
        }
    }

    synchronized boolean proved() {
        return best != null && bound >= best.cost() - 2e-5;
    }
}
