package streamwright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import streamwright.file.PlanFile;
import streamwright.file.WholeFile;
import streamwright.plan.Plan;
import streamwright.report.page.PlanPage;
import streamwright.yard.Yard;

/**
 * Where a plan goes, and its summary and page with it.
 *
 * @param file null for stdout
 * @param page null for none
 */
record Destination(@Nullable Path file, @Nullable Path page) {
    Destination(@Nullable Path file) {
        this(file, null);
    }

    /**
     * Where the plan and its page go; both may be null.
     *
     * @throws Wrong if nothing can be written there, since planning for half a minute first would be in vain
     */
    static Destination of(@Nullable Path file, @Nullable Path page, Path input) {
        if (file != null) {
            check("-o", file, input);
        }
        if (page != null) {
            check("--report", page, input);
        }
        if (page != null && page.equals(file)) {
            throw new Wrong("-o and --report name one file; name two.");
        }
        return new Destination(file, page);
    }

    /** Where a plan without a page goes; {@code file} may be null. */
    static Destination of(@Nullable Path file, Path input) {
        return of(file, null, input);
    }

    /** @throws Wrong if no file can be written there, or only over the input */
    static void check(String option, Path file, Path input) {
        Path folder = file.toAbsolutePath().getParent();
        if (folder == null || Files.isDirectory(file)) {
            throw new Wrong(file + " is a folder; name a file, e.g. " + option + " " + file.resolve("plan.json") + ".");
        }
        if (!Files.isDirectory(folder)) {
            throw new Wrong(
                    "There is no folder " + folder + " to write " + file.getFileName() + " into; make it first.");
        }
        try {
            WholeFile.tryOut(file);
        } catch (IOException e) {
            throw new Wrong(file + " cannot be written (" + Refusal.of(e) + "); name another file or folder after "
                    + option + ".");
        }
        if (same(file, input)) {
            throw new Wrong(option + " " + file + " would replace the yard itself; name another file.");
        }
    }

    private static boolean same(Path file, Path input) {
        try {
            return Files.exists(file) && Files.exists(input) && Files.isSameFile(file, input);
        } catch (IOException e) {
            return false;
        }
    }

    /** Writes the plan, and the summary to where results or where remarks go; a quiet run leaves the file alone. */
    void write(Plan plan, String summary, Console console) {
        if (file == null) {
            console.out().print(PlanFile.text(plan));
            if (console.out().checkError() && !Results.unwanted(console.out())) {
                throw new Wrong("The plan could not be written to stdout.\n" + rescued(plan));
            }
            console.remark(summary);
            return;
        }
        try {
            PlanFile.write(plan, file);
        } catch (IOException e) {
            throw new Wrong(file + " could not be written (" + Refusal.of(e) + "); what stood there is as it was.\n"
                    + rescued(plan));
        }
        if (!console.quiet()) {
            console.out().println(summary);
            console.out().println("\nThe plan is in " + file + ".");
        }
    }

    /** What was searched for so long must not be lost for want of room in one place. */
    private static String rescued(Plan plan) {
        try {
            Path file = Files.createTempFile("plan-", ".json");
            PlanFile.write(plan, file);
            return "The plan is in " + file + " instead: make room, then move it to where it belongs.";
        } catch (IOException e) {
            return "Nor could it be put into the folder for temporary files (" + Refusal.of(e)
                    + "): make room, then plan again.";
        }
    }

    /** Writes the plan's page, if one was asked for. */
    void writePage(Yard yard, Plan plan, Console console) {
        if (page == null) {
            return;
        }
        try {
            WholeFile.write(page, PlanPage.of(yard, plan).html());
        } catch (IOException e) {
            throw new Wrong(page + " could not be written (" + Refusal.of(e)
                    + "). The plan itself is written: name another page with 'streamwright sheets --only page'.");
        }
        console.remark("The page is in " + page + ".");
    }
}
