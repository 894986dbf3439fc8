package streamwright.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import streamwright.plan.Plan;
import streamwright.plan.Reason;
import streamwright.plan.Status;
import streamwright.plan.Totals;

class PlanFileTest {
    private static final String LEAST = """
            {"format": 1, "yard": "Mill Yard", "cost": 80,
             "totals": {"boards": 0, "cables": 0, "strings": 0, "pixels": 0, "nulls": 0, "trunk": 0, "lead": 0, "jumper": 0},
             "cables": [], "boards": []}
            """;

    @TempDir
    Path folder;

    @Test
    void planComesBackAsItWasWritten() throws IOException {
        Plan plan = read(Mistakes.resource("plan.json"));
        Path file = folder.resolve("again.json");
        PlanFile.write(plan, file);
        assertThat(Reading.value(PlanFile.read(file))).isEqualTo(plan);
        assertThat(PlanFile.text(Reading.value(PlanFile.read(file)))).isEqualTo(Files.readString(file));
    }

    @Test
    void handMadePlanMayLeaveOutWhatIsOnlyToldAboutIt() throws IOException {
        Plan plan = read(LEAST);
        assertThat(plan.status()).isEqualTo(Status.FEASIBLE);
        assertThat(List.of(plan.bound(), plan.gap(), plan.seconds())).containsExactly(0.0, 1.0, 0.0);
        assertThat(plan.work()).isNull();
        assertThat(plan.supplies()).isEmpty();
    }

    @Test
    void textIsTheSameInEveryLocale() throws IOException {
        Plan plan = read(Mistakes.resource("plan.json"));
        String text = PlanFile.text(plan);
        Locale before = Locale.getDefault();
        try {
            // Turkish has another small I, Arabic other digits
            for (String tag : List.of("tr-TR", "ar-EG-u-nu-arab", "de-DE")) {
                Locale.setDefault(Locale.forLanguageTag(tag));
                assertThat(PlanFile.text(plan)).isEqualTo(text);
            }
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void lengthsAndMoneyHaveSixDecimals() {
        String text = PlanFile.text(plan(19.417753670348823, 10));
        assertThat(text).contains("\"cost\": 19.417754,").contains("\"trunk\": 19.417754,");
    }

    /** A bound is a promise: rounding must not lift it above what was proved. */
    @Test
    void boundIsRoundedDownUnlessItIsTheCost() {
        assertThat(PlanFile.text(plan(20, 10.0000019))).contains("\"bound\": 10.000001,");
        double third = 76.39499999999;
        assertThat(PlanFile.text(plan(third, third)))
                .contains("\"cost\": 76.395,")
                .contains("\"bound\": 76.395,");
    }

    @Test
    void whatIsNotThereIsLeftOut() throws IOException {
        assertThat(PlanFile.text(read(LEAST))).doesNotContain(": null", "work", "supplies", "changes");
    }

    @Test
    void figuresThatAreNoNumbersAreRefused() {
        assertThatThrownBy(() -> PlanFile.text(plan(Double.NaN, 0)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("NaN");
    }

    /** An alternative to which no way leads breaks its rule by a length without end. */
    @Test
    void endlessFigureOfAReasonIsLeftOutAndComesBack() throws IOException {
        Reason.Broken endless = new Reason.Broken("hop-length", Double.POSITIVE_INFINITY, 60);
        Reason reason = new Reason(
                Reason.About.board("B1"),
                "the porch",
                List.of(Reason.Because.cost(5)),
                List.of(new Reason.Instead("the islet", null, endless)),
                "B1 hangs on the porch.");
        Plan plan = read(LEAST).withReasons(List.of(reason));
        String text = PlanFile.text(plan);
        assertThat(text).contains("\"breaks\": {\"rule\": \"hop-length\", \"limit\": 60}");
        assertThat(read(text)).isEqualTo(plan);
    }

    @Test
    void fileIsWrittenWholeAndNothingElseIsLeft() throws IOException {
        Path file = Files.writeString(folder.resolve("plan.json"), "an older plan");
        PlanFile.write(read(LEAST), file);
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files).containsExactlyInAnyOrder(file, folder.resolve("read.json"));
        }
        assertThat(Reading.value(PlanFile.read(file)).cost()).isEqualTo(80);
    }

    @Test
    void failedWriteLeavesTheOlderFile() throws IOException {
        Path file = Files.writeString(folder.resolve("plan.json"), "an older plan");
        assertThatThrownBy(() -> PlanFile.write(plan(Double.NaN, 0), file)).isInstanceOf(RuntimeException.class);
        assertThat(file).hasContent("an older plan");
        assertThatThrownBy(() -> PlanFile.write(plan(1, 0), folder.resolve("no/such/plan.json")))
                .isInstanceOf(IOException.class);
    }

    private Plan read(String text) throws IOException {
        return Reading.value(PlanFile.read(Files.writeString(folder.resolve("read.json"), text)));
    }

    private static Plan plan(double cost, double bound) {
        Totals totals = new Totals(0, 0, 0, 0, 0, cost, 0, 0);
        return new Plan(
                Plan.FORMAT,
                "Mill Yard",
                Status.FEASIBLE,
                cost,
                bound,
                0,
                0,
                1,
                totals,
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                null,
                null);
    }
}
