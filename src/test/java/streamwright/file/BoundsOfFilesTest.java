package streamwright.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Files made to take all time, all memory, or what they have no right to. */
class BoundsOfFilesTest {
    /** Far above what any of them takes, a few seconds at most on a loaded machine. */
    private static final Duration SOON = Duration.ofSeconds(60);

    private static final String YARD = """
            controllers: [{id: shed, model: source-4, at: [0, 0]}]
            props: %s
            """;

    @TempDir
    Path folder;

    private List<String> problems(String name, String text) throws IOException {
        Path file = Files.writeString(folder.resolve(name), text);
        Read<?> read = assertTimeoutPreemptively(SOON, () -> YardFile.read(file));
        return read instanceof Read.Bad<?> bad
                ? bad.problems().stream()
                        .map(problem -> problem.toString().replace(folder + "/", ""))
                        .toList()
                : List.of();
    }

    @Test
    void anAliasBombIsRefusedAtItsFirstAnchor() throws IOException {
        StringBuilder bomb = new StringBuilder("a: &a [1, 1, 1, 1, 1, 1, 1, 1, 1]\n");
        for (char c = 'b'; c <= 'z'; c++) {
            char before = (char) (c - 1);
            bomb.append(c).append(": &").append(c).append(" [").append(("*" + before + ", ").repeat(9));
            bomb.append("]\n");
        }
        assertThat(problems("yard.yaml", bomb.toString()))
                .containsExactly("yard.yaml:1:4: found the anchor &a; must be left out");
    }

    @ParameterizedTest
    @CsvSource({"yard.yaml, 1:65", "yard.json, 1:65"})
    void nestingStopsWhereItIsTooDeepAndNotAtTheStacksEnd(String name, String place) throws IOException {
        assertThat(problems(name, "[".repeat(2_000_000)))
                .containsExactly(name + ":" + place + ": found deeper nesting; must be at most 64 levels deep");
    }

    @Test
    void deepBlocksStopToo() throws IOException {
        StringBuilder deep = new StringBuilder();
        for (int i = 0; i < 2000; i++) {
            deep.append(" ".repeat(i)).append("a:\n");
        }
        assertThat(problems("yard.yaml", deep.toString()))
                .containsExactly("yard.yaml:65:65: found deeper nesting; must be at most 64 levels deep");
    }

    @ParameterizedTest
    @ValueSource(strings = {"yard.json", "props.csv"})
    void moreValuesThanTheMemoryShouldHoldAreRefused(String name) throws IOException {
        String text = name.endsWith("csv") ? "id,pixels,x,y\n" + "1,".repeat(4_000_001) : "[" + "1,".repeat(6_000_001);
        assertThat(problems(name, text))
                .singleElement()
                .asString()
                .containsAnyOf("must be at most 6000000 values in a file", "must be at most 4000000 cells in a file");
    }

    @Test
    void countsAreRefusedBeforeAnythingIsMadeOfThem() throws IOException {
        String many = "[{id: a, pixel: ws2811, strings: {count: 2000000000, pixels: 1, feed: [0, 0]}}]";
        assertThat(problems("yard.yaml", YARD.formatted(many)))
                .singleElement()
                .asString()
                .startsWith("yard.yaml:2:")
                .contains("found 2000000000; must be a whole number from 1 to 100000");
        String twice = "[{id: a, pixel: ws2811, strings: {count: 100000, pixels: 1, feed: [0, 0]}},"
                + " {id: b, pixel: ws2811, strings: {count: 100000, pixels: 1, feed: [0, 0]}}]";
        assertThat(problems("yard.yaml", YARD.formatted(twice)))
                .singleElement()
                .asString()
                .contains("200000");
    }

