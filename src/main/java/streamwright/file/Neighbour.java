package streamwright.file;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/** The path that a file names: relative to that file, or absolute. */
final class Neighbour {
    private Neighbour() {}

    static @Nullable Path path(Path file, Place named, Problems problems) {
        String text = Words.ANY.read(named, problems);
        if (text == null) {
            return null;
        }
        try {
            return file.resolveSibling(text);
        } catch (InvalidPathException e) {
            problems.add(named.wrong("a path"));
            return null;
        }
    }
}
