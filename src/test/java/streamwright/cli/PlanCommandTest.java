package streamwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class PlanCommandTest {
    private static final String YARD = ShortLane.YARD.toString();

    @TempDir
    private Path folder;

    @Test
    void planIntoAFileAndSummaryToStdout() {
        Path plan = folder.resolve("plan.json");
        Ran ran = Ran.of("plan", YARD, "-o", plan.toString(), "--time", "5", "--seed", "7");
        assertThat(ran.status()).isZero();
        assertThat(ran.out())
                .contains(
                        "Short Lane: 3 strings with 140 pixels on",
                        "  cost ",
                        "board | model",
                        "The plan is in " + plan);
        // no terminal, no progress
        assertThat(ran.err().lines().filter(line -> !line.startsWith("Warning: ")))
                .isEmpty();
        assertThat(plan).content().contains("\"yard\": \"Short Lane\"", "\"seed\": 7");
        assertThat(Ran.of("check", YARD, plan.toString()).status()).isZero();
    }

    @Test
    void planToStdoutAndSummaryToStderr() throws IOException {
        Ran ran = Ran.of("plan", YARD, "--effort", "1");
        assertThat(ran.status()).isZero();
        assertThat(ran.out()).startsWith("{\n");
        assertThat(ran.err()).contains("Short Lane: 3 strings");
        Path plan = Files.writeString(folder.resolve("plan.json"), ran.out());
        assertThat(Ran.of("check", YARD, plan.toString()).status()).isZero();
        assertThat(Ran.of("plan", YARD, "--effort", "1", "--quiet").err()).isEmpty();
    }

    /** A script that names a file for the plan wants nothing on its screen. */
    @Test
    void aQuietRunIntoAFileSaysNothing() {
        Path plan = folder.resolve("plan.json");
        Ran ran = Ran.of("plan", YARD, "-o", plan.toString(), "--effort", "1", "--quiet");
        assertThat(ran.status()).isZero();
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).isEmpty();
        assertThat(Ran.of("check", YARD, plan.toString()).status()).isZero();
    }

    @Test
    void effortGivesTheSamePlanOnEveryRun() {
        String first = Ran.of("plan", YARD, "--effort", "1", "--quiet").out();
        String again = Ran.of("plan", YARD, "--effort", "1", "--quiet").out();
        assertThat(again).isEqualTo(first);
        assertThat(first).contains("\"seconds\": 0,");
    }

    @Test
    void aPropListAloneIsAYardWithItsControllerWhereOneSays() throws IOException {
        Path props = Files.writeString(folder.resolve("props.csv"), "id,pixels,x,y\nlamp,20,3,4\n");
        Ran ran = Ran.of("plan", props.toString(), "--controller-at", "3,0", "--effort", "1", "--quiet");
        assertThat(ran.status()).isZero();
        // slack * 4 m + two loops of 1 m
        assertThat(ran.out()).contains("\"length\": 6.4,");
    }

    /** 800 pixels at 40 frames a second: 740 is what a stream may carry. */
    @Test
    void aYardThatCannotWorkSaysWhyAndWritesNothing() throws IOException {
        Path yard = folder.resolve("yard.yaml");
        Files.writeString(yard, Files.readString(ShortLane.YARD).replace("pixels: 40", "pixels: 800"));
        Path plan = folder.resolve("plan.json");
        Ran ran = Ran.of("plan", yard.toString(), "-o", plan.toString());
        assertThat(ran.status()).isEqualTo(1);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).contains("cannot be laid out", "stream-limit", "lantern", "800", "740");
        assertThat(ran.err())
                .contains("These cannot all hold:", "frameRate 40", "prop lantern", "Leave out any one of them")
                .contains("What would help", "frameRate 37 instead of 40", "without prop lantern");
        assertThat(plan).doesNotExist();
    }

    /** No board can hang nearer than 6.4 m of cable from the shed. */
    @Test
    void aYardThatCannotWorkIsToldAsJsonToo() throws IOException {
        Path yard = folder.resolve("yard.yaml");
        Files.writeString(yard, Files.readString(ShortLane.YARD) + "rules: {hopMost: 2}\n");
        Ran ran = Ran.of("plan", yard.toString(), "--json", "--quiet");
        assertThat(ran.status()).isEqualTo(1);
        assertThat(ran.err()).isEmpty();
        JsonNode told = JsonMapper.shared().readTree(ran.out());
        assertThat(told.get("status").asString()).isEqualTo("impossible");
        JsonNode first = told.get("arithmetic").get(0);
        assertThat(first.get("rule").asString()).isEqualTo("hop-length");
        assertThat(first.get("limit").asDouble()).isEqualTo(2);
        assertThat(first.get("figure").asDouble()).isGreaterThanOrEqualTo(6.4);
        assertThat(first.get("text").asString()).contains("a hop is at most 2.00 m long");
        JsonNode clash = told.get("clash");
        assertThat(clash.get("smallest").asBoolean()).isTrue();
        assertThat(clash.get("limits").toString()).contains("rules.hopMost 2 m");
        assertThat(told.get("waysOut")).isNotEmpty().allSatisfy(way -> {
            assertThat(way.get("cost").asDouble()).isPositive();
            assertThat(way.get("changes")).isNotEmpty();
        });
    }

    @Test
    void everyProblemOfAYardFileIsTold() throws IOException {
        Path yard = folder.resolve("yard.yaml");
        Files.writeString(
                yard,
                Files.readString(ShortLane.YARD)
                        .replace("pixels: 40", "pixels: -4")
                        .replace("quad", "quda"));
        Ran ran = Ran.of("plan", yard.toString());
        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).contains("yard.yaml:6:", "quda", "quad", "yard.yaml:9:", "-4");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--time|0|--time 60",
                "--time|soon|soon",
                "--effort|0|--effort 3",
                "--workers|0|--workers 2",
                "--controller-at|3,4|prop list alone",
                "--tmie|5|Did you mean '--time'?",
            })
    void wrongOptionsAreToldWithWhatWouldBeRight(String option, String value, String told) {
        Ran ran = Ran.of("plan", YARD, option, value);
        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).contains(told);
    }

    @Test
    void timeAndEffortTogetherAreRefused() {
        assertThat(Ran.of("plan", YARD, "--time", "5", "--effort", "1").err()).contains("not both");
    }

    @ParameterizedTest
    @ValueSource(strings = {"3", "3,4,5,6", "a,b", "3;4", "NaN,1"})
    void aControllerPlaceIsTwoNumbers(String place) throws IOException {
        Path props = Files.writeString(folder.resolve("props.csv"), "id,pixels,x,y\nlamp,20,3,4\n");
        Ran ran = Ran.of("plan", props.toString(), "--controller-at", place);
        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.err()).contains("--controller-at 22,13.5");
    }

    @Test
    void aPlaceThatCannotBeWrittenIsToldBeforePlanning() {
        assertThat(Ran.of("plan", YARD, "-o", folder.resolve("no/plan.json").toString())
                        .err())
                .contains("There is no folder");
        assertThat(Ran.of("plan", YARD, "-o", folder.toString()).err()).contains("is a folder");
        assertThat(Ran.of("plan", YARD, "-o", YARD).err()).contains("would replace the yard itself");
    }
}
