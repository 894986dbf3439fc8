package streamwright.cli;

import java.nio.file.Path;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import streamwright.yard.Point;
import streamwright.yard.Yard;

/** The yard that a command is about: a yard file, or a prop list alone with the place of its controller. */
final class YardSource {
    @Parameters(index = "0", paramLabel = "YARD", description = "The yard file, or a prop list (CSV).")
    private Path path;

    @Option(
            names = "--controller-at",
            paramLabel = "X,Y",
            description = "Where the controller of a prop list alone stands. Default: 0,0.")
    private @Nullable String controllerAt;

    Path path() {
        return path;
    }

    Yard read(Console console) {
        if (controllerAt == null) {
            return Inputs.yard(path, new Point(0, 0), console);
        }
        if (!path.toString().toLowerCase(Locale.ROOT).endsWith(".csv")) {
            throw new Wrong("--controller-at is for a prop list alone; a yard file says where its controllers stand.");
        }
        return Inputs.yard(path, place(controllerAt), console);
    }

    private static Point place(String text) {
        try {
            String[] parts = text.split(",", -1);
            if (parts.length == 2) {
                return new Point(Double.parseDouble(parts[0].strip()), Double.parseDouble(parts[1].strip()));
            }
        } catch (IllegalArgumentException e) {
            // told below, with what would be right
        }
        throw new Wrong("--controller-at must be two numbers, e.g. --controller-at 22,13.5.");
    }
}
