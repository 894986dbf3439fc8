package streamwright.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** What a search passes over for a while: a closed spot, and some places where streams differ. */
class InsertionTest {
    private static final int SEEDS = 300;

    /** All strings in turn, each at the cheapest place that is looked at. */
    private static Draft filled(Site site, long seed, int closed) {
        Draft draft = new Draft(site);
        Insertion insertion = new Insertion(draft);
        insertion.choose(new SplittableRandom(seed), closed);
        for (int i = 0; i < site.strings.length; i++) {
            if (insertion.find(i)) {
                insertion.apply();
            }
        }
        return draft;
    }

    private static int someSpot(Draft draft) {
        for (Draft.Cable cable : draft.cables) {
            if (cable.size > 0) {
                return cable.boards[0].spot;
            }
        }
        return -1;
    }

    @Test
    void noBoardIsHungAtAClosedSpot() {
        int closed = 0;
        for (long seed = 0; seed < SEEDS; seed++) {
            Site site = MixedYards.site(seed);
            int spot = someSpot(filled(site, seed, -1));
            if (spot >= 0) {
                closed++;
                assertThat(filled(site, seed, spot).boardsAt.get(spot))
                        .as("mixed yard %d", seed)
                        .isEmpty();
            }
        }
        assertThat(closed).isGreaterThan(SEEDS / 2);
    }

    @Test
    void whatWasPassedOverIsFoundWhenAllIsLookedAt() {
        int passed = 0;
        for (long seed = 0; seed < SEEDS; seed++) {
            Site site = MixedYards.site(seed);
            Insertion insertion = new Insertion(new Draft(site));
            for (int i = 0; i < site.strings.length; i++) {
                boolean any = insertion.find(i);
                double least = insertion.delta;
                for (long trial = 0; trial < 10 && any; trial++) {
                    insertion.choose(new SplittableRandom(trial), -1);
                    boolean found = insertion.find(i);
                    passed += found && insertion.delta <= least ? 0 : 1;
                    insertion.chooseAny();
                    assertThat(insertion.find(i)).isTrue();
                    assertThat(insertion.delta).isEqualTo(least);
                }
            }
        }
        assertThat(passed).isGreaterThan(0);
    }
}
