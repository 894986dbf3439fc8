package streamwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class LocateCommandTest {
    private static Ran locate(String arguments) {
        String[] words = ("locate demo/home/yard.yaml demo/home/plan.json " + arguments).split(" ", -1);
        for (int i = 0; i < words.length; i++) {
            words[i] = words[i].replace('_', ' ');
        }
        return Ran.of(words);
    }

    /** The kept plan of the home: garage wreath is the only string on port 2 of B1, from channel 907 on. */
    @ParameterizedTest
    @CsvSource({
        "--channel 912",
        "--universe 2 --slot 402",
        "--prop garage_wreath --pixel 2",
        "--board B1 --port 2 --pixel 2",
        "--jack 1 --stream 2 --pixel 2",
        "--controller garage --jack 1 --stream 2 --pixel 2",
    })
    void anyAddressLeadsToAllOthers(String arguments) {
        Ran ran = locate(arguments);
        assertThat(ran.status()).isZero();
        assertThat(ran.out())
                .contains(
                        "garage 1 stream 2, pixel 2 (ws2811)",
                        "channels  910-912 of garage",
                        "universe  2, slot 400",
                        "B1 (ID 1), port 2, pixel 2 from its start pixel on",
                        "garage wreath, pixel 2",
                        "to be seen");
    }

    @Test
    void aSymptomLeadsToTheSwitches() {
        String out = locate("--prop garage_wreath --pixel 2").out();
        assertThat(out).contains("same picture twice", "window 4", "ID 2", "0100", "IDs 0, 4-15", "dark");
    }

    @Test
    void jsonIsForPrograms() {
        JsonNode spots =
                JsonMapper.shared().readTree(locate("--channel 912 --json").out());
        assertThat(spots.size()).isEqualTo(1);
        JsonNode spot = spots.get(0);
        assertThat(spot.get("channel").asInt()).isEqualTo(910);
        assertThat(spot.get("universe").asInt()).isEqualTo(2);
        JsonNode shown = spot.get("shown").get(0);
        assertThat(shown.get("board").asString()).isEqualTo("B1");
        assertThat(shown.get("prop").asString()).isEqualTo("garage wreath");
        assertThat(shown.get("ifSetTo").get(0).get("sees").asString()).isEqualTo("same picture twice");
    }

    @Test
    void whatNoStreamCarriesIsNowhere() {
        assertThat(locate("--channel 60000").out()).contains("No stream of this plan carries that.");
        assertThat(locate("--channel 60000 --json").out().strip()).isEqualTo("[ ]");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--pixel 3|Give one address",
                "--channel 3 --prop gable --pixel 1|Give one address",
                "--universe 3|Add --slot",
                "--prop gable --pixel 1|which? Add --string",
                "--prop gabel --pixel 1|Did you mean 'gable'?",
                "--prop gable --string 3 --pixel 1|there is no string 3",
                "--prop gable --string 1 --pixel 51|there is no pixel 51",
                "--prop gable --string 1|Add --pixel",
                "--board B99 --port 1 --pixel 1|There is no board 'B99'",
                "--channel 3 --controller shed|There is no controller 'shed'",
                "--board B2 --port 9 --pixel 1|B2 has no port 9: its ports are 1 to 4.",
                "--board B2 --port 0 --pixel 1|B2 has no port 0: its ports are 1 to 4.",
                "--board B2 --port 1 --pixel 0|There is no pixel 0: they count from 1.",
                "--jack 5 --stream 1 --pixel 1|garage has no jack 5: its jacks are 1 to 4.",
                "--jack 1 --stream 5 --pixel 1|garage jack 1 has no stream 5: its streams are 1 to 4.",
                "--channel 0|garage has no channel 0: its channels are 1 to 65,535.",
                "--channel 65536|garage has no channel 65536: its channels are 1 to 65,535.",
                "--universe 1 --slot 511|A universe of this yard has no slot 511: its slots are 1 to 510.",
            })
    void aQuestionThatIsNotCompleteIsToldWhatIsMissing(String arguments, String told) {
        Ran ran = locate(arguments);
        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).contains(told);
    }

    /** Where the kept plan of the festival has an output, and the panel's second quarter, of 512 pixels each. */
    @Test
    void outputsAndPanelsAreFoundByTheirPropToo() throws IOException {
        String yard = "demo/festival/yard.yaml";
        String plan = "demo/festival/plan.json";
        JsonNode boards =
                JsonMapper.shared().readTree(Files.readString(Path.of(plan))).get("boards");
        String floods = "";
        String board = "";
        String quarter = "";
        for (JsonNode each : boards) {
            for (JsonNode line : each.path("outputs").path("lines")) {
                if (line.get("prop").asString().equals("crane floods")
                        && line.get("number").asInt() == 1) {
                    board = each.get("id").asString();
                    floods = "%s (ID %d), output %d"
                            .formatted(
                                    board,
                                    each.get("boardId").asInt(),
                                    line.get("output").asInt());
                }
            }
            for (JsonNode panel : each.path("panels")) {
                JsonNode part = panel.get("parts").get(1);
                quarter = "%s %d stream %d, pixel %d "
                        .formatted(
                                each.get("controller").asString(),
                                each.get("jack").asInt(),
                                part.get("stream").asInt(),
                                part.get("startPixel").asInt());
            }
        }
        Ran mains = Ran.of("locate", yard, plan, "--prop", "crane floods", "--string", "1");
        assertThat(mains.status()).isZero();
        assertThat(mains.out())
                .startsWith("CAUTION: ")
                .contains(floods + ", pixel 1 from its start pixel on\nstring    mains output of crane floods 1");
        Ran panel = Ran.of("locate", yard, plan, "--prop", "news wall", "--pixel", "513");
        assertThat(panel.status()).isZero();
        assertThat(panel.out()).doesNotContain("CAUTION").contains(quarter, "news wall, pixel 513 in row order");
        Ran none = Ran.of("locate", yard, plan, "--board", board, "--port", "1", "--pixel", "1");
        assertThat(none.status()).isEqualTo(2);
        assertThat(none.err())
                .contains(board + " is a ", "has no port for pixel strings; find what is on it by --prop");
        Ran which = Ran.of("locate", yard, plan, "--prop", "crane floods");
        assertThat(which.status()).isEqualTo(2);
        assertThat(which.err()).contains("3 outputs: which? Add --string");
    }
}
