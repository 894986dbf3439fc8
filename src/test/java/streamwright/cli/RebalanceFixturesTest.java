package streamwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import streamwright.check.Audit;
import streamwright.file.PlanFile;
import streamwright.file.Read;
import streamwright.file.YardFile;
import streamwright.plan.Board;
import streamwright.plan.Change;
import streamwright.plan.Plan;
import streamwright.yard.Yard;

/** Repairs of the demo's festival, which has mains outputs and a panel. */
class RebalanceFixturesTest {
    private static final Path PLAN = Path.of("demo", "festival", "plan.json");
    private static final Path YARD = Path.of("demo", "festival", "yard.yaml");

    @TempDir
    private Path folder;

    private Plan next(Path yard, String... more) {
        Path file = folder.resolve("next.json");
        List<String> first = List.of(
                "rebalance",
                yard.toString(),
                "--from",
                PLAN.toString(),
                "-o",
                file.toString(),
                "--time",
                "6",
                "--quiet");
        Ran ran = Ran.of(Stream.concat(first.stream(), Stream.of(more)).toArray(String[]::new));
        assertThat(ran.status()).as(ran.err()).isZero();
        Plan plan = read(file);
        assertThat(Audit.of(((Read.Good<Yard>) YardFile.read(yard)).value(), plan)
                        .list())
                .isEmpty();
        return plan;
    }

    private static Plan read(Path file) {
        return ((Read.Good<Plan>) PlanFile.read(file)).value();
    }

    /** A block of 16 outputs has room for four more, so nothing is needed but their wires. */
    @Test
    void aNewFloodIsWiredToABoardAndNothingElseIsTouched() throws IOException {
        Path yard = folder.resolve("yard.yaml");
        String props = "props:\n  - {id: late flood, outputs: 2, at: [22, 9]}\n";
        Files.writeString(yard, Files.readString(YARD).replaceFirst("props:\n", props));
        Plan next = next(yard);
        assertThat(Objects.requireNonNull(next.workBound())).isGreaterThanOrEqualTo(15);
        assertThat(Objects.requireNonNull(next.work())).isGreaterThanOrEqualTo(next.workBound());
        assertThat(next.changes())
                .filteredOn(change -> change.minutes() > 0)
                .extracting(Change::text)
                .anyMatch(text -> text.startsWith("Wire late flood to outputs "));
        assertThat(next.boards().stream().map(Board::id))
                .containsAll(read(PLAN).boards().stream().map(Board::id).toList());
    }

    /** One like it is hung in its place, for the minutes of a board; nothing is wired anew. */
    @Test
    void aDeadBoardOfOutputsIsReplaced() {
        Plan old = read(PLAN);
        Board dead = old.boards().stream()
                .filter(board -> board.outputs() != null)
                .findFirst()
                .orElseThrow();
        Plan next = next(YARD, "--dead", dead.id());
        assertThat(next.changes())
                .extracting(Change::text)
                .singleElement()
                .asString()
                .startsWith("Take the dead board " + dead.id() + " off");
        assertThat(next.work()).isEqualTo(20);
        assertThat(next.workBound()).isEqualTo(20);
    }
}
