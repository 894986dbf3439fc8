package streamwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import streamwright.check.Audit;
import streamwright.file.PlanFile;
import streamwright.file.Read;
import streamwright.file.YardFile;
import streamwright.plan.Plan;
import streamwright.yard.Yard;

/** The next season of the demo's home under what its owner does not want changed. */
class RebalanceKeepTest {
    private static final Path YARD = Path.of("demo/home/next-season.yaml");
    private static final Path PLAN = Path.of("demo/home/plan.json");

    @TempDir
    private Path folder;

    private Ran rebalance(String keep, String seconds) {
        return Ran.of(
                "rebalance",
                YARD.toString(),
                "--from",
                PLAN.toString(),
                "-o",
                folder.resolve("next.json").toString(),
                "--keep",
                keep,
                "--time",
                seconds);
    }

    private static Map<String, Long> channels(Plan plan) {
        Map<String, Long> channels = new HashMap<>();
        plan.boards()
                .forEach(board -> board.ports()
                        .forEach(port -> port.strings()
                                .forEach(string ->
                                        channels.put(string.prop() + " " + string.string(), string.channel()))));
        return channels;
    }

    /** Three new strings need channels that no other has, and streams whose windows do not meet. */
    @Test
    void aHomeGrowsThoughEveryStringKeepsItsChannels() {
        Ran ran = rebalance("channels", "6");
        assertThat(ran.status()).as(ran.err()).isZero();
        Plan old = ((Read.Good<Plan>) PlanFile.read(PLAN)).value();
        Plan next = ((Read.Good<Plan>) PlanFile.read(folder.resolve("next.json"))).value();
        Yard yard = ((Read.Good<Yard>) YardFile.read(YARD)).value();
        assertThat(Audit.of(yard, next).list()).isEmpty();
        assertThat(channels(next)).containsAllEntriesOf(channels(old)).hasSize(76);
    }

    /** Its streams are too slow: of cables, boards and ports something has to change. No more than 5 s beyond the time. */
    @Test
    void whatClashesIsToldInTime() {
        long begin = System.nanoTime();
        Ran ran = rebalance("cables,boards,ports,channels", "3");
        assertThat((System.nanoTime() - begin) / 1e9).isLessThan(8 + 2);
        assertThat(ran.status()).isEqualTo(Exit.BROKEN);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).contains("It cannot be mended while ", "kept.");
        assertThat(folder.resolve("next.json")).doesNotExist();
    }
}
