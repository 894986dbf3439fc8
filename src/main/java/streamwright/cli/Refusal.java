package streamwright.cli;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;

/** Why a file could not be written, in words; the system's own message may be no more than the file's name. */
final class Refusal {
    private Refusal() {}

    static String of(IOException e) {
        if (e instanceof NoSuchFileException) {
            return "no file can be made there";
        }
        if (e instanceof AccessDeniedException) {
            return "permission denied";
        }
        String reason = e instanceof FileSystemException system ? system.getReason() : e.getMessage();
        return reason == null ? e.getClass().getSimpleName() : reason;
    }
}
