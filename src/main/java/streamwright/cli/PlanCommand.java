package streamwright.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import streamwright.solve.Budget;
import streamwright.solve.Planner;
import streamwright.yard.Yard;

/** Lays a yard out. */
@Command(
        name = "plan",
        description = "Lays a yard out: boards, cables, IDs, ports, streams and channels, at the least cost.",
        footer = {
            "  streamwright plan yard.yaml -o plan.json              half a minute, the plan into a file",
            "  streamwright plan yard.yaml -o plan.json --time 300   five minutes",
            "  streamwright plan yard.yaml -o plan.json --effort 3   the same plan on every run",
            "  streamwright plan props.csv --controller-at 22,13     a prop list alone, the plan to stdout",
        },
        mixinStandardHelpOptions = true)
final class PlanCommand implements Callable<Integer> {
    private static final double USUAL_SECONDS = 30;

    /** The same on every machine, since the plan depends on it. */
    private static final int WORKERS_FOR_EFFORT = 2;

    @Mixin
    private YardSource source;

    @Option(
            names = {"-o", "--output"},
            paramLabel = "PLAN",
            description = "The file for the plan; the summary goes to stdout. Default: the plan goes to stdout, the"
                    + " summary to stderr.")
    private @Nullable Path planPath;

    @Option(
            names = "--report",
            paramLabel = "FILE.html",
            description = "Also the page with map, lid cards and commissioning list. More of it: sheets.")
    private @Nullable Path pagePath;

    @Option(
            names = "--time",
            paramLabel = "SECONDS",
            description = "How long to plan; a proof ends it early. Default: 30.")
    private @Nullable Double seconds;

    @Option(
            names = "--effort",
            paramLabel = "N",
            description = "How hard to plan, instead of a time, from 1 on: the same plan on every run.")
    private @Nullable Integer effort;

    @Option(
            names = "--seed",
            paramLabel = "N",
            defaultValue = "1",
            description = "Of all that is random. Default: ${DEFAULT-VALUE}.")
    private long seed;

    @Option(
            names = "--workers",
            paramLabel = "N",
            description = "Threads. Default: as many as processors; 2 with --effort.")
    private @Nullable Integer workers;

    @Option(
            names = "--json",
            description = "A yard that cannot be laid out is told of as JSON on stdout: arithmetic, clash, ways out.")
    private boolean json;

    @Mixin
    private Console console;

    @Override
    public Integer call() {
        check();
        Destination destination = Destination.of(planPath, pagePath, source.path());
        Yard yard = source.read(console);
        return new Planning(Planner::plan, yard, destination, console, json).run(this::budget);
    }

    private Budget budget(BooleanSupplier interrupted) {
        if (effort != null) {
            return new Budget(0, effort, seed, workers == null ? WORKERS_FOR_EFFORT : workers, interrupted);
        }
        return new Budget(
                seconds == null ? USUAL_SECONDS : seconds,
                0,
                seed,
                workers == null ? Threads.processors() : workers,
                interrupted);
    }

    private void check() {
        if (seconds != null && effort != null) {
            throw new Wrong("Give --time, or --effort instead of a time, not both.");
        }
        if (seconds != null && !(seconds > 0 && Double.isFinite(seconds))) {
            throw new Wrong("--time must be above 0 seconds, e.g. --time 60.");
        }
        if (effort != null && effort < 1) {
            throw new Wrong("--effort must be at least 1, e.g. --effort 3.");
        }
        Threads.check(workers);
    }
}
