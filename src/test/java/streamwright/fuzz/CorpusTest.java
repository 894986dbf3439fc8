package streamwright.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import streamwright.file.Read;

/** What the fuzzer kept of its runs, each input a way of its own through a reader, read again. */
class CorpusTest {
    private static final Path CORPUS = Path.of("src/test/resources/streamwright/fuzz");

    @ParameterizedTest
    @EnumSource(Reader.class)
    void everyInputGivesAValueOrProblems(Reader reader) throws IOException {
        int good = 0;
        List<Path> inputs;
        try (Stream<Path> files = Files.list(CORPUS.resolve(reader.name().toLowerCase(Locale.ROOT)))) {
            inputs = files.sorted().toList();
        }
        for (Path input : inputs) {
            good += reader.read(Files.readAllBytes(input)) instanceof Read.Good<?> ? 1 : 0;
        }
        // a corpus without both has lost its sense
        assertThat(good).isBetween(1, inputs.size() - 1);
    }
}
