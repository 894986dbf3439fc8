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
        // through a link, to what it stands for
        Path target = Files.exists(path) ? path.toRealPath() : path.toAbsolutePath();
        if (Files.exists(target) && !Files.isRegularFile(target)) {
            // a terminal or a pipe: nothing to keep whole
            Files.writeString(target, text);
            return;
        }
        long process = ProcessHandle.current().pid();
        Path beside = target.resolveSibling("." + target.getFileName() + "." + process + ".part");
        try {
            Files.write(beside, text.getBytes(StandardCharsets.UTF_8));
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
