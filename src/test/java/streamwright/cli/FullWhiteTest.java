package streamwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import streamwright.plan.Plan;
import streamwright.report.FullWhite;
import streamwright.report.walk.Walk;
import streamwright.yard.Yard;

/** What a test in white draws: 55 mA a pixel, whatever the show's brightness. */
class FullWhiteTest {
    private static final String QUAD = """
            board: quad
            drives: pixels
            ports: [1, 2, 3, 4]
            address: {least: 0, most: 15, switches: 4}
            price: 27.5
            fuse: FUSE
            """;

    /** The gate's two strings of 50 pixels draw 5.5 A in all: of a fuse of 5 A, of 5.5 A, of 6 A. */
    @ParameterizedTest
    @CsvSource({"5, true", "5.5, false", "6, false"})
    void aFuseBlowsWhereWhiteIsAboveIt(double fuse, boolean blows, @TempDir Path folder) throws IOException {
        Path models = Files.createDirectories(folder.resolve("models"));
        Files.writeString(models.resolve("quad.yaml"), QUAD.replace("FUSE", String.valueOf(fuse)));
        String file = "models: models\n" + Files.readString(ShortLane.YARD);
        Yard yard = ShortLane.yard(Files.writeString(folder.resolve("yard.yaml"), file));
        Plan plan = ShortLane.plan(yard);
        List<FullWhite.Draw> draws = FullWhite.of(Walk.of(yard, plan));
        FullWhite.Draw gate = draws.get(0);
        assertThat(gate.white()).isCloseTo(5.5, Offset.offset(1e-9));
        assertThat(gate.show()).isCloseTo(2.75, Offset.offset(1e-9));
        assertThat(gate.fuse()).isEqualTo(fuse);
        assertThat(gate.blows()).isEqualTo(blows);
        assertThat(draws.get(1).blows()).isFalse();
    }
}
