package streamwright.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import streamwright.yard.Point;
import streamwright.yard.Yard;

/** Slack and loops as the rules say them: the path is planar, plus the difference in height. */
class LengthFormulaTest {
    private static Lengths lengths() {
        Yard yard = Edit.set(Lane.yard(), "rules.slack", 1.1);
        return new Lengths(Edit.set(Edit.set(yard, "rules.trunkLoop", 1.0), "rules.leadLoop", 0.3));
    }

    @Test
    void hopHasALoopAtEachEnd() {
        // 3-4-5 on the ground and 2 up
        assertThat(lengths().hop(new Point(0, 0), new Point(3, 4, 2))).isCloseTo(1.1 * 7 + 2, within(1e-12));
    }

    @Test
    void leadHasOneLoop() {
        assertThat(lengths().lead(new Point(3, 4, 2), new Point(0, 0))).isCloseTo(1.1 * 7 + 0.3, within(1e-12));
        assertThat(lengths().lead(new Point(1, 1), new Point(1, 1))).isCloseTo(0.3, within(1e-12));
    }
}
