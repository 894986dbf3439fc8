package streamwright.fuzz;

import com.google.common.jimfs.Configuration;
import com.google.common.jimfs.Jimfs;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import streamwright.check.Audit;
import streamwright.file.PlanFile;
import streamwright.file.Problem;
import streamwright.file.Read;
import streamwright.file.YardFile;
import streamwright.plan.Plan;
import streamwright.yard.Yard;

/** The readers of the program, each given bytes as the one file of a file system in memory. */
enum Reader {
    YAML("yard.yaml"),
    JSON("yard.json"),
    PROPS("props.csv"),
    MODEL("models/model.yaml"),
    PLAN("plan.json");

    private static final String HOME = """
            models: models
            controllers: [{id: shed, model: source-4, at: [0, 0]}]
            props: [{id: gable, pixel: ws2811, pixels: 120, feed: [4, 0]}]
            """;
    /** What must not reach a terminal: controls, and what ends a line or turns the writing around. */
    private static final Pattern HARMFUL =
            Pattern.compile("[\\p{Cc}\\u061C\\u200E\\u200F\\u2028-\\u202E\\u2066-\\u2069]");

    private static final FileSystem MEMORY = Jimfs.newFileSystem(
            Configuration.unix().toBuilder().setMaxSize(1L << 28).build());
    private static final Path FOLDER = MEMORY.getPath("/yards");

    private final String name;

    Reader(String name) {
        this.name = name;
    }

    /**
     * Reads, and audits a plan that could be read.
     *
     * @throws AssertionError if a value or a message could do harm where it is shown
     */
    Read<?> read(byte[] bytes) {
        try {
            Path file = FOLDER.resolve(name);
            Files.createDirectories(file.getParent());
            Files.write(file, bytes);
            Read<?> read = read(file);
            shown(read).forEach(Reader::refuseHarm);
            return read;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Read<?> read(Path file) throws IOException {
        return switch (this) {
            case YAML, JSON, PROPS -> YardFile.read(file);
            case MODEL -> home();
            case PLAN -> audited(PlanFile.read(file));
        };
    }

    /** A yard around the folder of models. */
    private static Read<Yard> home() throws IOException {
        return YardFile.read(Files.write(FOLDER.resolve("home.yaml"), HOME.getBytes(StandardCharsets.UTF_8)));
    }

    private static Read<Plan> audited(Read<Plan> read) throws IOException {
        if (read instanceof Read.Good<Plan> plan) {
            Files.deleteIfExists(FOLDER.resolve("models/model.yaml"));
            Files.createDirectories(FOLDER.resolve("models"));
            Yard yard = ((Read.Good<Yard>) home()).value();
            Audit.of(yard, plan.value()).list().forEach(finding -> refuseHarm(finding.text()));
        }
        return read;
    }

    private static List<String> shown(Read<?> read) {
        List<Problem> problems = read instanceof Read.Bad<?> bad ? bad.problems() : ((Read.Good<?>) read).warnings();
        List<String> shown =
                new ArrayList<>(problems.stream().map(Problem::toString).toList());
        if (read instanceof Read.Good<?> good && good.value() instanceof Yard yard) {
            shown.add(yard.name());
            yard.props().forEach(prop -> shown.add(prop.id()));
        }
        if (read instanceof Read.Good<?> good && good.value() instanceof Plan plan) {
            shown.add(plan.yard());
            plan.reasons().forEach(reason -> shown.add(reason.text()));
            plan.changes().forEach(change -> shown.add(change.text()));
        }
        return shown;
    }

    private static void refuseHarm(String text) {
        if (HARMFUL.matcher(text).find()) {
            throw new AssertionError("shown as it is: " + text);
        }
    }
}
