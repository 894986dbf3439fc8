package streamwright.cli;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** Signals, which end a whole virtual machine, while the program searches. */
@EnabledOnOs({OS.LINUX, OS.MAC})
class InterruptTest {
    private static final String TRAIL = "demo/trail/yard.yaml";

    @TempDir
    private Path folder;

    /** @param seconds of work, in which the program has started and found a plan */
    private Ran after(double seconds, String signal, String... args) throws Exception {
        List<String> hearing = Signals.hearing(signal);
        assumeThat(hearing)
                .as("programs started from here ignore %s, as whatever started the tests does", signal)
                .isNotNull();
        Child child = Child.startBehind(requireNonNull(hearing), folder, args);
        child.works(seconds);
        child.signal(signal);
        return child.ended();
    }

    @Test
    void thePoliteKillLeavesTheBestPlanWhole() throws Exception {
        Path plan = Files.writeString(folder.resolve("plan.json"), "old");
        Ran ran = after(8, "TERM", "plan", TRAIL, "-o", plan.toString(), "--time", "300");
        assertThat(ran.status()).isEqualTo(130);
        assertThat(ran.err()).contains("Interrupted: the best plan so far has been written");
        assertThat(ran.out()).contains("The plan is in " + plan);
        assertThat(Ran.of("check", TRAIL, plan.toString()).status()).isZero();
    }

    @Test
    void ctrlCDoesTheSameWithAPlanToStdout() throws Exception {
        Ran ran = after(8, "INT", "plan", TRAIL, "--time", "300", "--quiet");
        assertThat(ran.status()).isEqualTo(130);
        assertThat(Ran.of("check", TRAIL, folder.resolve("out").toString()).status())
                .isZero();
    }

    @Test
    void ctrlCLeavesTheRowsOfAComparisonThatAreThere() throws Exception {
        Path page = folder.resolve("page.html");
        Ran ran = after(
                8, "INT", "compare", TRAIL, "--spares", "0,0.1", "--time", "300", "--csv", "--report", page.toString());
        assertThat(ran.status()).isEqualTo(130);
        assertThat(ran.out().lines()).hasSize(3);
        assertThat(page).content().contains("<html").endsWith("</html>\n");
    }

    @Test
    void ctrlCLeavesTheBestRepairWhole() throws Exception {
        Path plan = folder.resolve("plan.json");
        String yard = "demo/home/next-season.yaml";
        Ran ran = after(
                5, "INT", "rebalance", yard, "--from", "demo/home/plan.json", "-o", plan.toString(), "--time", "300");
        assertThat(ran.status()).isEqualTo(130);
        assertThat(ran.err()).contains("Interrupted: the best repair so far has been written whole");
        assertThat(Ran.of("check", yard, plan.toString()).status()).isZero();
    }

    /** Nothing can be done after these; what the file held before is still there, and nothing beside it. */
    @Test
    void aCrashOfTheSolverLeavesTheOldFile() throws Exception {
        Path place = Files.createDirectory(folder.resolve("place"));
        Path plan = Files.writeString(place.resolve("plan.json"), "old");
        // what a failed assertion of native code does
        Ran ran = after(5, "ABRT", "plan", TRAIL, "-o", plan.toString(), "--time", "300", "--quiet");
        assertThat(ran.status()).isEqualTo(128 + 6);
        assertThat(plan).hasContent("old");
        assertThat(place.toFile().list()).containsExactly("plan.json");
    }
}
