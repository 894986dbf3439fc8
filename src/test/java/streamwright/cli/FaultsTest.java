package streamwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The program where the machine fails it: no room, no memory, no place to write. */
@EnabledOnOs(OS.LINUX)
class FaultsTest {
    private static final String HOME = "demo/home/yard.yaml";
    private static final String TRAIL = "demo/trail/yard.yaml";
    private static final String NOT_FOUND = "/nonexistent/folder";

    /** Holds the files of the program's own: output and what is unpacked. */
    @TempDir
    private Path folder;

    private Path place;
    private Path plan;

    @BeforeEach
    void anOldPlan() throws Exception {
        place = Files.createDirectory(folder.resolve("place"));
        plan = Files.writeString(place.resolve("plan.json"), "old");
    }

    private Ran run(String option, String... args) throws Exception {
        return Child.start(folder, option.isEmpty() ? List.of() : List.of(option), args)
                .ended();
    }

    private void theOldFileStays() {
        assertThat(plan).hasContent("old");
        assertThat(place.toFile().list()).containsExactly("plan.json");
    }

    private void aPlanIsThere(String yard) {
        assertThat(Ran.of("check", yard, plan.toString()).status()).isZero();
        assertThat(place.toFile().list()).containsExactly("plan.json");
    }

    @Test
    void withoutRoomForTheSolverTheSearchAloneGivesThePlan() throws Exception {
        Ran ran = run("-Djava.io.tmpdir=" + NOT_FOUND, "plan", HOME, "-o", plan.toString(), "--time", "2", "--quiet");
        assertThat(ran.status()).isZero();
        assertThat(ran.err())
                .contains("The solver could not be started", NOT_FOUND, "there is no such folder")
                .contains("java -Djava.io.tmpdir=FOLDER", "The best plan from before that holds all the same")
                .doesNotContain("\tat ");
        aPlanIsThere(HOME);
    }

    @Test
    void aRepairSaysThatItNeedsTheSolver() throws Exception {
        Ran ran = run(
                "-Djava.io.tmpdir=" + NOT_FOUND,
                "rebalance",
                "demo/home/next-season.yaml",
                "--from",
                "demo/home/plan.json",
                "-o",
                plan.toString());
        assertThat(ran.status()).isEqualTo(3);
        assertThat(ran.err())
                .contains("The solver could not be started", NOT_FOUND)
                .doesNotContain("\tat ");
        theOldFileStays();
    }

    /** The search takes little memory and the proof much: at this size the first has ended when the second begins. */
    @Test
    void outOfMemoryInTheProofCostsNobodyThePlan() throws Exception {
        Ran ran = run("-Xmx16m", "plan", TRAIL, "-o", plan.toString(), "--time", "4", "--quiet");
        assertThat(ran.err())
                .contains("The memory that Java may use here", "is not enough", "java -Xmx2g")
                .contains("The best plan from before that holds all the same")
                .doesNotContain("\tat ");
        assertThat(ran.status()).isZero();
        aPlanIsThere(TRAIL);
    }

    @Test
    void outOfMemoryBeforeAnyPlanLeavesTheOldFile() throws Exception {
        StringBuilder rows = new StringBuilder("id,pixels,x,y\n");
        for (int i = 0; i < 100_000; i++) {
            rows.append("p").append(i).append(",50,").append(i).append(",0\n");
        }
        Path props = Files.writeString(folder.resolve("props.csv"), rows);
        Ran ran = run("-Xmx24m", "plan", props.toString(), "-o", plan.toString(), "--time", "4");
        assertThat(ran.status()).isEqualTo(3);
        assertThat(ran.err())
                .contains("The memory that Java may use here", "java -Xmx2g")
                .doesNotContain("\tat ");
        theOldFileStays();
    }

    /** Room for one byte, so that all looks well before the search, but neither for the plan nor for the solver. */
    @Test
    void aDiskThatFillsUpLeavesTheOldFile() throws Exception {
        Ran ran = Child.startOnFullDisk(folder, 8 << 10, "plan", HOME, "-o", plan.toString(), "--time", "2", "--quiet")
                .ended();
        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.err())
                .contains(plan + " could not be written (File too large)", "as it was", "make room, then plan again");
        theOldFileStays();
    }

    @Test
    void aPlanThatFindsNoRoomIsPutElsewhere() throws Exception {
        Ran ran = run("", "plan", HOME, "-o", "/dev/full", "--time", "2", "--quiet");
        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.err()).contains("/dev/full could not be written (No space left on device)");
        Matcher elsewhere = Pattern.compile("The plan is in (\\S+) instead").matcher(ran.err());
        assertThat(elsewhere.find()).isTrue();
        assertThat(elsewhere.group(1)).startsWith(folder.toString());
        assertThat(Ran.of("check", HOME, elsewhere.group(1)).status()).isZero();
    }

    /** Told before the search, not after it: with this time, the test would end in a timeout. */
    @Test
    void aFolderThatTakesNoFilesIsToldAtOnce() throws Exception {
        for (String file : List.of("/proc/plan.json", plan + "/plan.json", folder + "/missing/plan.json")) {
            for (String option : List.of("-o", "--report")) {
                Ran ran = Ran.of("plan", HOME, option, file, "--time", "3000");
                assertThat(ran.status()).isEqualTo(2);
                assertThat(ran.out()).isEmpty();
                assertThat(ran.err()).containsAnyOf("/proc/plan.json cannot be written", "There is no folder");
            }
            Ran compared = Ran.of("compare", HOME, "--boards", "9..10", "--report", file, "--time", "3000");
            assertThat(compared.status()).isEqualTo(2);
        }
        theOldFileStays();
    }

    @Test
    void sheetsThatFindNoRoomSayWhere() {
        Ran ran = Ran.of("sheets", HOME, "demo/home/plan.json", "-d", "/proc/sheets");
        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.err()).contains("/proc/sheets could not be written into", "name another after -d");
    }

    /** Runs the program from a shell; {@code "$@"} stands for it in the script. */
    private int shell(String script, String... args) throws Exception {
        List<String> command = new ArrayList<>(List.of("sh", "-c", script, ""));
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), Main.class.getName()));
        command.addAll(List.of(args));
        return new ProcessBuilder(command)
                .redirectError(folder.resolve("err").toFile())
                .start()
                .waitFor();
    }

    @Test
    void aFullStdoutIsNoSuccess() throws Exception {
        assertThat(shell("exec \"$@\" > /dev/full", "check", HOME, "demo/home/plan.json"))
                .isEqualTo(2);
        assertThat(folder.resolve("err")).content().contains("The output could not be written.");
    }

    /** A pipe that nobody reads: the reader has gone before the first word comes. */
    @Test
    void aReaderThatHasSeenEnoughIsNoFault() throws Exception {
        String script = "{ \"$@\"; echo $? > " + folder.resolve("status") + "; } | true";
        shell(script, "schema", "yard");
        assertThat(folder.resolve("status")).hasContent("141\n");
        assertThat(folder.resolve("err")).isEmptyFile();
        Path hand = Files.writeString(
                folder.resolve("wrong.json"),
                Files.readString(Path.of("demo/home/plan.json"))
                        .replaceFirst("\"startPixel\": 1,", "\"startPixel\": 2,"));
        shell(script, "check", HOME, hand.toString());
        assertThat(folder.resolve("status")).hasContent("1\n");
    }
}
