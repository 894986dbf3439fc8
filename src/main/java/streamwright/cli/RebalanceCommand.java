package streamwright.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import streamwright.plan.Plan;
import streamwright.solve.Keep;
import streamwright.yard.Yard;

/** Repairs an installed plan with the least work. */
@Command(
        name = "rebalance",
        description = "Mends every broken rule of an installed plan with the least work, then at the least cost.",
        footer = {
            "  streamwright rebalance yard.yaml --from installed.json -o next.json       next season's work order",
            "  streamwright rebalance yard.yaml --from installed.json --keep boards      hang and move no board",
            "  streamwright rebalance yard.yaml --from installed.json --dead B3          board B3 no longer works",
        },
        mixinStandardHelpOptions = true)
final class RebalanceCommand implements Callable<Integer> {
    private static final double USUAL_SECONDS = 21;

    @Mixin
    private YardSource source;

    @Option(
            names = "--from",
            required = true,
            paramLabel = "PLAN",
            description = "The plan as it is installed, also one made by hand or one that breaks rules.")
    private Path from;

    @Option(
            names = {"-o", "--output"},
            paramLabel = "PLAN",
            description = "The file for the repaired plan; the work order goes to stdout. Default: the plan goes to"
                    + " stdout, the work order to stderr.")
    private @Nullable Path planPath;

    @Option(
            names = "--keep",
            split = ",",
            paramLabel = "WHAT",
            description = "What must not change, with commas between: cables, boards, ports, channels.")
    private List<String> keep = new ArrayList<>();

    @Option(
            names = "--dead",
            split = ",",
            paramLabel = "BOARD",
            description = "Boards that no longer work, with commas between: each is replaced by one like it in its"
                    + " place, or taken down, whichever leads to less work.")
    private List<String> dead = new ArrayList<>();

    @Option(
            names = "--time",
            paramLabel = "SECONDS",
            defaultValue = "" + USUAL_SECONDS,
            description = "How long to look; a proof ends it early. Default: 21.")
    private double seconds;

    @Mixin
    private Threads threads = new Threads();

    @Mixin
    private Console console;

    @Override
    public Integer call() {
        if (!(seconds > 0 && Double.isFinite(seconds))) {
            throw new Wrong("--time must be above 0 seconds, e.g. --time 60.");
        }
        Destination destination = Destination.of(planPath, source.path());
        Set<Keep> kept = EnumSet.noneOf(Keep.class);
        keep.forEach(word -> kept.add(keep(word)));
        Yard yard = source.read(console);
        Plan old = Inputs.plan(from, console);
        Set<String> broken = Dead.of(old, dead);
        return new Rebalancing(
                        yard, old, broken, kept, destination, console, seconds, threads.seed(), threads.workers())
                .run();
    }

    private static Keep keep(String word) {
        for (Keep each : Keep.values()) {
            if (each.word().equals(word.strip())) {
                return each;
            }
        }
        throw new Wrong(Words.unknown("kind of change", word, List.of("cables", "boards", "ports", "channels")));
    }
}
