package streamwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The program as a process of its own, since a signal ends a whole virtual machine. */
@EnabledOnOs({OS.LINUX, OS.MAC})
class InterruptTest {
    private static final Path TRAIL = Path.of("demo/trail/yard.yaml");

    @TempDir
    private Path folder;

    private Process start(String... args) throws IOException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Djava.io.tmpdir=" + folder,
                "-cp",
                System.getProperty("java.class.path"),
                Main.class.getName()));
        command.addAll(List.of(args));
        return new ProcessBuilder(command)
                .redirectOutput(out())
                .redirectError(err())
                .start();
    }

    private File out() {
        return folder.resolve("out").toFile();
    }

    private File err() {
        return folder.resolve("err").toFile();
    }

    private void waitFor(Process process, int status) throws InterruptedException {
        assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
        assertThat(process.exitValue()).isEqualTo(status);
    }

    /** destroy() sends SIGTERM here. */
    @Test
    void thePoliteKillLeavesTheBestPlanWhole() throws Exception {
        Path plan = folder.resolve("plan.json");
        Process process = start("plan", TRAIL.toString(), "-o", plan.toString(), "--time", "300");
        TimeUnit.SECONDS.sleep(8);
        assertThat(process.isAlive()).isTrue();
        process.destroy();
        waitFor(process, 130);
        assertThat(Files.readString(err().toPath())).contains("Interrupted: the best plan so far has been written");
        assertThat(Files.readString(out().toPath())).contains("The plan is in " + plan);
        assertThat(Ran.of("check", TRAIL.toString(), plan.toString()).status()).isZero();
    }

    @Test
    void ctrlCDoesTheSameWithAPlanToStdout() throws Exception {
        Process process = start("plan", TRAIL.toString(), "--time", "300", "--quiet");
        TimeUnit.SECONDS.sleep(8);
        new ProcessBuilder("kill", "-INT", String.valueOf(process.pid()))
                .start()
                .waitFor();
        waitFor(process, 130);
        assertThat(Ran.of("check", TRAIL.toString(), out().toString()).status()).isZero();
    }
}
