package streamwright.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Numbers by which plans are told apart: a plan is in one part, and a solution between plans in neither. */
class TallyTest {
    private static final double ROUNDING = 1e-9;
    private static final int SEEDS = 500;

    private static boolean holds(Row row, Point point) {
        return Weights.of(point).broken(row) <= ROUNDING;
    }

    @Test
    void aPlanIsInOnePartAndWhatIsBetweenPlansInNeither() {
        int seen = 0;
        for (long seed = 0; seed < SEEDS; seed++) {
            Site site = MixedYards.site(seed);
            Draft draft = new Draft(site);
            if (!new FirstFit(draft).run()) {
                continue;
            }
            Items items = new Items(site);
            Point plan = Point.of(site, items, Snapshot.of(draft));
            assertThat(Tally.undecided(site, List.of(plan))).as("yard %d", seed).isEmpty();
            Point none = Point.nowhere(site, items);
            Point between = plan.towards(none, 0.4);
            for (Tally tally : Tally.undecided(site, List.of(none, between))) {
                Row few = tally.few().row();
                Row many = tally.many().row();
                assertThat(tally.sort()).isEqualTo(1);
                assertThat(holds(few, plan) != holds(many, plan))
                        .as("%s of yard %d", tally, seed)
                        .isTrue();
                assertThat(holds(few, none)).isTrue();
                assertThat(holds(few, between) || holds(many, between))
                        .as("%s of yard %d", tally, seed)
                        .isFalse();
                seen++;
            }
        }
        assertThat(seen).isGreaterThan(SEEDS);
    }
}
