package streamwright.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import streamwright.solve.RepairLevels.Level;
import streamwright.yard.Work;

class RepairLevelsTest {
    /** The default minutes: setting 1, replug 4, lead 15, hop 25, board 20, injection 10. */
    private static final Work WORK = new Work(1, 4, 15, 25, 20, 10);

    @Test
    void noWorkFallsBetweenTwoLevels() {
        for (double below : new double[] {1, 45, 46, 50, 71, 200, Double.POSITIVE_INFINITY}) {
            List<Level> levels = RepairLevels.of(WORK, 0, 1, below);
            assertThat(levels.get(0).least()).isZero();
            assertThat(levels.get(levels.size() - 1).most()).isEqualTo(below);
            for (int l = 1; l < levels.size(); l++) {
                assertThat(levels.get(l).least()).isEqualTo(levels.get(l - 1).most() + 1);
            }
        }
    }

    /** Less than a board more and its hop, 45, or two hops, 50, is nothing on cables; boards that come down add to all. */
    @Test
    void aBoardMoreAndTwoHopsBeginLevels() {
        assertThat(RepairLevels.of(WORK, 0, 1, 60))
                .containsExactly(new Level(0, 44), new Level(45, 49), new Level(50, 60));
        assertThat(RepairLevels.of(WORK, 20, 1, 60)).containsExactly(new Level(20, 60));
    }
}
