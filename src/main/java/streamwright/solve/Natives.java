package streamwright.solve;

import com.google.ortools.Loader;
import com.google.ortools.init.OrToolsVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;

/** The solver's native library: some 70 MB, unpacked into the folder for temporary files when it is first needed. */
final class Natives {
    private static final long ROOM = 100L << 20;

    private Natives() {}

    /** @throws SolverMissing if the library cannot be had */
    static void load() {
        try {
            Loader.loadNativeLibraries();
            // the loader keeps quiet where it could not unpack; the first call tells
            OrToolsVersion.getMajorNumber();
        } catch (RuntimeException | LinkageError e) {
            String folder = System.getProperty("java.io.tmpdir", "");
            throw new SolverMissing(
                    "The solver could not be started: its native library (70 MB) must be unpacked into the folder for"
                            + " temporary files, " + folder + ", and " + why(folder, e)
                            + ".\nMend that, or name another folder: java -Djava.io.tmpdir=FOLDER -jar streamwright.jar"
                            + " ...",
                    e);
        }
    }

    private static String why(String name, Throwable e) {
        try {
            Path folder = Path.of(name);
            if (!Files.isDirectory(folder)) {
                return "there is no such folder";
            }
            long room = Files.getFileStore(folder).getUsableSpace();
            if (room < ROOM) {
                return "that has only " + (room >> 20) + " MB of room";
            }
            Files.delete(Files.createTempFile(folder, "streamwright", ".part"));
        } catch (IOException | InvalidPathException refused) {
            return "nothing can be written there";
        }
        String said = String.valueOf(e.getMessage());
        // a call that found no library is told by its own signature, in quotes
        return said.startsWith("'") ? "it did not go there whole" : "that failed (" + said + ")";
    }
}
