package streamwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import streamwright.file.ModelLibrary;
import streamwright.file.Read;
import streamwright.file.YardFile;

class ModelsCommandTest {
    static Stream<String> names() {
        ModelLibrary library = ModelLibrary.builtIn();
        return Stream.of(library.boards(), library.controllers(), library.pixels())
                .flatMap(models -> models.keySet().stream());
    }

    @Test
    void listsEveryModelBelowTheCautions() {
        Ran ran = Ran.of("models");
        assertThat(ran.status()).isZero();
        assertThat(ran.out()).startsWith("CAUTION: ");
        assertThat(names()).allSatisfy(name -> assertThat(ran.out()).contains(" " + name + " "));
        assertThat(ran.err()).isEmpty();
    }

    /** What is shown can be copied, changed and used. */
    @ParameterizedTest
    @MethodSource("names")
    void aShownModelIsAModelFile(String name, @TempDir Path folder) throws IOException {
        Ran ran = Ran.of("models", name);
        assertThat(ran.status()).isZero();
        Files.writeString(Files.createDirectory(folder.resolve("models")).resolve("copy.yaml"), ran.out());
        Path yard = folder.resolve("yard.yaml");
        Files.writeString(yard, Files.readString(ShortLane.YARD) + "models: models\n");
        assertThat(YardFile.read(yard)).isInstanceOf(Read.Good.class);
        assertThat(YardFile.read(yard)).isEqualTo(YardFile.read(ShortLane.YARD));
    }

    @Test
    void jsonIsAListAndTheCautionsStandBesideIt() {
        Ran ran = Ran.of("models", "quad", "--json");
        assertThat(ran.status()).isZero();
        assertThat(ran.out().replaceAll("\\s+", ""))
                .isEqualTo("[{\"board\":\"quad\",\"drives\":\"pixels\",\"ports\":[1,2,3,4],\"address\":{\"least\":0,"
                        + "\"most\":15,\"switches\":4},\"price\":27.5,\"fuse\":5.0}]");
        assertThat(ran.err()).startsWith("CAUTION: ");
    }

    @Test
    void aMistypedModelIsGuessed() {
        Ran ran = Ran.of("models", "quda");
        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).contains("Did you mean 'quad'?");
    }
}
