package streamwright.file;

import java.util.List;

/** What came of reading a file: the whole of it, or all of its problems. */
public sealed interface Read<T> {
    /** The file is right; what it says may still be doubtful. */
    record Good<T>(T value, List<Problem> warnings) implements Read<T> {
        public Good {
            warnings = List.copyOf(warnings);
        }
    }

    /** The file is wrong; the problems stand in the order of the file, at least one. */
    record Bad<T>(List<Problem> problems) implements Read<T> {
        public Bad {
            problems = List.copyOf(problems);
            if (problems.isEmpty()) {
                throw new IllegalArgumentException("a bad file has problems");
            }
        }
    }
}
