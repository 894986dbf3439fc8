package streamwright.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import streamwright.file.PlanFile;
import streamwright.file.Problem;
import streamwright.file.Read;
import streamwright.file.YardFile;
import streamwright.plan.Plan;
import streamwright.yard.Point;
import streamwright.yard.Yard;

/** What the command line names, read; all that is wrong with it is told at once. */
final class Inputs {
    /** Whoever has more mends these first. */
    private static final int MOST_SHOWN = 100;

    private Inputs() {}

    /** @param controllerAt where the controller of a prop list alone stands */
    static Yard yard(Path path, Point controllerAt, Console console) {
        return good(YardFile.read(path, controllerAt), console);
    }

    static Plan plan(Path path, Console console) {
        return good(PlanFile.read(path), console);
    }

    /** What was read, with its warnings told; all that is wrong with it otherwise. */
    static <T> T good(Read<T> read, Console console) {
        if (read instanceof Read.Good<T> good) {
            good.warnings().forEach(warning -> console.remark("Warning: " + warning));
            return good.value();
        }
        throw new Wrong(lines(((Read.Bad<T>) read).problems()));
    }

    private static String lines(List<Problem> problems) {
        String lines =
                problems.stream().limit(MOST_SHOWN).map(Problem::toString).collect(Collectors.joining("\n"));
        int more = problems.size() - MOST_SHOWN;
        return more > 0 ? lines + "\n... and " + more + " more" : lines;
    }

    /** The thing of that name, or a message with the name that may have been meant. */
    static <T> T named(String what, String name, Map<String, T> known) {
        T found = known.get(name);
        if (found == null) {
            throw new Wrong(Words.unknown(what, name, known.keySet()));
        }
        return found;
    }
}
