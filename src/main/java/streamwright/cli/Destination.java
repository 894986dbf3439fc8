package streamwright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import streamwright.file.PlanFile;
import streamwright.plan.Plan;

/**
 * Where a plan goes, and its summary with it.
 *
 * @param file null for stdout
 */
record Destination(@Nullable Path file) {
    /** @throws Wrong if nothing can be written there, since planning for half a minute first would be in vain */
    static Destination of(@Nullable Path file, Path input) {
        if (file == null) {
            return new Destination(null);
        }
        Path folder = file.toAbsolutePath().getParent();
        if (folder == null || Files.isDirectory(file)) {
            throw new Wrong(file + " is a folder; name a file, e.g. -o " + file.resolve("plan.json") + ".");
        }
        if (!Files.isDirectory(folder)) {
            throw new Wrong(
                    "There is no folder " + folder + " to write " + file.getFileName() + " into; make it first.");
        }
        // a terminal or a pipe is written into; a file is replaced, which is the folder's to allow
        boolean replaced = !Files.exists(file) || Files.isRegularFile(file);
        if ((replaced && !Files.isWritable(folder)) || (Files.exists(file) && !Files.isWritable(file))) {
            throw new Wrong(file + " cannot be written; name another file or folder after -o.");
        }
        if (same(file, input)) {
            throw new Wrong("-o " + file + " would replace the yard itself; name another file.");
        }
        return new Destination(file);
    }

    private static boolean same(Path file, Path input) {
        try {
            return Files.exists(file) && Files.exists(input) && Files.isSameFile(file, input);
        } catch (IOException e) {
            return false;
        }
    }

    /** Writes the plan, and the summary to where results or where remarks go. */
    void write(Plan plan, String summary, Console console) {
        if (file == null) {
            console.out().print(PlanFile.text(plan));
            console.remark(summary);
            return;
        }
        try {
            PlanFile.write(plan, file);
        } catch (IOException e) {
            throw new Wrong(file + " could not be written (" + e.getMessage() + "); nothing was changed.");
        }
        console.out().println(summary);
        console.out().println("\nThe plan is in " + file + ".");
    }
}
