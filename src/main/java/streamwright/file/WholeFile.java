package streamwright.file;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

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
        Path target = target(path);
        Path beside = beside(target);
        try {
            writeThrough(beside, bytes);
            move(beside, target);
        } finally {
            Files.deleteIfExists(beside);
        }
    }

    /**
     * Tries whether a file could be written there, and leaves nothing behind: what the permissions say is not all, since
     * a file system may be read-only or full.
     */
    public static void tryOut(Path path) throws IOException {
        if (Files.exists(path) && !Files.isWritable(path)) {
            throw new AccessDeniedException(path.toString());
        }
        if (!Files.exists(path) || Files.isRegularFile(path)) {
            Path beside = beside(target(path));
            try {
                Files.write(beside, new byte[1]);
            } finally {
                Files.deleteIfExists(beside);
            }
        }
    }

    /** Through a link, to what it stands for. */
    private static Path target(Path path) throws IOException {
        return Files.exists(path) ? path.toRealPath() : path.toAbsolutePath();
    }

    private static Path beside(Path target) {
        long process = ProcessHandle.current().pid();
        return target.resolveSibling("." + target.getFileName() + "." + process + ".part");
    }

    /** Onto the disk before the name moves, so that not even a power failure leaves an empty file. */
    private static void writeThrough(Path path, byte[] bytes) throws IOException {
        try (FileChannel file = FileChannel.open(
                path, StandardOpenOption.CREATE, StandardOpenOption.WRITE, StandardOpenOption.TRUNCATE_EXISTING)) {
            ByteBuffer rest = ByteBuffer.wrap(bytes);
            while (rest.hasRemaining()) {
                file.write(rest);
            }
            file.force(true);
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
