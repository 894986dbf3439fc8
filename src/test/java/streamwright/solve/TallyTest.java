package streamwright.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Numbers by which plans are told apart: a plan is in one part, and a solution between plans in neither. */
class TallyTest {
    private static final double ROUNDING = 1e-9;
    private static final int SEEDS = 500;

    private static double sum(Row row, Point point) {
        double sum = 0;
        for (int p = 0; p < point.board().length; p++) {
            for (int m = 0; m < point.board()[p].length; m++) {
                sum += row.board(p, m) * point.board()[p][m];
            }
            for (int k = 0; k < point.served().length; k++) {
                sum += row.item(k, p) * point.served()[k][p];
            }
        }
        return sum;
    }

    private static boolean holds(Row row, double sum) {
        return sum >= row.low() - ROUNDING && sum <= row.high() + ROUNDING;
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
                assertThat(holds(few, sum(few, plan)) != holds(many, sum(many, plan)))
                        .as("%s of yard %d", tally, seed)
                        .isTrue();
                assertThat(holds(few, sum(few, none))).isTrue();
                assertThat(holds(few, sum(few, between)) || holds(many, sum(many, between)))
                        .as("%s of yard %d", tally, seed)
                        .isFalse();
                seen++;
            }
        }
        assertThat(seen).isGreaterThan(SEEDS);
    }
}
