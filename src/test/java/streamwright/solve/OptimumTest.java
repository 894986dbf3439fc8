package streamwright.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.Predicate;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import streamwright.yard.Yard;

/** Cost, bound and every claim of the planner on seeded tiny yards, each beside every plan that its yard has. */
class OptimumTest {
    private static final int YARDS = Integer.getInteger("tinyYards", 2_000);

    /** A yard that takes longer is given up: then less is proved, but nothing said may be wrong. */
    private static final double SECONDS_MOST = 0.25;

    private record Tried(long seed, boolean late, Trial trial) {}

    private static Tried tried(long seed) {
        CpuLimit limit = new CpuLimit(SECONDS_MOST);
        Trial trial = Trial.of(yard(seed), 1, limit);
        return new Tried(seed, limit.reached(), trial);
    }

    /** A yard of six strings takes brute force as long as ten of five. */
    private static Yard yard(long seed) {
        return AnyYard.of(seed, 2, seed % 10 == 0 ? 6 : 5);
    }

    @Test
    void everyPlanOfTinyYardsAgreesWithThePlanner() {
        List<Tried> all = LongStream.range(0, YARDS)
                .parallel()
                .mapToObj(OptimumTest::tried)
                .toList();
        assertThat(all.stream()
                        .filter(tried -> !tried.trial.wrong().isEmpty())
                        .map(tried -> "any " + tried.seed + ": " + tried.trial.wrong()))
                .isEmpty();
        long late = count(all, tried -> tried.late);
        long solvable = count(all, tried -> tried.trial.solvable());
        long missed = count(all, tried -> tried.trial.missed() && !tried.late);
        long optimal = count(all, tried -> tried.trial.optimal());
        long hopeless = all.size() - solvable;
        long impossible = count(all, tried -> tried.trial.outcome() instanceof Outcome.Impossible);
        System.out.printf(
                "%d tiny yards (%d given up): %d have a plan, %d of them missed, %d proved optimal; %d have none, %d of them proved%n",
                all.size(), late, solvable, missed, optimal, hopeless, impossible);
        // a search may end without a plan and say so, but seldom
        assertThat(missed).isLessThanOrEqualTo(solvable / 50);
        // claims must be made often enough to be wrong
        assertThat(optimal).isGreaterThan(solvable / 2);
        assertThat(impossible).isGreaterThan(hopeless / 3);
    }

    private static long count(List<Tried> all, Predicate<Tried> which) {
        return all.stream().filter(which).count();
    }

    /** Ports that can hear any stream: a board whose strings had to be packed anew had none left to try. */
    @ParameterizedTest
    @ValueSource(longs = {750, 1503, 1519})
    void boardsOfFreePortsArePacked(long seed) {
        holds(seed);
    }

    /** Spots that hold one board: a plan put together from the relaxation hung two there. */
    @ParameterizedTest
    @ValueSource(longs = {575, 1472, 1524, 1864, 2243, 2356, 2989})
    void spotsKeepTheirMost(long seed) {
        holds(seed);
    }

    private static void holds(long seed) {
        Trial trial = Trial.of(yard(seed), 2, new CpuLimit(4 * SECONDS_MOST));
        assertThat(trial.wrong()).as("any %d", seed).isEmpty();
        assertThat(trial.missed()).as("any %d", seed).isFalse();
    }
}
