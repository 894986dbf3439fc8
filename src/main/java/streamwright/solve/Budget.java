package streamwright.solve;

import java.util.function.BooleanSupplier;

/**
 * What planning may spend.
 *
 * @param seconds by the clock; ignored where {@code effort} is above 0
 * @param effort 0, or a level of work by counts: the same plan on every run with as many workers
 * @param seed of all that is random
 * @param workers threads
 * @param interrupted asked often; true ends planning with the best so far
 * @param proving whether a bound is wanted too: else all goes into the search
 */
public record Budget(double seconds, int effort, long seed, int workers, BooleanSupplier interrupted, boolean proving) {
    public Budget(double seconds, int effort, long seed, int workers, BooleanSupplier interrupted) {
        this(seconds, effort, seed, workers, interrupted, true);
    }

    public static Budget seconds(double seconds) {
        return new Budget(seconds, 0, 1, 2, () -> false);
    }

    public static Budget effort(int level) {
        return new Budget(0, level, 1, 2, () -> false);
    }
}
