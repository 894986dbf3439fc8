package streamwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CheckCommandTest {
    @TempDir
    private Path folder;

    private static Ran check(Path plan, String... more) {
        String[] args = new String[3 + more.length];
        args[0] = "check";
        args[1] = ShortLane.YARD.toString();
        args[2] = plan.toString();
        System.arraycopy(more, 0, args, 3, more.length);
        return Ran.of(args);
    }

    @Test
    void aCleanPlanIsCalledClean() {
        Ran ran = check(ShortLane.planIn(folder));
        assertThat(ran.status()).isZero();
        assertThat(ran.out())
                .startsWith("No rule is broken.\n")
                .contains("2 boards, 1 cable, 3 strings, 140 pixels, 0 null pixels");
        assertThat(ran.err()).isEmpty();
    }

    @Test
    void aBrokenRuleIsNamedWithFigureAndLimit() {
        Ran ran = check(ShortLane.changedIn(folder, "\"switches\": \"0100\"", "\"switches\": \"1100\""));
        assertThat(ran.status()).isEqualTo(1);
        assertThat(ran.out()).startsWith("1 rule is broken:").contains("id-switches", "B2", "Computed anew:");
        assertThat(ran.err()).isEmpty();
    }

    /** A port that is said to draw more than it does is a finding in amps. */
    @Test
    void cautionsComeBeforeAmps() {
        Ran ran = check(ShortLane.changedIn(folder, "\"amps\": 1.1", "\"amps\": 9.2"));
        assertThat(ran.status()).isEqualTo(1);
        assertThat(ran.out()).startsWith("CAUTION: ");
    }

    @Test
    void jsonTellsTheSame() {
        Ran clean = check(ShortLane.planIn(folder), "--json");
        assertThat(clean.status()).isZero();
        assertThat(clean.out().replaceAll("\\s+", ""))
                .startsWith("{\"clean\":true,\"findings\":[],\"totals\":{\"boards\":2,\"cables\":1,\"strings\":3,");
        Ran broken = check(ShortLane.changedIn(folder, "\"terminator\": true", "\"terminator\": false"), "--json");
        assertThat(broken.status()).isEqualTo(1);
        assertThat(broken.out()).contains("\"rule\" : \"terminator-last\"", "\"clean\" : false", "\"cost\" : ");
    }

    @Test
    void aFileThatIsNoPlanIsTheFilesFault() throws IOException {
        Path plan = folder.resolve("plan.json");
        Files.writeString(plan, "{\"format\": 1, \"yrad\": \"x\"}");
        Ran ran = check(plan);
        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).contains("plan.json:1:", "yrad", "did you mean yard?");
    }

    @Test
    void aMissingArgumentIsNamed() {
        Ran ran = Ran.of("check", ShortLane.YARD.toString());
        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.err()).contains("PLAN", "streamwright check --help");
    }
}
