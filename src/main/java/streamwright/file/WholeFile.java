package streamwright.file;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Writes files of which nobody ever sees a half. */
public final class WholeFile {
    private WholeFile() {}

    /** Writes UTF-8 text beside the file and then puts it in its place; an older file of that name is gone only then. */
    public static void write(Path path, String text) throws IOException {
        write(path, text.getBytes(StandardCharsets.UTF_8));
    }

    /** The same for a file that is no text. */
    public static void write(Path path, byte[] bytes) throws IOException {
        if (Files.exists(path) && !Files.isRegularFile(path)) {
            // a terminal or a pipe: nothing to keep whole, and no path of its own
            Files.write(path, bytes);
            return;
        }
        // through a link, to what it stands for
        Path target = Files.exists(path) ? path.toRealPath() : path.toAbsolutePath();
        long process = ProcessHandle.current().pid();
        Path beside = target.resolveSibling("." + target.getFileName() + "." + process + ".part");
        try {
            Files.write(beside, bytes);
            move(beside, target);
        } finally {
            Files.deleteIfExists(beside);
        }
    }

    private static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }
}
