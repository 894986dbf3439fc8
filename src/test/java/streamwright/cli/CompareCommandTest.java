package streamwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class CompareCommandTest {
    @TempDir
    private Path folder;

    private static Ran compare(String... more) {
        String[] args = new String[2 + more.length];
        args[0] = "compare";
        args[1] = ShortLane.YARD.toString();
        System.arraycopy(more, 0, args, 2, more.length);
        return Ran.of(args);
    }

    private static List<JsonNode> rows(String... more) {
        Ran ran = compare(more);
        assertThat(ran.status()).as(ran.err()).isZero();
        JsonNode list = JsonMapper.shared().readTree(ran.out());
        return StreamSupport.stream(list.spliterator(), false).toList();
    }

    /** The lane has three strings, and the lantern is out of reach of the gate's board. */
    @Test
    void boardsAreExactAndImpossibleRowsAreNoFailure() {
        List<JsonNode> rows = rows("--boards", "2..4", "--time", "12", "--json", "--quiet");
        assertThat(rows).hasSize(3);
        assertThat(rows.get(0).get("boards").asInt()).isEqualTo(2);
        assertThat(rows.get(0).get("status").asString()).isIn("optimal", "feasible");
        assertThat(rows.get(0).get("pareto").asBoolean()).isTrue();
        assertThat(rows.get(1).get("boards").asInt()).isEqualTo(3);
        assertThat(rows.get(1).get("cost").asDouble())
                .isGreaterThan(rows.get(0).get("cost").asDouble());
        assertThat(rows.get(1).get("bound").asDouble())
                .isLessThanOrEqualTo(rows.get(1).get("cost").asDouble());
        // three strings cannot be on four boards, each of which carries one
        assertThat(rows.get(2).has("cost")).isFalse();
        assertThat(rows.get(2).get("status").asString()).isIn("impossible", "unknown");
    }

    /** A slower yard's plans are all those of a faster one, and more. */
    @Test
    void slowerIsNeverDearer() {
        List<JsonNode> rows = rows("--frame-rates", "60,30,40", "--time", "12", "--json", "--quiet");
        assertThat(rows).extracting(row -> row.get("frameRate").asDouble()).containsExactly(60.0, 30.0, 40.0);
        double slow = rows.get(1).get("cost").asDouble();
        assertThat(slow).isLessThanOrEqualTo(rows.get(2).get("cost").asDouble() + 1e-9);
        assertThat(rows.get(2).get("cost").asDouble())
                .isLessThanOrEqualTo(rows.get(0).get("cost").asDouble() + 1e-9);
    }

    @Test
    void aFrameRateThatNoStreamHoldsIsExplained() {
        List<JsonNode> rows = rows("--frame-rates", "40,900", "--time", "4", "--json", "--quiet");
        assertThat(rows.get(1).get("status").asString()).isEqualTo("impossible");
        assertThat(rows.get(1).get("breaks").get("rule").asString()).isEqualTo("stream-limit");
        assertThat(compare("--frame-rates", "40,900", "--time", "4").out())
                .contains("The first row that cannot be is 900 frames a second: ");
    }

    @Test
    void tablesPagesAndSpreadsheets() throws IOException {
        Path page = folder.resolve("what-if.html");
        Ran ran = compare("--boards", "2,3", "--time", "4", "--csv", "--report", page.toString());
        assertThat(ran.status()).isZero();
        assertThat(ran.out().lines()).hasSize(3);
        assertThat(ran.out()).startsWith("boards,frameRate,spare,models,status,cost,bound,gap,");
        String html = Files.readString(page);
        assertThat(html).contains("<svg", "Cost against boards", "Cable against boards", "<table");
        assertThat(html).contains("Content-Security-Policy").doesNotContain("http:", "https:", "src=");
    }

    @Test
    void modelsAreMixedWithAPlus() {
        List<JsonNode> rows = rows("--models", "quad,quad+solo", "--time", "4", "--json", "--quiet");
        assertThat(rows).extracting(row -> row.get("models").asString()).containsExactly("quad", "quad+solo");
        assertThat(rows.get(1).get("cost").asDouble())
                .isLessThanOrEqualTo(rows.get(0).get("cost").asDouble() + 1e-9);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--time 5|Compare what?",
                "--boards 5..3|write the smaller number first",
                "--boards none|must be whole numbers from 1",
                "--frame-rates 0|must be numbers above 0 to 1000",
                "--spares 2|must be numbers from 0 to 1",
                "--models quod|Did you mean 'quad'?",
                "--boards 2 --json --csv|not both",
                "--boards 1..1000|at most 400",
            })
    void whatIsWrongIsToldWithWhatWouldBeRight(String args, String message) {
        Ran ran = compare(args.split(" "));
        assertThat(ran.status()).isEqualTo(Exit.WRONG);
        assertThat(ran.err()).contains(message);
    }
}
