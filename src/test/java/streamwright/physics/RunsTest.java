package streamwright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import streamwright.yard.Rules;
import streamwright.yard.Units;

/** Lengths and nulls by the yard's rules, whose defaults are common practice, no source. */
class RunsTest {
    private static final Rules RULES = Rules.defaults(Units.M);

    @Test
    void runsAreSlackTimesPathAndLoops() {
        assertThat(Runs.hop(RULES, 10)).isEqualTo(13, within(1e-12));
        assertThat(Runs.lead(RULES, 10)).isEqualTo(11.3, within(1e-12));
        // the same in feet, where no loop is 1
        Rules feet = Rules.defaults(Units.FT);
        assertThat(Runs.hop(feet, 10 / 0.3048)).isEqualTo(13 / 0.3048, within(1e-9));
        assertThat(Runs.lead(feet, 10 / 0.3048)).isEqualTo(11.3 / 0.3048, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"0.3, 0", "6, 0", "6.001, 1", "9, 1", "9.001, 2", "12, 2", "12.001, 3"})
    void leadNeedsANullForEachStepBeyondItsDataLength(double length, int nulls) {
        assertThat(Runs.leadNulls(RULES, length)).isEqualTo(nulls);
    }

    @ParameterizedTest
    @CsvSource({"0.3, 0", "3, 0", "3.001, 1", "6, 1", "6.001, 2", "9, 2", "9.001, 3"})
    void jumperNeedsANullBetweenEveryTwoSteps(double length, int nulls) {
        assertThat(Runs.jumperNulls(RULES, length)).isEqualTo(nulls);
    }

    @Test
    void longestRunsNeedJustTheMostNulls() {
        assertThat(Runs.leadMost(RULES)).isEqualTo(12);
        assertThat(Runs.jumperMost(RULES)).isEqualTo(9);
        Rules feet = Rules.defaults(Units.FT);
        assertThat(Runs.leadNulls(feet, Runs.leadMost(feet))).isEqualTo(feet.nullsMost());
        assertThat(Runs.jumperNulls(feet, Runs.jumperMost(feet))).isEqualTo(feet.nullsMost());
    }

    @Test
    void endlessRunNeedsEndlessNulls() {
        assertThat(Runs.leadNulls(RULES, Double.POSITIVE_INFINITY)).isEqualTo(Integer.MAX_VALUE);
    }
}
