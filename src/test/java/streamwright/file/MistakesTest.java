package streamwright.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import streamwright.file.Mistakes.Mistake;

/** Each mistake in an otherwise good file is told in full, where it stands, and nothing else is. */
class MistakesTest {
    private static final String YARD_WITH_MODELS = """
            models: models
            controllers: [{id: shed, model: source-4, at: [0, 0]}]
            props: [{id: gable, pixel: ws2811, pixels: 1, feed: [0, 0]}]
            """;

    @TempDir
    Path folder;

    static Stream<Mistake> yardMistakes() {
        return Stream.concat(Mistakes.table("yard-mistakes.txt"), Mistakes.table("syntax-mistakes.txt"));
    }

    static Stream<Mistake> jsonMistakes() {
        return Mistakes.table("json-mistakes.txt");
    }

    static Stream<Mistake> keepMistakes() {
        return Mistakes.table("keep-mistakes.txt");
    }

    static Stream<Mistake> tableMistakes() {
        return Mistakes.table("table-mistakes.txt");
    }

    static Stream<Mistake> modelMistakes() {
        return Mistakes.table("model-mistakes.txt");
    }

    static Stream<Mistake> planMistakes() {
        return Mistakes.table("plan-mistakes.txt");
    }

    @ParameterizedTest
    @MethodSource("yardMistakes")
    void inYamlYard(Mistake mistake) throws IOException {
        assertThat(ofYard("yard.yaml", mistake)).isEqualTo(mistake.messages());
    }

    @ParameterizedTest
    @MethodSource("jsonMistakes")
    void inJsonYard(Mistake mistake) throws IOException {
        assertThat(ofYard("yard.json", mistake)).isEqualTo(mistake.messages());
    }

    @ParameterizedTest
    @MethodSource("keepMistakes")
    void inYardWithKeptChannels(Mistake mistake) throws IOException {
        assertThat(ofYard("keep.yaml", mistake)).isEqualTo(mistake.messages());
    }

    @ParameterizedTest
    @MethodSource("tableMistakes")
    void inPropList(Mistake mistake) throws IOException {
        assertThat(ofYard("props.csv", mistake)).isEqualTo(mistake.messages());
    }

    @ParameterizedTest
    @MethodSource("modelMistakes")
    void inModel(Mistake mistake) throws IOException {
        assertThat(ofModel(mistake.in(Mistakes.resource("model.yaml")))).isEqualTo(mistake.messages());
    }

    @ParameterizedTest
    @MethodSource("planMistakes")
    void inPlan(Mistake mistake) throws IOException {
        Path file = write("plan.json", mistake.in(Mistakes.resource("plan.json")));
        assertThat(messages(PlanFile.read(file))).isEqualTo(mistake.messages());
    }

    @ParameterizedTest
    @ValueSource(strings = {"yard.yaml", "yard.json", "keep.yaml", "props.csv"})
    void goodYardHasNone(String name) throws IOException {
        assertThat(messages(YardFile.read(write(name, Mistakes.resource(name)))))
                .isEmpty();
    }

    @Test
    void goodPlanAndModelHaveNone() throws IOException {
        Path plan = write("plan.json", Mistakes.resource("plan.json"));
        assertThat(messages(PlanFile.read(plan))).isEmpty();
        assertThat(ofModel(Mistakes.resource("model.yaml"))).isEmpty();
    }

    @Test
    void severalMistakesAreToldInOneRun() throws IOException {
        String text = Mistakes.resource("yard.yaml");
        List<Mistake> three = yardMistakes()
                .filter(mistake ->
                        List.of("frameRate: 0", "pixels: -5,", "hop: -25").contains(mistake.bad()))
                .toList();
        for (Mistake mistake : three) {
            text = mistake.in(text);
        }
        assertThat(three).hasSize(3);
        assertThat(messages(YardFile.read(write("yard.yaml", text))))
                .isEqualTo(three.stream()
                        .flatMap(mistake -> mistake.messages().stream())
                        .toList());
    }

    private List<String> ofYard(String name, Mistake mistake) throws IOException {
        return messages(YardFile.read(write(name, mistake.in(Mistakes.resource(name)))));
    }

    private List<String> ofModel(String model) throws IOException {
        write("models/model.yaml", model);
        return messages(YardFile.read(write("yard.yaml", YARD_WITH_MODELS)));
    }

    private Path write(String name, String text) throws IOException {
        Path file = folder.resolve(name);
        Files.createDirectories(file.getParent());
        return Files.writeString(file, text);
    }

    private List<String> messages(Read<?> read) {
        return read instanceof Read.Bad<?> bad
                ? bad.problems().stream()
                        .map(problem ->
                                problem.toString().substring(folder.toString().length() + 1))
                        .toList()
                : List.of();
    }
}
