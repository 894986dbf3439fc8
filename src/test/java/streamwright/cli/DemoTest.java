package streamwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The demo's yards are read without a doubt, and the plans beside them are clean. */
class DemoTest {
    @ParameterizedTest
    @CsvSource({
        "demo/home/yard.yaml, demo/home/plan.json",
        "demo/trail/yard.yaml, demo/trail/plan.json",
        "demo/festival/yard.yaml, demo/festival/plan.json",
        "demo/kept/yard.yaml, demo/kept/plan.json",
        "demo/props.csv, demo/props-plan.json",
    })
    void demoPlansAreClean(String yard, String plan) {
        Ran ran = Ran.of("check", yard, plan);
        assertThat(ran.out()).startsWith("No rule is broken.");
        assertThat(ran.status()).isZero();
        assertThat(ran.err()).isEmpty();
    }
}
