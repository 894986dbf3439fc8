package streamwright.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** What is taken off a plan: all of it comes back as loose, and the spots of boards that went are remembered. */
class RuinTest {
    private static final int SEEDS = 300;

    @Test
    void boardsThatWereTakenDownAreGone() {
        int went = 0;
        for (long seed = 0; seed < SEEDS; seed++) {
            Site site = MixedYards.site(seed);
            Draft draft = new Draft(site);
            if (!new FirstFit(draft).run()) {
                continue;
            }
            Ruin ruin = new Ruin(draft, new Nearby(site), new SplittableRandom(seed));
            ruin.none();
            assertThat(ruin.emptied()).isEqualTo(-1);
            int boards = draft.boards;
            ruin.cables(2);
            assertThat(ruin.loose()).hasSize(site.strings.length - draft.placed);
            int spot = ruin.emptied();
            assertThat(spot >= 0).as("mixed yard %d", seed).isEqualTo(draft.boards < boards);
            went += spot >= 0 ? 1 : 0;
        }
        assertThat(went).isGreaterThan(SEEDS / 3);
    }
}
