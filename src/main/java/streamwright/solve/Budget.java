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
 */
public record Budget(double seconds, int effort, long seed, int workers, BooleanSupplier interrupted) {
    public static Budget seconds(double seconds) {
        return new Budget(seconds, 0, 1, 2, () -> false);
    }

    public static Budget effort(int level) {
        return new Budget(0, level, 1, 2, () -> false);
    }
}
