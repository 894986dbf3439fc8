package streamwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** The program in a virtual machine of its own, to which things can be done that would end the tests' own. */
final class Child {
    /** Seconds that anybody waits for it. */
    private static final long LONGEST = 90;

    private final Process process;
    private final Path out;
    private final Path err;

    private Child(Process process, Path out, Path err) {
        this.process = process;
        this.out = out;
        this.err = err;
    }

    /**
     * Starts the program.
     *
     * @param folder for its output, and for temporary files unless the options name another
     * @param options of the virtual machine
     */
    static Child start(Path folder, List<String> options, String... args) throws IOException {
        return start(folder, command(folder, options, args));
    }

    /**
     * Starts it behind other words.
     *
     * @param before a program that becomes the one whose command follows it
     */
    static Child startBehind(List<String> before, Path folder, String... args) throws IOException {
        List<String> command = new ArrayList<>(before);
        command.addAll(command(folder, List.of(), args));
        return start(folder, command);
    }

    /** Starts it from a shell that limits every file to so many bytes, a multiple of 512: the disk is full at once. */
    static Child startOnFullDisk(Path folder, int mostBytes, String... args) throws IOException {
        List<String> command =
                new ArrayList<>(List.of("sh", "-c", "ulimit -f " + mostBytes / 512 + "; exec \"$@\"", ""));
        // its own file of counters would not fit
        command.addAll(command(folder, List.of("-XX:-UsePerfData"), args));
        return start(folder, command);
    }

    private static Child start(Path folder, List<String> command) throws IOException {
        Path out = folder.resolve("out");
        Path err = folder.resolve("err");
        // a crash leaves its report and core in the working folder, which must stay the project's for relative paths
        Process process = new ProcessBuilder(command)
                .redirectOutput(out.toFile())
                .redirectError(err.toFile())
                .start();
        return new Child(process, out, err);
    }

    private static List<String> command(Path folder, List<String> options, String... args) {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:ErrorFile=" + folder.resolve("crash"),
                "-XX:-CreateCoredumpOnCrash",
                "-Djava.io.tmpdir=" + folder));
        command.addAll(options);
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), Main.class.getName()));
        command.addAll(List.of(args));
        return command;
    }

    /** Waits until it has worked for so many seconds, however busy the machine is. */
    void works(double seconds) throws InterruptedException {
        long until = System.nanoTime() + TimeUnit.SECONDS.toNanos(LONGEST);
        while (process.isAlive() && worked() < seconds && System.nanoTime() < until) {
            TimeUnit.MILLISECONDS.sleep(50);
        }
    }

    /** Of all its threads together; where the system does not tell, as if one were always busy. */
    private double worked() {
        ProcessHandle.Info info = process.toHandle().info();
        Duration alive = info.startInstant()
                .map(start -> Duration.between(start, Instant.now()))
                .orElse(Duration.ZERO);
        return info.totalCpuDuration().orElse(alive).toMillis() / 1e3;
    }

    /** Sends a signal by its name, e.g. INT; the program must still run. */
    void signal(String name) throws IOException, InterruptedException {
        assertThat(process.isAlive()).isTrue();
        new ProcessBuilder("kill", "-" + name, String.valueOf(process.pid()))
                .start()
                .waitFor();
    }

    /** What came of it, once it has ended. */
    Ran ended() throws IOException, InterruptedException {
        boolean ended = process.waitFor(LONGEST, TimeUnit.SECONDS);
        process.destroyForcibly();
        assertThat(ended).isTrue();
        return new Ran(process.exitValue(), Files.readString(out), Files.readString(err));
    }
}
