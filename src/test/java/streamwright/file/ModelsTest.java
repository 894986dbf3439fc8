package streamwright.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import streamwright.yard.Address;
import streamwright.yard.BoardModel;
import streamwright.yard.Drives;
import streamwright.yard.PixelKind;
import streamwright.yard.Yard;

class ModelsTest {
    private static final String YARD = """
            models: %s
            controllers: [{id: shed, model: source-4, at: [0, 0]}]
            boards: [{model: quad}, {model: sixteen}]
            props: [{id: gable, pixel: ws2811, pixels: 1, feed: [0, 0]}]
            """;

    @TempDir
    Path folder;

    private static final ModelLibrary OWN = ModelLibrary.builtIn();

    @Test
    void firstOnesServeAPropListAlone() {
        assertThat(OWN.controllers().keySet()).first().isEqualTo("source-4");
        assertThat(OWN.pixels().keySet()).first().isEqualTo("ws2811");
    }

    /** One source of truth: no model file beside the index, none in it twice. */
    @Test
    void indexNamesEveryModelFile() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("models"))) {
            List<String> names = files.map(file -> file.getFileName().toString())
                    .filter(name -> !name.equals("index.txt"))
                    .toList();
            assertThat(Files.readAllLines(Path.of("models", "index.txt"))).containsExactlyInAnyOrderElementsOf(names);
        }
    }

    /**
     * Bits, bit time and the longest reset of the revisions: the chips' datasheets as each model's source tells; what that
     * marks as from memory is from memory here too.
     */
    @ParameterizedTest
    @CsvSource({
        "ws2811, 3, 24, 1.25, 300",
        "ws2811-slow, 3, 24, 2.5, 300",
        "ws2812b, 3, 24, 1.25, 280",
        "sk6812-rgbw, 4, 32, 1.25, 80",
        "ws2815, 3, 24, 1.25, 300",
        "ucs8904b, 8, 64, 1.25, 50",
        "ws2816, 6, 48, 1.25, 280"
    })
    void timingIsThatOfTheDatasheets(String name, int channels, int bits, double bitTime, double reset) {
        PixelKind kind = Objects.requireNonNull(OWN.pixels().get(name));
        assertThat(List.of(kind.channels(), kind.bits())).containsExactly(channels, bits);
        assertThat(List.of(kind.bitTime(), kind.reset(), kind.prefix())).containsExactly(bitTime, reset, 0.0);
        assertThat(kind.source()).containsAnyOf("datasheet", "from memory");
    }

    private static BoardModel own(String name) {
        return Objects.requireNonNull(OWN.boards().get(name));
    }

    @Test
    void boardsAreWhatTheirFilesSay() {
        BoardModel quad = own("quad");
        assertThat(quad.ports()).containsExactly(1, 2, 3, 4);
        assertThat(quad.address()).isEqualTo(new Address.Switches(0, 15, 4));
        assertThat(own("sixteen").ports()).containsExactly(1, 1, 1, 1, 2, 2, 2, 2, 3, 3, 3, 3, 4, 4, 4, 4);
        assertThat(own("flex-eight").ports()).containsOnly(BoardModel.ANY).hasSize(8);
        assertThat(own("flex-eight").address()).isEqualTo(new Address.Rotary(0, 9));
        assertThat(own("solo").addressed()).isFalse();
        assertThat(own("mains-sixteen").drives()).isEqualTo(Drives.OUTPUTS);
        assertThat(own("matrix-64").streams()).containsExactly(1, 2, 3, 4);
        assertThat(OWN.addressedPixelBoards())
                .extracting(BoardModel::name)
                .containsExactly("quad", "sixteen", "flex-eight");
    }

    @Test
    void foldersModelsComeOnTopAndTheSameNameWins() throws IOException {
        Path models = Files.createDirectories(folder.resolve("own/deep"));
        Files.writeString(models.resolve("q.yml"), "{board: quad, ports: [4], address: none, price: 1}");
        Files.writeString(
                models.resolve("n.json"),
                "{\"board\": \"nova\", \"ports\": [\"any\"], \"address\": "
                        + "{\"least\": 0, \"most\": 3, \"switches\": 2}, \"price\": 2}");
        Files.writeString(models.resolve("notes.txt"), "no model");
        Yard yard = Reading.yard(folder, "yard.yaml", YARD.formatted("own"));
        assertThat(yard.boards().get(0).model().ports()).containsExactly(4);
        assertThat(yard.boards().get(1).model()).isEqualTo(own("sixteen"));
        Yard absolute = Reading.yard(
                folder, "yard.yaml", YARD.formatted(folder.resolve("own").toAbsolutePath()));
        assertThat(absolute).isEqualTo(yard);
        Yard byDefault = Reading.yard(
                folder, "yard.yaml", YARD.formatted("own").replace("boards: [{model: quad}, {model: sixteen}]\n", ""));
        assertThat(byDefault.boards())
                .extracting(offer -> offer.model().name())
                .containsExactly("sixteen", "flex-eight", "nova");
    }

    @Test
    void sameNameTwiceInOneFolderIsAProblem() throws IOException {
        Path models = Files.createDirectories(folder.resolve("own"));
        Files.writeString(models.resolve("a.yaml"), "{board: nova, ports: [4], address: none, price: 1}");
        Files.writeString(models.resolve("b.yaml"), "{board: nova, ports: [4], address: none, price: 1}");
        assertThat(problems(YARD.formatted("own")))
                .containsExactly(
                        models.resolve("b.yaml")
                                + ":1:9: board: found \"nova\" a second time; must differ from that of another file of the folder");
    }

    /** A yard that uses a model with a mistake is not told that it does not exist. */
    @Test
    void brokenModelIsNotCalledUnknown() throws IOException {
        Path models = Files.createDirectories(folder.resolve("own"));
        Files.writeString(models.resolve("a.yaml"), "{board: nova, ports: [4], address: none, price: -1}");
        assertThat(problems(YARD.formatted("own").replace("model: quad", "model: nova")))
                .containsExactly(
                        models.resolve("a.yaml") + ":1:49: price: found -1; must be a number from 0 to 1000000000000");
    }

    private List<String> problems(String text) throws IOException {
        Path file = Files.writeString(folder.resolve("yard.yaml"), text);
        return ((Read.Bad<Yard>) YardFile.read(file))
                .problems().stream().map(Problem::toString).toList();
    }
}
