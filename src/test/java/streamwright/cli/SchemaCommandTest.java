package streamwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.json.JsonMapper;

/** Whether the schemas themselves are right, package file tests with a validator that is not ours. */
class SchemaCommandTest {
    @ParameterizedTest
    @CsvSource({
        "yard, a yard",
        "plan, a plan",
        "model, a hardware model",
        "board, a board",
        "controller, a controller",
        "pixel, a pixel kind",
    })
    void eachFileHasItsSchema(String name, String title) {
        Ran ran = Ran.of("schema", name);
        assertThat(ran.status()).isZero();
        assertThat(ran.err()).isEmpty();
        assertThat(JsonMapper.shared().readTree(ran.out()).get("title").asString())
                .isEqualTo(title);
    }

    @Test
    void withoutANameAllInOneObject() {
        Ran ran = Ran.of("schema");
        assertThat(ran.status()).isZero();
        assertThat(JsonMapper.shared().readTree(ran.out()).propertyNames())
                .containsExactly("yard", "plan", "model", "board", "controller", "pixel");
    }

    @Test
    void aMistypedNameIsGuessed() {
        Ran ran = Ran.of("schema", "yrad");
        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).contains("Did you mean 'yard'?");
    }
}
