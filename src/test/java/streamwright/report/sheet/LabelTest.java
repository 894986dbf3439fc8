package streamwright.report.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class LabelTest {
    @Test
    void aShortLabelIsOneLineAndBeginsWhereOneStands() {
        assertThat(Label.atFrom("B7-3", "gable 1", "4 m")).isEqualTo("B7-3 > gable 1, 4 m");
        assertThat(Label.atTo("B7-3", "gable 1", "4 m")).isEqualTo("gable 1 < B7-3, 4 m");
    }

    @Test
    void aLongerOneBreaksBetweenWordsAndInsideOnlyWhereAWordIsTooLong() {
        assertThat(Label.atFrom("B7-3", "north edge 12", "4.3 m")).isEqualTo("B7-3 > north edge\n12, 4.3 m");
        assertThat(Label.atFrom("B7-3", "small 13", "5.6 m")).isEqualTo("B7-3 > small 13,\n5.6 m");
        String endless = "a".repeat(64);
        assertThat(Label.atFrom("B7-3", endless, "4 m").split("\n", -1))
                .allMatch(line -> line.length() <= Label.WIDEST)
                .contains("a".repeat(20));
    }
}
