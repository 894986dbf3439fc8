package streamwright.file;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import streamwright.file.Mistakes.Mistake;

/** The schemas say what the readers do, as far as a schema can. */
class SchemasTest {
    private static final SchemaRegistry REGISTRY =
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);

    @ParameterizedTest
    @ValueSource(strings = {"yard.yaml", "yard.json", "keep.yaml"})
    void goodYardIsValid(String name) {
        assertThat(faults(Schemas.yard(), Mistakes.resource(name))).isEmpty();
    }

    static Stream<Path> models() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("models"))) {
            return files.filter(file -> file.toString().endsWith(".yaml")).sorted().toList().stream();
        }
    }

    @ParameterizedTest
    @MethodSource("models")
    void shippedModelIsValid(Path model) throws IOException {
        assertThat(faults(Schemas.model(), Files.readString(model))).isEmpty();
    }

    @Test
    void goodPlanIsValid() {
        assertThat(faults(Schemas.plan(), Mistakes.resource("plan.json"))).isEmpty();
    }

    static Stream<Mistake> structuralMistakes() {
        return Mistakes.table("yard-mistakes.txt").filter(SchemasTest::withinOneValue);
    }

    /** What a schema cannot know: other files, other values, and geometry. */
    private static boolean withinOneValue(Mistake mistake) {
        return mistake.messages().stream()
                .noneMatch(
                        message -> message.matches(
                                ".*(a second time|the name of a [a-z ]+[;:]|the id of a prop|at least 41|folder|another prop|as many as"
                                        + "|of strings$|must be the same pixels|copy itself|\\d+ strings|\\d+ pixels;|a ring|left out).*"));
    }

    @ParameterizedTest
    @MethodSource("structuralMistakes")
    void mistakeIsInvalid(Mistake mistake) {
        assertThat(faults(Schemas.yard(), mistake.in(Mistakes.resource("yard.yaml"))))
                .isNotEmpty();
    }

    @Test
    void mostMistakesAreSuchThatASchemaSeesThem() {
        assertThat(structuralMistakes()).hasSizeGreaterThan(50);
    }

    @Test
    void brokenPlansAndModelsAreInvalid() {
        String plan = Mistakes.resource("plan.json");
        assertThat(faults(Schemas.plan(), plan.replace("\"format\": 1", "\"format\": 2")))
                .isNotEmpty();
        assertThat(faults(Schemas.plan(), plan.replace("terminator", "terminated")))
                .isNotEmpty();
        assertThat(faults(Schemas.plan(), plan.replace("lead-nulls", "lead-null")))
                .isNotEmpty();
        String model = Mistakes.resource("model.yaml");
        assertThat(faults(Schemas.model(), model)).isEmpty();
        assertThat(faults(Schemas.model(), model.replace("most: 15, ", ""))).isNotEmpty();
        assertThat(faults(Schemas.model(), model.replace("any]", "all]"))).isNotEmpty();
    }

    @Test
    void textIsTheSameEveryTime() {
        assertThat(Schemas.yard()).isEqualTo(Schemas.yard()).startsWith("{\n  \"$schema\": \"https://json-schema.org/");
    }

    private static List<?> faults(String schema, String text) {
        Schema compiled = REGISTRY.getSchema(schema, InputFormat.JSON);
        return compiled.validate(text, text.startsWith("{\n") ? InputFormat.JSON : InputFormat.YAML);
    }
}
