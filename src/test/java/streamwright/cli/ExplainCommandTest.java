package streamwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ExplainCommandTest {
    private static final List<String> REASONS = List.of("gate 2 follows", "B2 hangs", "One cable");

    @TempDir
    private Path folder;

    private String plan = "";

    @BeforeEach
    void write() {
        plan = ShortLane.planIn(folder).toString();
    }

    private Ran explain(String... more) {
        String[] args = new String[3 + more.length];
        args[0] = "explain";
        args[1] = ShortLane.YARD.toString();
        args[2] = plan;
        System.arraycopy(more, 0, args, 3, more.length);
        return Ran.of(args);
    }

    @Test
    void everyReasonWithoutAName() {
        Ran ran = explain();
        assertThat(ran.status()).isZero();
        assertThat(ran.out())
                .contains(
                        """
                        gate 2 follows gate 1, which costs 2.30 of wire.
                            instead: port 2 of B1 - costs 1.50 more
                        """,
                        "instead: no board there - breaks lead-nulls: 4 where the limit is 2",
                        "One cable carries both boards.");
        assertThat(ran.err()).isEmpty();
    }

    /** Amps stand in the cable's reason alone. */
    @Test
    void cautionsComeFirstWhereAmpsStand() {
        assertThat(explain("shed 1").out()).startsWith("CAUTION: ");
        assertThat(explain("B2").out()).startsWith("B2 hangs").doesNotContain("CAUTION");
    }

    @ParameterizedTest
    @CsvSource({
        "gate, gate 2 follows",
        "gate 2, gate 2 follows",
        "GATE 2, gate 2 follows",
        "B2, B2 hangs",
        "shed 1, One cable",
        "cable 1, One cable",
    })
    void eachThingByItsName(String what, String text) {
        Ran ran = explain(what);
        assertThat(ran.status()).isZero();
        assertThat(REASONS.stream().filter(ran.out()::contains)).containsExactly(text);
    }

    @ParameterizedTest
    @CsvSource({"gaet, gate", "gate 3, gate 1", "lantrn, lantern", "shed 2, shed 1"})
    void aMistypedNameIsGuessed(String typed, String meant) {
        Ran ran = explain(typed);
        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).contains("'" + typed + "'", "Did you mean '" + meant + "'?");
    }

    /** The plan's file says nothing of lantern. */
    @Test
    void aReasonThatThePlanLacksIsMadeAnew() {
        Ran ran = explain("lantern");
        assertThat(ran.status()).isZero();
        assertThat(ran.out()).contains("lantern hangs on port 2 of board B2", "\n    instead: ");
        assertThat(ran.err()).isEmpty();
    }

    @Test
    void whatThePlanDoesNotHaveHasNoReason() throws IOException {
        Path yard = folder.resolve("yard.yaml");
        Files.writeString(
                yard,
                Files.readString(ShortLane.YARD)
                        + "  - {id: bush, pixel: ws2811, pixels: 10, feed: [1, 1], follow: none}\n");
        Ran ran = Ran.of("explain", yard.toString(), plan, "bush");
        assertThat(ran.status()).isZero();
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).contains("no reason for bush");
        assertThat(Ran.of("explain", yard.toString(), plan, "bush", "--quiet").err())
                .isEmpty();
    }

    @Test
    void jsonHasTheFieldsOfThePlanFile() {
        Ran ran = explain("B2", "--json");
        assertThat(ran.status()).isZero();
        assertThat(ran.out().replaceAll("\\s+", ""))
                .isEqualTo("[{\"about\":{\"board\":\"B2\"},\"chose\":\"at12,3\",\"because\":[{\"rule\":\"lead-nulls\","
                        + "\"figure\":2.0,\"limit\":2.0}],\"instead\":[{\"what\":\"noboardthere\",\"breaks\":"
                        + "{\"rule\":\"lead-nulls\",\"figure\":4.0,\"limit\":2.0}}],"
                        + "\"text\":\"B2hangsat12,3,sincetheleadfromB1wouldneed4nullpixels.\"}]");
    }

    @Test
    void aFileThatIsNotThereIsNamed() {
        Ran ran = Ran.of("explain", "no-such-yard.yaml", plan);
        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).contains("no-such-yard.yaml").contains("no such file");
    }
}
