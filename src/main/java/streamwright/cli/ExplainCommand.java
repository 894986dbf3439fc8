package streamwright.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import streamwright.physics.GroundPaths;
import streamwright.plan.Plan;
import streamwright.plan.Reason;
import streamwright.plan.Reason.About;
import streamwright.reason.Reasons;
import streamwright.report.Cautions;
import streamwright.yard.Yard;

/** The reasons for one prop, board, cable or the whole yard. */
@Command(
        name = "explain",
        description = "Says why a plan is as it is, and what the next-best choices would have cost.",
        footer = {
            "  streamwright explain yard.yaml plan.json              everything",
            "  streamwright explain yard.yaml plan.json gable        a prop",
            "  streamwright explain yard.yaml plan.json \"gable 2\"    one of its strings",
            "  streamwright explain yard.yaml plan.json B3           a board",
            "  streamwright explain yard.yaml plan.json \"shed 1\"     the cable at jack 1 of controller shed",
            "  streamwright explain yard.yaml plan.json yard         what holds for the whole yard",
            "  streamwright explain yard.yaml new.json --from old.json   what differs between two plans",
        },
        mixinStandardHelpOptions = true)
final class ExplainCommand implements Callable<Integer> {
    @Mixin
    private YardSource source;

    @Parameters(index = "1", paramLabel = "PLAN", description = "The plan file.")
    private Path planPath;

    @Parameters(
            index = "2",
            arity = "0..1",
            paramLabel = "WHAT",
            description = "A prop, string, board or cable, or 'yard'.")
    private @Nullable String what;

    @Option(
            names = "--from",
            paramLabel = "PLAN",
            description =
                    "Another plan of the yard: says what differs from it, the work between them and what it costs.")
    private @Nullable Path from;

    @Option(names = "--json", description = "Prints the reasons (or the difference) as JSON.")
    private boolean json;

    @Mixin
    private Console console;

    @Override
    public Integer call() {
        YardAndPlan read = YardAndPlan.read(source, planPath, console);
        Yard yard = read.yard();
        Plan plan = read.plan();
        if (from != null) {
            return difference(yard, Inputs.plan(from, console), plan);
        }
        Predicate<About> asked = what == null ? about -> true : Subject.of(what, yard, plan);
        List<Reason> reasons = reasons(plan.reasons(), asked);
        if (reasons.isEmpty() || reasons.stream().anyMatch(ExplainCommand::unfinished)) {
            reasons = reasons(Reasons.of(yard, GroundPaths.of(yard), plan), asked);
        }
        if (json) {
            console.out().println(Json.text(reasons));
            return Exit.DONE;
        }
        if (reasons.isEmpty()) {
            console.remark("The plan says no reason" + (what == null ? "." : " for " + what + "."));
        }
        if (reasons.stream().anyMatch(Cautions::needed)) {
            console.out().println(Cautions.POWER + "\n");
        }
        reasons.forEach(reason -> console.out().println(ReasonText.of(reason)));
        return Exit.DONE;
    }

    private int difference(Yard yard, Plan before, Plan after) {
        if (what != null) {
            throw new Wrong("With --from all that differs is told; leave '" + what + "' away.");
        }
        Compared compared = Compared.of(yard, before, after);
        console.out().println(json ? Json.text(compared) : compared.text(yard));
        return Exit.DONE;
    }

    private static List<Reason> reasons(List<Reason> all, Predicate<About> asked) {
        return all.stream().filter(reason -> asked.test(reason.about())).toList();
    }

    /** The plan was made in haste, without a look at what else could have been chosen. */
    private static boolean unfinished(Reason reason) {
        return reason.instead().isEmpty();
    }
}
