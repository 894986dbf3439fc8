package streamwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import streamwright.check.Audit;
import streamwright.check.Finding;
import streamwright.check.Findings;
import streamwright.file.PlanFile;
import streamwright.file.Read;
import streamwright.file.YardFile;
import streamwright.physics.GroundPaths;
import streamwright.plan.Plan;
import streamwright.solve.Budget;
import streamwright.solve.Keep;
import streamwright.solve.Repair;
import streamwright.solve.Repaired;
import streamwright.yard.Yard;

/** The next season of the demo's home under what its owner does not want changed. */
class RebalanceKeepTest {
    private static final Path YARD = Path.of("demo/home/next-season.yaml");
    private static final Path PLAN = Path.of("demo/home/plan.json");

    @TempDir
    private Path folder;

    private static Map<String, Long> channels(Plan plan) {
        Map<String, Long> channels = new HashMap<>();
        plan.boards()
                .forEach(board -> board.ports()
                        .forEach(port -> port.strings()
                                .forEach(string ->
                                        channels.put(string.prop() + " " + string.string(), string.channel()))));
        return channels;
    }

    /**
     * Three new strings need channels that no other has, and streams whose windows do not meet. It ends with the first
     * plan that the audit finds clean, which a quiet machine of two cores has after 2 s.
     */
    @Test
    void aHomeGrowsThoughEveryStringKeepsItsChannels() {
        Plan old = ((Read.Good<Plan>) PlanFile.read(PLAN)).value();
        Yard yard = ((Read.Good<Yard>) YardFile.read(YARD)).value();
        AtomicBoolean found = new AtomicBoolean();
        Repaired repaired = Repair.of(
                yard,
                GroundPaths.of(yard),
                old,
                Set.of(),
                Set.of(Keep.CHANNELS),
                plan -> {
                    Findings findings = Audit.of(yard, plan);
                    found.compareAndSet(false, findings.clean());
                    return new Repaired.Verdict(
                            findings.list().stream().map(Finding::rule).toList(), findings.restated());
                },
                new Budget(60, 0, 1, 2, found::get));
        assertThat(repaired).isInstanceOf(Repaired.Mended.class);
        Plan next = ((Repaired.Mended) repaired).plan();
        assertThat(Audit.of(yard, next).list()).isEmpty();
        assertThat(channels(next)).containsAllEntriesOf(channels(old)).hasSize(76);
    }

    /** Its streams are too slow: of cables, boards and ports something has to change. No more than 5 s beyond the time. */
    @Test
    void whatClashesIsToldInTime() {
        long begin = System.nanoTime();
        Ran ran = Ran.of(
                "rebalance",
                YARD.toString(),
                "--from",
                PLAN.toString(),
                "-o",
                folder.resolve("next.json").toString(),
                "--keep",
                "cables,boards,ports,channels",
                "--time",
                "3");
        assertThat((System.nanoTime() - begin) / 1e9).isLessThan(8 + 2);
        // whether it is proved in so short a time hangs on the machine
        assertThat(ran.status()).isIn(Exit.BROKEN, Exit.STOPPED);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).contains(" while ", " kept");
        assertThat(folder.resolve("next.json")).doesNotExist();
    }
}
