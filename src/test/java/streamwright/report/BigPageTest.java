package streamwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.management.ManagementFactory;
import java.util.EnumSet;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import streamwright.report.Invented.Planned;
import streamwright.report.Sheets.Kind;

/** A thousand strings with a reason each. */
class BigPageTest {
    @Test
    void allSheetsOfAThousandStringsAreSmallAndQuick() {
        Planned planned = Invented.rows(1000, s -> "lantern " + (s + 1));
        assertThat(planned.plan().totals().strings()).isEqualTo(1000);
        var clock = ManagementFactory.getThreadMXBean();
        // of this thread alone, so that a busy machine does not count
        long start = clock.getCurrentThreadCpuTime();
        byte[] page = some(planned, EnumSet.of(Kind.PAGE)).get(Kind.PAGE.file());
        some(planned, EnumSet.complementOf(EnumSet.of(Kind.PAGE)));
        double seconds = (clock.getCurrentThreadCpuTime() - start) / 1e9;
        assertThat(Objects.requireNonNull(page).length).isBetween(500_000, 5_000_000);
        assertThat(seconds).isLessThan(3);
    }

    private static Map<String, byte[]> some(Planned planned, EnumSet<Kind> kinds) {
        return Sheets.of(planned.yard(), planned.plan(), kinds);
    }
}
