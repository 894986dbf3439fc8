package streamwright.solve;

import java.util.function.BooleanSupplier;

/**
 * How much work a search may do: by the clock, or by counts that are the same on every machine.
 *
 * @param deadline {@link System#nanoTime} at which all ends; {@code Long.MAX_VALUE} where only counts limit
 * @param level of effort by counts; 0 where the clock limits
 * @param workers threads
 * @param seed of all that is random
 * @param interrupted whether the user wants it ended
 */
record Effort(long deadline, int level, int workers, long seed, BooleanSupplier interrupted) {
    private static final double LONG = 1e6;

    boolean stopped() {
        return interrupted.getAsBoolean() || (deadline != Long.MAX_VALUE && System.nanoTime() >= deadline);
    }

    double secondsLeft() {
        return deadline == Long.MAX_VALUE ? LONG : Math.max(0.001, (deadline - System.nanoTime()) / 1e9);
    }

    /** Nodes of one whole-number search. */
    long nodes() {
        return level == 0 ? Long.MAX_VALUE : 300L * level * level * level;
    }
}
