package streamwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import streamwright.plan.Plan;

/** A plan made by hand, with every figure worked out beside it, is found clean. */
class CleanTest {
    @Test
    void findsNoFaultWithTheLane() {
        assertThat(Lane.scene().audit().list()).isEmpty();
    }

    @Test
    void findsNoFaultWithKeptChannels() {
        assertThat(Lane.kept().audit().list()).isEmpty();
    }

    @Test
    void comesToTheFiguresWorkedOutByHand() {
        Plan plan = Lane.plan();
        Plan own = Lane.scene().audit().restated();
        assertThat(own)
                .usingRecursiveComparison()
                .withEqualsForType((a, b) -> Math.abs(a - b) < 1e-9, Double.class)
                .isEqualTo(plan);
    }
}
