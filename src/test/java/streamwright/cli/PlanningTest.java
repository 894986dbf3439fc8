package streamwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import streamwright.plan.Rule;
import streamwright.solve.Budget;
import streamwright.solve.Outcome;
import streamwright.yard.Yard;

/** What becomes of each end that the planner can come to, and of faults that it should not have. */
class PlanningTest {
    private final Yard yard = ShortLane.yard();

    @TempDir
    private Path folder;

    @Command
    private static final class Probe implements Callable<Integer> {
        private final Planning.Engine engine;
        private final Yard yard;
        private final Path plan;

        @Mixin
        private Console console;

        private Probe(Planning.Engine engine, Yard yard, Path plan) {
            this.engine = engine;
            this.yard = yard;
            this.plan = plan;
        }

        @Override
        public Integer call() {
            return new Planning(engine, yard, new Destination(plan), console, false)
                    .run(interrupted -> new Budget(1, 0, 1, 1, interrupted));
        }
    }

    private Path plan() {
        return folder.resolve("plan.json");
    }

    private Ran run(Planning.Engine engine) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int status = new CommandLine(new Probe(engine, yard, plan()))
                .setOut(new PrintWriter(out))
                .setErr(new PrintWriter(err, true))
                .setExecutionExceptionHandler((e, command, parsed) -> Complaints.ofRun(e, command))
                .execute();
        return new Ran(status, out.toString(), err.toString());
    }

    @Test
    void aPlanIsWritten() {
        Ran ran = run((yard, ground, budget, progress) ->
                new Outcome.Found(ShortLane.layout(yard), 0, 10, Double.NaN, false));
        assertThat(ran.status()).isZero();
        assertThat(ran.out()).contains("no plan costs less than 10.00");
        assertThat(Ran.of("check", ShortLane.YARD.toString(), plan().toString()).status())
                .isZero();
    }

    @Test
    void aPlanThatBreaksARuleIsNotWritten() {
        Ran ran = run((yard, ground, budget, progress) ->
                new Outcome.Found(ShortLane.unfinished(yard), 0, 10, Double.NaN, false));
        assertThat(ran.status()).isEqualTo(3);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).contains("nothing is written", "a fault of streamwright", "string-once", "lantern");
        assertThat(plan()).doesNotExist();
    }

    @Test
    void aFaultCostsNobodyThePlanThatIsThere() {
        Ran ran = run((yard, ground, budget, progress) -> {
            progress.found(ShortLane.layout(yard));
            progress.moved(0, 60, 10);
            throw new IllegalStateException("made for this test");
        });
        assertThat(ran.status()).isZero();
        assertThat(ran.err()).contains("a fault of streamwright", "made for this test", "holds all the same");
        assertThat(ran.out()).contains("no plan costs less than 10.00");
        assertThat(plan()).exists();
    }

    @Test
    void aSolverThatThrowsInAWorkerCostsNobodyThePlan() {
        Ran ran = run((yard, ground, budget, progress) -> {
            progress.found(ShortLane.layout(yard));
            throw new IllegalStateException(new OutOfMemoryError("made for this test"));
        });
        assertThat(ran.status()).isZero();
        assertThat(ran.err()).contains("is not enough. Give it more", "holds all the same");
        assertThat(ran.err()).doesNotContain("a fault of streamwright");
        assertThat(Ran.of("check", ShortLane.YARD.toString(), plan().toString()).status())
                .isZero();
    }

    @Test
    void aFaultWithoutAPlanIsAFault() {
        Ran ran = run((yard, ground, budget, progress) -> {
            throw new IllegalStateException("made for this test");
        });
        assertThat(ran.status()).isEqualTo(3);
        assertThat(ran.err()).contains("a fault of streamwright", "made for this test");
        assertThat(plan()).doesNotExist();
    }

    @Test
    void anEndWithoutAPlanSaysThatNothingIsProved() {
        Ran ran = run((yard, ground, budget, progress) -> new Outcome.Stopped());
        assertThat(ran.status()).isEqualTo(3);
        assertThat(ran.err()).contains("not proved", "What stands in the way", "frameRate");
    }

    @Test
    void anImpossibleYardIsToldWithItsRules() {
        Ran ran = run((yard, ground, budget, progress) -> new Outcome.Impossible(
                List.of(new Outcome.Obstruction(Rule.FUSE, "gate", 9, 4, "gate draws 9 of 4 amps"))));
        assertThat(ran.status()).isEqualTo(1);
        assertThat(ran.err()).startsWith("CAUTION: ").contains("cannot be laid out", "fuse: gate draws 9 of 4 amps");
    }
}
