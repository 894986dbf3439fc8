package streamwright.cli;

import java.nio.file.Path;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import streamwright.file.PlanFile;
import streamwright.file.Read;
import streamwright.plan.Plan;
import streamwright.yard.Yard;

/** A yard and a plan, read at the same time: files of ten thousand strings take seconds each. */
record YardAndPlan(Yard yard, Plan plan) {
    /** What is wrong with the yard is told first, and then alone. */
    static YardAndPlan read(YardSource source, Path planPath, Console console) {
        CompletableFuture<Read<Plan>> reading = CompletableFuture.supplyAsync(
                () -> PlanFile.read(planPath), task -> daemon(task).start());
        Yard yard = source.read(console);
        return new YardAndPlan(yard, Inputs.good(joined(reading), console));
    }

    /** A yard that cannot be read ends the program without waiting for the plan. */
    private static Thread daemon(Runnable task) {
        Thread thread = new Thread(task, "streamwright-plan");
        thread.setDaemon(true);
        return thread;
    }

    private static <T> T joined(CompletableFuture<T> reading) {
        try {
            return reading.join();
        } catch (CompletionException e) {
            if (e.getCause() instanceof RuntimeException fault) {
                throw fault;
            }
            if (e.getCause() instanceof Error fault) {
                throw fault;
            }
            throw e;
        }
    }
}
