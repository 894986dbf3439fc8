package streamwright.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Random;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever the bytes, reading ends with a value or with problems, soon and without an exception. */
class HostileFilesTest {
    private static final int MUTANTS = 1000;
    private static final String[] NASTY = {
        "[",
        "]",
        "{",
        "}",
        ": ",
        "- ",
        "? ",
        "&a ",
        "*a",
        "!!int ",
        "|\n",
        ">\n",
        "---\n",
        "...\n",
        "%YAML 1.1\n",
        "\"",
        "'",
        "\\",
        "#",
        "\t",
        "\r",
        "\u0000",
        "\u0085",
        "\u2028",
        "\uFEFF",
        "\uD83D\uDE00",
        "-",
        "0",
        "1e999",
        "-1e-999",
        "999999999999999999999",
        "NaN",
        "null",
        ",",
        ";",
        "\n",
        "\n\n  ",
        "<<: ",
        "[[[[[[[[[["
    };

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"yard.yaml", "yard.json", "keep.yaml", "props.csv", "plan.json", "model.yaml"})
    void mutantsOfAGoodFile(String name) throws IOException {
        byte[] good = Mistakes.resource(name).getBytes(StandardCharsets.UTF_8);
        Path file = folder.resolve(name);
        Random random = new Random(20_251_101);
        int[] read = {0};
        assertTimeoutPreemptively(Duration.ofMinutes(2), () -> {
            for (int i = 0; i < MUTANTS; i++) {
                Files.write(file, mutant(good, random));
                read[0] += read(name, file) instanceof Read.Good<?> ? 1 : 0;
            }
        });
        // both ways must be gone, or the mutants are too tame or too wild
        assertThat(read[0]).isBetween(1, MUTANTS - 1);
    }

    private Read<?> read(String name, Path file) {
        return switch (name) {
            case "plan.json" -> PlanFile.read(file);
            case "model.yaml" -> models();
            default -> YardFile.read(file);
        };
    }

    private Read<ModelLibrary> models() {
        Problems problems = new Problems();
        Place named = Place.root("yard.yaml", new Node.Scalar(Node.Kind.TEXT, "models", 1, 1));
        ModelLibrary models = ModelFiles.below(folder, named, problems);
        return problems.outcome(models);
    }

    private static byte[] mutant(byte[] good, Random random) {
        byte[] bytes = good;
        for (int changes = 1 + random.nextInt(4); changes > 0; changes--) {
            bytes = changed(bytes, random);
        }
        return bytes;
    }

    private static byte[] changed(byte[] bytes, Random random) {
        int at = random.nextInt(bytes.length + 1);
        int end = Math.min(bytes.length, at + random.nextInt(12));
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(bytes, 0, at);
        switch (random.nextInt(5)) {
            case 0 -> out.write(random.nextInt(256));
            case 1 -> out.writeBytes(NASTY[random.nextInt(NASTY.length)].getBytes(StandardCharsets.UTF_8));
            case 2 -> {
                // said twice
                out.write(bytes, at, end - at);
                end = at;
            }
            case 3 -> {
                // one put in, none taken out
                out.writeBytes(NASTY[random.nextInt(NASTY.length)].getBytes(StandardCharsets.UTF_8));
                end = at;
            }
            default -> {
                // taken out
            }
        }
        out.write(bytes, end, bytes.length - end);
        return out.toByteArray();
    }
}
