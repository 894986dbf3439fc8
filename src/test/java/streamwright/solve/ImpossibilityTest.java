package streamwright.solve;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import streamwright.physics.Ground;
import streamwright.physics.GroundPaths;
import streamwright.yard.Yard;

/** Proofs that there is no plan, beside every plan of tiny yards in which each rule binds often. */
class ImpossibilityTest {
    private static final int YARDS = 250;
    private static final int MIXED = 50;

    private int hopeless;
    private int proved;

    @Test
    void noYardWithAPlanIsProvedImpossibleAndMostWithoutAre() {
        for (long seed = 1; seed <= YARDS; seed++) {
            Yard yard = AnyYard.of(seed, 2, 4);
            Ground ground = GroundPaths.of(yard);
            tried("any " + seed, yard, ground, EveryPlan.cheapest(yard, ground) != null);
        }
        System.out.printf("%d tiny yards: %d have no plan, %d of them proved%n", YARDS, hopeless, proved);
        assertThat(hopeless).isGreaterThan(YARDS / 10);
        assertThat(proved).isGreaterThan(hopeless * 9 / 10);
    }

    @Test
    void noYardOfMixedHardwareWithAPlanIsProvedImpossible() {
        for (long seed = 1; seed <= MIXED; seed++) {
            Yard yard = MixedYards.of(seed);
            Ground ground = GroundPaths.of(yard);
            EveryMixedPlan every = new EveryMixedPlan(yard, ground);
            boolean some = every.optimum().isPresent();
            if (!every.tooMany()) {
                tried("mixed " + seed, yard, ground, some);
            }
        }
        System.out.printf("mixed tiny yards: %d have no plan, %d of them proved%n", hopeless, proved);
        assertThat(hopeless).isGreaterThan(MIXED / 10);
        assertThat(proved).isGreaterThan(hopeless * 2 / 3);
    }

    private void tried(String name, Yard yard, Ground ground, boolean some) {
        boolean none = Impossibility.proved(yard, ground, 10, () -> false);
        assertThat(none && some)
                .as("%s has a plan, but is proved to have none", name)
                .isFalse();
        hopeless += some ? 0 : 1;
        proved += none ? 1 : 0;
        if (!some && !none) {
            System.out.println("open: " + name);
        }
    }
}
