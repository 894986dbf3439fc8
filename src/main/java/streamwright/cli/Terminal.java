package streamwright.cli;

import java.io.Console;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Whether a person watches. */
final class Terminal {
    private Terminal() {}

    /** Whether the error stream goes to a terminal, as far as one can tell. */
    static boolean showsErrors() {
        Path stderr = Path.of("/proc/self/fd/2");
        if (Files.isSymbolicLink(stderr)) {
            try {
                String target = Files.readSymbolicLink(stderr).toString();
                return target.startsWith("/dev/pts/") || target.startsWith("/dev/tty") || target.equals("/dev/console");
            } catch (IOException e) {
                return false;
            }
        }
        return hasConsole();
    }

    // null before Java 22; since then a method of the console tells
    @SuppressWarnings("SystemConsoleNull")
    private static boolean hasConsole() {
        Console console = System.console();
        return console != null && interactive(console);
    }

    private static boolean interactive(Console console) {
        try {
            return (boolean) Console.class.getMethod("isTerminal").invoke(console);
        } catch (ReflectiveOperationException e) {
            return true;
        }
    }
}
