package streamwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SheetsCommandTest {
    private static final String YARD = ShortLane.YARD.toString();

    @TempDir
    private Path folder;

    @Test
    void writesEverySheetIntoAFolderThatItMakes() throws IOException {
        Path plan = ShortLane.planIn(folder);
        Path into = folder.resolve("a/b");
        Ran ran = Ran.of("sheets", YARD, plan.toString(), "-d", into.toString());
        assertThat(ran.status()).isZero();
        assertThat(names(into))
                .containsExactlyInAnyOrder(
                        "plan.html",
                        "boards.csv",
                        "channels.csv",
                        "pulls.csv",
                        "shopping.csv",
                        "commissioning.csv",
                        "plan.xlsx");
        assertThat(ran.out().lines()).hasSize(7).allMatch(line -> line.startsWith(into.toString()));
        assertThat(into.resolve("plan.html"))
                .content()
                .startsWith("<!doctype html>")
                .contains("Short Lane");
        assertThat(into.resolve("boards.csv"))
                .content()
                .startsWith("board,model,")
                .contains("\r\nB1,", "\r\nB2,");
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> folder.relativize(file).toString()).toList();
        }
    }

    @Test
    void onlyPicks() throws IOException {
        Path plan = ShortLane.planIn(folder);
        Path into = folder.resolve("some");
        Ran ran = Ran.of("sheets", YARD, plan.toString(), "-d", into.toString(), "--only", "pulls,page");
        assertThat(ran.status()).isZero();
        assertThat(names(into)).containsExactlyInAnyOrder("plan.html", "pulls.csv");
    }

    @Test
    void aMistypedSheetIsGuessed() {
        Path plan = ShortLane.planIn(folder);
        Ran ran = Ran.of("sheets", YARD, plan.toString(), "-d", folder.toString(), "--only", "pull");
        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.err()).contains("There is no sheet 'pull'. Did you mean 'pulls'?");
    }

    @Test
    void aPlanOfAnotherYardIsRefused() {
        Ran ran = Ran.of(
                "sheets",
                YARD,
                "demo/home/plan.json",
                "-d",
                folder.resolve("no").toString());
        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.err()).contains("is no plan of this yard", "which the yard does not have");
        assertThat(folder.resolve("no")).doesNotExist();
    }

    @Test
    void aPlanThatBreaksARuleSaysSoFirst() throws IOException {
        Path plan = ShortLane.changedIn(folder, "\"terminator\": true", "\"terminator\": false");
        Ran ran = Ran.of("sheets", YARD, plan.toString(), "-d", folder.toString(), "--only", "page");
        assertThat(ran.status()).isZero();
        assertThat(folder.resolve("plan.html"))
                .content()
                .contains("The audit found broken rules: do not build this plan", "terminator-last");
    }

    @Test
    void planWritesThePageInOneGo() {
        Path page = folder.resolve("page.html");
        Path plan = folder.resolve("plan.json");
        Ran ran = Ran.of("plan", YARD, "-o", plan.toString(), "--effort", "1", "--report", page.toString());
        assertThat(ran.status()).isZero();
        assertThat(page).content().contains("Short Lane", "lantern", "Lid card of board B1");
        assertThat(ran.err()).contains("The page is in " + page);
        assertThat(Ran.of("plan", YARD, "-o", plan.toString(), "--report", plan.toString())
                        .err())
                .contains("name two");
        assertThat(Ran.of("plan", YARD, "--report", folder.toString()).err()).contains("is a folder", "--report");
    }
}
