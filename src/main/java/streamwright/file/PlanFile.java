package streamwright.file;

import java.io.IOException;
import java.nio.file.Path;
import streamwright.plan.Plan;

/** Reads and writes plan files. */
public final class PlanFile {
    private PlanFile() {}

    /** Reads a plan, its own or a hand-made one; whether it is any good is for the audit to say. */
    public static Read<Plan> read(Path path) {
        Problems problems = new Problems();
        Place root = Tree.of(path, problems);
        return problems.outcome(root == null ? null : new PlanShape().read(root, problems));
    }

    /** Writes a plan, whole or not at all. */
    public static void write(Plan plan, Path path) throws IOException {
        WholeFile.write(path, text(plan));
    }

    /** The text of a plan file; the same for the same plan. */
    public static String text(Plan plan) {
        return PlanText.of(plan);
    }
}
