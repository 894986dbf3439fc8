package streamwright.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalDouble;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import streamwright.check.Audit;
import streamwright.layout.Assembly;
import streamwright.physics.Ground;
import streamwright.physics.GroundPaths;
import streamwright.plan.Plan;
import streamwright.plan.Status;
import streamwright.yard.Yard;

/** Bound, optimum and cost of seeded tiny yards of every kind of hardware, numbered anew and with kept channels. */
class MixedTest {
    private static final int YARDS = Integer.getInteger("mixedYards", 60);
    private static final Offset<Double> ROUNDING = Offset.offset(1e-6);

    private int tried;
    private int planned;
    private int optimal;
    private int impossible;
    private int missed;
    private int reached;

    @Test
    void theBoundHoldsTheCostIsReachedAndOptimalIsATheorem() {
        for (long seed = 1; seed <= YARDS; seed++) {
            yard(seed);
        }
        System.out.printf(
                "%d of %d mixed yards tried: %d planned, %d at the optimum, %d proved optimal, %d proved impossible,"
                        + " %d plans missed%n",
                tried, YARDS, planned, reached, optimal, impossible, missed);
        assertThat(missed).isLessThanOrEqualTo(tried / 50);
        assertThat(reached).isGreaterThan(planned * 9 / 10);
        // most yards must be ones that can fail in either direction
        assertThat(planned).isGreaterThan(tried / 3);
        assertThat(optimal).isGreaterThan(planned / 3);
        assertThat(tried - planned).isGreaterThan(tried / 50);
    }

    private void yard(long seed) {
        Yard yard = MixedYards.of(seed);
        Ground ground = GroundPaths.of(yard);
        EveryMixedPlan every = new EveryMixedPlan(yard, ground);
        OptionalDouble optimum = every.optimum();
        if (every.tooMany()) {
            return;
        }
        tried++;
        Outcome outcome = Planner.plan(yard, ground, Budget.effort(1), Outcome.SILENT);
        if (outcome instanceof Outcome.Found found) {
            planned++;
            Plan plan = Assembly.plan(yard, ground, found.layout()).proved(found.bound(), 0, 1);
            assertThat(Audit.of(yard, plan).list())
                    .as("audit of mixed yard %d", seed)
                    .isEmpty();
            assertThat(plan.cost()).as("cost of mixed yard %d", seed).isCloseTo(found.cost(), ROUNDING);
            assertThat(optimum).as("brute force on mixed yard %d", seed).isPresent();
            double least = optimum.getAsDouble();
            assertThat(found.bound()).as("bound of mixed yard %d", seed).isLessThanOrEqualTo(least + 1e-6);
            assertThat(plan.cost()).as("cost of mixed yard %d", seed).isGreaterThanOrEqualTo(least - 1e-6);
            reached += plan.cost() <= least + 1e-6 ? 1 : 0;
            optimal += plan.status() == Status.OPTIMAL ? 1 : 0;
        } else if (outcome instanceof Outcome.Impossible) {
            impossible++;
            assertThat(optimum)
                    .as("brute force on mixed yard %d, where the planner says %s", seed, outcome)
                    .isEmpty();
        } else {
            missed += optimum.isPresent() ? 1 : 0;
        }
    }
}
