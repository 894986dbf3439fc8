package streamwright.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import streamwright.check.Audit;
import streamwright.layout.Assembly;
import streamwright.physics.Ground;
import streamwright.physics.GroundPaths;
import streamwright.plan.Plan;
import streamwright.plan.Status;
import streamwright.yard.Yard;

/** Bound, optimum and cost of seeded tiny yards, in both directions. */
class BoundTest {
    private static final int YARDS = Integer.getInteger("tinyYards", 1_000);
    private static final double ROUNDING = 1e-6;

    @Test
    void theBoundHoldsTheCostIsReachedAndOptimalIsATheorem() {
        int planned = 0;
        int optimal = 0;
        int impossible = 0;
        int missed = 0;
        int tried = 0;
        for (long seed = 1; seed <= YARDS; seed++) {
            Yard yard = TinyYards.of(seed);
            Ground ground = GroundPaths.of(yard);
            BruteForce bruteForce = new BruteForce(yard, ground);
            OptionalDouble optimum = bruteForce.optimum();
            if (bruteForce.tooMany()) {
                continue;
            }
            tried++;
            Outcome outcome = Planner.plan(yard, ground, Budget.effort(1), Outcome.SILENT);
            if (outcome instanceof Outcome.Found found) {
                Plan plan = Assembly.plan(yard, ground, found.layout()).proved(found.bound(), 0, 1);
                assertThat(Audit.of(yard, plan).list())
                        .as("audit of tiny yard %d", seed)
                        .isEmpty();
                assertThat(plan.cost()).as("cost of tiny yard %d", seed).isCloseTo(found.cost(), within());
                assertThat(optimum).as("brute force on tiny yard %d", seed).isPresent();
                assertThat(found.bound())
                        .as("bound of tiny yard %d", seed)
                        .isLessThanOrEqualTo(optimum.getAsDouble() + ROUNDING);
                assertThat(plan.cost())
                        .as("cost of tiny yard %d", seed)
                        .isGreaterThanOrEqualTo(optimum.getAsDouble() - ROUNDING);
                if (plan.status() == Status.OPTIMAL) {
                    optimal++;
                    assertThat(plan.cost())
                            .as("optimal tiny yard %d", seed)
                            .isCloseTo(optimum.getAsDouble(), within(0.005));
                }
                planned++;
            } else if (outcome instanceof Outcome.Impossible) {
                assertThat(optimum)
                        .as("brute force on tiny yard %d, where the planner says %s", seed, outcome)
                        .isEmpty();
                impossible++;
            } else {
                missed += optimum.isPresent() ? 1 : 0;
            }
        }
        System.out.printf(
                "%d of %d tiny yards tried: %d planned, %d of them proved optimal, %d proved impossible, %d plans missed%n",
                tried, YARDS, planned, optimal, impossible, missed);
        // a search may end without a plan and say so, but seldom
        assertThat(missed).isLessThanOrEqualTo(tried / 50);
        // most yards must be ones that can fail in either direction
        assertThat(planned).isGreaterThan(tried / 3);
        assertThat(optimal).isGreaterThan(planned * 8 / 10);
        assertThat(impossible).isGreaterThan(tried / 50);
    }

    private static org.assertj.core.data.Offset<Double> within(double offset) {
        return org.assertj.core.data.Offset.offset(offset);
    }

    private static org.assertj.core.data.Offset<Double> within() {
        return within(ROUNDING);
    }
}
