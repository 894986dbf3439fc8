package streamwright.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import streamwright.physics.GroundPaths;
import streamwright.yard.PixelString;
import streamwright.yard.Yard;

/** Tiny yards planned with proof, and solved again by Choco, whose model shares nothing with the planner. */
class SecondSolverTest {
    private static final int YARDS = Integer.getInteger("secondSolverYards", 60);

    /** Choco counts in whole parts: at most one half of one off for each wire, hop and box. */
    private static final double ROUNDING = 20 * 0.5 / ChocoPlan.PARTS;

    /** How the two answered: each the same or not, proved or not. */
    private record Asked(boolean possible, boolean proved) {}

    private static Asked asked(long seed) {
        Yard yard = TinyGarden.of(seed);
        String name = yard.name();
        assertThat(powerMost(yard)).as(name).isLessThan(1);
        OptionalDouble optimum = ChocoPlan.optimum(yard);
        Outcome outcome = Planner.plan(yard, GroundPaths.of(yard), Budget.effort(1), Outcome.SILENT);
        if (outcome instanceof Outcome.Found found) {
            assertThat(optimum).as(name).isPresent();
            double least = optimum.getAsDouble();
            assertThat(found.cost()).as("cost of " + name).isGreaterThanOrEqualTo(least - ROUNDING);
            assertThat(found.bound()).as("bound of " + name).isLessThanOrEqualTo(least + ROUNDING);
            boolean proved = found.cost() - found.bound() < 0.005;
            if (proved) {
                assertThat(found.cost()).as("optimum of " + name).isCloseTo(least, within(0.005 + ROUNDING));
            }
            return new Asked(true, proved);
        }
        boolean impossible = outcome instanceof Outcome.Impossible;
        if (impossible) {
            assertThat(optimum)
                    .as(name + ", of which the planner says " + outcome)
                    .isEmpty();
        }
        return new Asked(optimum.isPresent(), impossible);
    }

    /** All pixels of the yard on one port, behind wire across the yard for each: share of fuse or of volts to lose. */
    private static double powerMost(Yard yard) {
        var kind = yard.streamKinds().get(0);
        var rules = yard.rules();
        int pixels = yard.strings().stream().mapToInt(PixelString::pixels).sum();
        double amps = pixels * kind.amps() * yard.brightness();
        double metres = yard.strings().size() * (rules.slack() * 16 + rules.leadLoop());
        double copper = 0.017241 * rules.wireFactor() * 2;
        double ohms = copper * (metres / rules.leadWireMm2() + pixels * kind.pitch() / kind.wireMm2())
                + yard.strings().size() * rules.connector();
        double fuse = yard.boards().get(0).model().fuse() * rules.fuseLoad();
        return Math.max(amps / fuse, amps * ohms / (kind.volts() - kind.voltsLow()));
    }

    @Test
    void anotherSolverFindsTheSameOptimum() {
        List<Asked> all = LongStream.range(0, YARDS)
                .parallel()
                .mapToObj(SecondSolverTest::asked)
                .toList();
        long possible = all.stream().filter(Asked::possible).count();
        long proved = all.stream().filter(each -> each.possible && each.proved).count();
        System.out.printf("%d tiny yards solved twice: %d have a plan, %d proved%n", YARDS, possible, proved);
        assertThat(possible).isGreaterThan(YARDS / 3);
        assertThat(proved).isGreaterThan(possible * 3 / 4);
        assertThat(YARDS - possible).isGreaterThan(0);
    }
}
