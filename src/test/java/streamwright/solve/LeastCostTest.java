package streamwright.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import streamwright.physics.Ground;
import streamwright.physics.GroundPaths;
import streamwright.yard.Yard;

/** The bound by arithmetic alone, held against the cheapest of all plans of tiny yards. */
class LeastCostTest {
    private static final double ROUNDING = 1e-6;

    private double reached;
    private int yards;

    private void holds(Yard yard, Ground ground, double optimum) {
        double least = LeastCost.of(new Site(yard, ground));
        assertThat(least).as(yard.name()).isLessThanOrEqualTo(optimum + ROUNDING);
        if (optimum > ROUNDING) {
            reached += least / optimum;
            yards++;
        }
    }

    @Test
    void noPlanCostsLess() {
        for (long seed = 0; seed < 150; seed++) {
            Yard yard = AnyYard.of(seed, 2, 5);
            Ground ground = GroundPaths.of(yard);
            EveryPlan.Tried best = EveryPlan.cheapest(yard, ground);
            if (best != null) {
                holds(yard, ground, best.cost());
            }
        }
        for (long seed = 1; seed <= 30; seed++) {
            Yard yard = MixedYards.of(seed);
            Ground ground = GroundPaths.of(yard);
            EveryMixedPlan every = new EveryMixedPlan(yard, ground);
            OptionalDouble optimum = every.optimum();
            if (!every.tooMany() && optimum.isPresent()) {
                holds(yard, ground, optimum.getAsDouble());
            }
        }
        System.out.printf(
                "%d tiny yards: the bound by arithmetic is %.0f %% of the optimum%n", yards, 100 * reached / yards);
        // a bound that says next to nothing would hold too
        assertThat(yards).isGreaterThan(80);
        assertThat(reached / yards).isGreaterThan(0.5);
    }

    /** A search that is given no time at all has a bound all the same. */
    @Test
    void aSearchWithoutTimeEndsWithIt() {
        int found = 0;
        for (long seed = 0; seed < 40; seed++) {
            Yard yard = AnyYard.of(seed, 2, 5);
            Ground ground = GroundPaths.of(yard);
            Outcome outcome = Planner.plan(yard, ground, Budget.seconds(1e-9), Outcome.SILENT);
            if (outcome instanceof Outcome.Found plan) {
                found += plan.bound() > 0 ? 1 : 0;
                assertThat(plan.bound())
                        .as(yard.name())
                        .isGreaterThanOrEqualTo(LeastCost.of(new Site(yard, ground)) - ROUNDING);
            }
        }
        // some yards are free of charge
        assertThat(found).isGreaterThan(10);
    }
}
