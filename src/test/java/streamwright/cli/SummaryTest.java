package streamwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import streamwright.plan.Plan;
import streamwright.yard.Yard;

class SummaryTest {
    private final Yard yard = ShortLane.yard();
    private final Plan plan = ShortLane.plan();

    private String summary(double bound, OptionalDouble hand) {
        return Summary.of(yard, plan.proved(bound, 1, 1), hand);
    }

    @Test
    void saysWhatHangsWhere() {
        assertThat(summary(0, OptionalDouble.empty()))
                .startsWith("CAUTION: ")
                .contains(
                        "\n\nShort Lane: 3 strings with 140 pixels on 2 boards and 1 cable\n",
                        "Cable shed 1: ",
                        "terminator on at B2",
                        "1 carries 100 of 740 (14 %); 2 carries 40 of 740 (5 %)")
                .containsPattern(
                        "B1 +\\| quad +\\| 4, 0 +\\| +6.4 \\| +1 \\| 1000 +\\| +1 \\| +1 \\| 1-100 +\\| gate 1, gate 2")
                .containsPattern(
                        "B2 +\\| quad +\\| 12, 3 +\\| +11.4 \\| +2 \\| 0100 +\\| +2 \\| +2 \\| 1-40 +\\| lantern");
    }

    /** A gap must not look smaller than it is: cost over bound, rounded up. */
    @Test
    void saysHowGoodItIsAsFarAsProved() {
        assertThat(summary(plan.cost(), OptionalDouble.empty())).contains("proved optimal");
        assertThat(summary(plan.cost() / 1.0101, OptionalDouble.empty()))
                .contains("at most 1.1 % above the best possible");
        assertThat(summary(0, OptionalDouble.empty())).contains("nothing is proved");
    }

    @Test
    void saysWhatHandPracticeWouldCost() {
        assertThat(summary(0, OptionalDouble.of(plan.cost() * 2))).contains("(50 %)");
        assertThat(summary(0, OptionalDouble.of(plan.cost()))).contains("no more than this plan");
        assertThat(summary(0, OptionalDouble.empty())).doesNotContain("hand practice");
    }

    /** 100 pixels of 55 mA: 2.75 A at half brightness, 5.5 A in white on a fuse of 5 A; 90 of them 4.95 A. */
    @Test
    void warnsOfATestInWhiteThatWouldBlowAFuse() {
        assertThat(summary(0, OptionalDouble.empty()))
                .contains("highest at B1 port 1: 2.75 A in the show, 5.5 A in full white, on a fuse of 5 A")
                .contains("WARNING", "it would blow 1 fuse, the show keeps to 50 %");
    }

    @Test
    void saysWhatKeepingChannelsCosts() {
        OptionalDouble none = OptionalDouble.empty();
        assertThat(Summary.of(yard, plan, none, OptionalDouble.of(plan.cost() - 12.5)))
                .contains("keeping them costs 12.50: the best plan found that numbers them anew costs ");
        assertThat(Summary.of(yard, plan, none, OptionalDouble.of(plan.cost()))).contains("keeping them costs nothing");
        assertThat(Summary.of(yard, plan, none)).doesNotContain("channels kept");
    }

    /** At full brightness the two strings of the gate draw more than a fuse carries. */
    @Test
    void cautionsComeFirstWhereInjectionsStand(@TempDir Path folder) throws IOException {
        String file = Files.readString(ShortLane.YARD).replace("brightness: 0.5", "brightness: 1");
        Yard bright = ShortLane.yard(Files.writeString(folder.resolve("yard.yaml"), file));
        assertThat(Summary.of(bright, ShortLane.plan(bright), OptionalDouble.empty()))
                .startsWith("CAUTION: ")
                .containsPattern("gate [12] injected at \\d+");
    }
}