    @ParameterizedTest
    @ValueSource(strings = {"yard.yaml", "yard.json"})
    void longNumbersAndLongTextsEndSoon(String name) throws IOException {
        String digits = "7".repeat(3_000_000);
        assertThat(problems(name, "{\"frameRate\": " + digits + "}")).isNotEmpty();
        assertThat(problems(name, "{\"frameRate\": 1e" + digits + "}")).isNotEmpty();
        assertThat(problems(name, "{\"name\": \"" + digits + "\"}")).isNotEmpty();
        assertThat(problems(name, "{\"" + digits + "\": 1}")).isNotEmpty();
        assertThat(problems(name, "{\"name\": \"" + "\\u0041".repeat(500_000) + "\"}"))
                .isNotEmpty();
    }

    /** Each message is short, however long the thing found. */
    @Test
    void aHundredThousandMistakesAreToldByTheFirstThousand() throws IOException {
        List<String> problems = problems("yard.yaml", YARD.formatted("[" + "x,".repeat(100_000) + "]"));
        assertThat(problems).hasSize(1001);
        assertThat(problems).allMatch(problem -> problem.length() < 300);
    }

    @Test
    @EnabledOnOs({OS.LINUX, OS.MAC})
    void linksOutOfTheModelsFolderAndPipesAreNotFollowed() throws Exception {
        Path elsewhere = Files.createDirectory(folder.resolve("elsewhere"));
        Path secret = Files.writeString(elsewhere.resolve("secret.yaml"), "secret words");
        Path models = Files.createDirectories(folder.resolve("models/below"));
        Files.createSymbolicLink(models.resolve("file.yaml"), secret);
        Files.createSymbolicLink(models.resolve("folder"), elsewhere);
        assertThat(new ProcessBuilder("mkfifo", models.resolve("pipe.yaml").toString())
                        .start()
                        .waitFor())
                .isZero();
        String props = "[{id: a, pixel: ws2811, pixels: 1, feed: [0, 0]}]";
        assertThat(problems("yard.yaml", "models: models\n" + YARD.formatted(props)))
                .isEmpty();
        // the same file as its own, to see that it would have been told
        Files.copy(secret, models.resolve("copy.yaml"));
        assertThat(problems("yard.yaml", "models: models\n" + YARD.formatted(props)))
                .singleElement()
                .asString()
                .contains("secret words");
    }

    @Test
    @EnabledOnOs({OS.LINUX, OS.MAC})
    void aPropListIsNoDevice() throws IOException {
        Files.createSymbolicLink(folder.resolve("endless.csv"), Path.of("/dev/zero"));
        for (String name : List.of("endless.csv", "/dev/zero", "../../../../../../../../../../dev/zero")) {
            assertThat(problems("yard.yaml", YARD.formatted("{csv: " + name + "}")))
                    .singleElement()
                    .asString()
                    .endsWith(": found a device or pipe; must be a file");
        }
        // JUnit would warn of it
        Files.delete(folder.resolve("endless.csv"));
    }

    @Test
    @EnabledOnOs({OS.LINUX, OS.MAC})
    void namesOfFilesStayOnTheirLine() throws IOException {
        assertThat(problems("yard.yaml", YARD.formatted("{csv: \"\\e[2Jnot\\nthere.csv\"}")))
                .containsExactly("\\u001b[2Jnot\\u000athere.csv: found no such file; must be there");
        Path file = Files.writeString(
                folder.resolve("a\u001b[2J.yaml"), YARD.formatted("[{id: a, pixel: ws2811, pixels: 1, feed: [0, 0]}]"));
        assertThat(Reading.value(YardFile.read(file)).name()).isEqualTo("a\\u001b[2J");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"M\u00fchle", "\u704f\u7c60", "\u05d7\u05e6\u05e8", "\ud83c\udf84 garden", "a\u0301", "=1+1"})
    void namesOfAnyWritingAreRead(String name) throws IOException {
        String props = "[{id: a, pixel: ws2811, pixels: 1, feed: [0, 0]}]";
        Path file = Files.writeString(folder.resolve("yard.yaml"), "name: \"" + name + "\"\n" + YARD.formatted(props));
        assertThat(Reading.value(YardFile.read(file)).name()).isEqualTo(name);
    }
}
