package streamwright.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import streamwright.file.Read;
import streamwright.file.YardFile;
import streamwright.physics.GroundPaths;
import streamwright.yard.Yard;

class FirstFitTest {
    @TempDir
    Path folder;

    /** Props as lines of the yard file; a controller of four jacks at the origin, streams of 740 pixels. */
    private Draft laidOut(String... props) throws IOException {
        String text = "name: row\nbrightness: 0.1\ncontrollers: [{id: shed, model: source-4, at: [0, 0]}]\n"
                + "boards: [{model: quad}]\nprops:\n" + String.join("\n", props) + "\n";
        Path file = Files.writeString(folder.resolve("yard.yaml"), text);
        Yard yard = ((Read.Good<Yard>) YardFile.read(file)).value();
        Draft draft = new Draft(new Site(yard, GroundPaths.of(yard)));
        assertThat(new FirstFit(draft).run()).isEqualTo(draft.complete());
        return draft;
    }

    private static String strings(String id, int count, int pixels, int x) {
        return String.format(
                "  - {id: %s, pixel: ws2811, follow: none, strings: {count: %d, pixels: %d, feed: [%d, 0]}}",
                id, count, pixels, x);
    }

    /**
     * The far string lies two hops of at most 60 m away. Whoever serves the near ones first has no board left to hang on
     * the way; whoever goes out first hangs one among them.
     */
    @ParameterizedTest
    @CsvSource({"40", "30"})
    void whatWasLeftIsServedFirst(int middle) throws IOException {
        Draft draft =
                laidOut(strings("near", 8, 370, 10), strings("middle", 4, 500, middle), strings("far", 1, 300, 72));
        assertThat(draft.complete()).isTrue();
        assertThat(draft.cables).allMatch(draft::lengthsHold);
        Draft.Hung far = draft.at[12];
        assertThat(far).isNotNull();
        assertThat(far.cable.indexOf(far)).as("boards on the way").isPositive();
    }

    /** Nothing on the way: no practice serves it, and what can be served is. */
    @Test
    void whatNoCableReachesIsLeft() throws IOException {
        Draft draft = laidOut(strings("near", 8, 370, 2), strings("far", 1, 300, 72));
        assertThat(draft.complete()).isFalse();
        assertThat(draft.placed).isEqualTo(8);
        assertThat(draft.at[8]).isNull();
    }
}
