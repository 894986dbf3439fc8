package streamwright.report.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import streamwright.report.Demo;
import streamwright.report.walk.Walk;

/** What a plan's cost is made of. */
class LedgerTest {
    @ParameterizedTest
    @ValueSource(strings = {"home", "trail"})
    void theLinesAddUpToTheCost(String demo) {
        Walk walk = Demo.walk(demo);
        List<Ledger> lines = Ledger.of(walk);
        double sum = lines.subList(0, lines.size() - 1).stream()
                .mapToDouble(line -> money(line.sum()))
                .sum();
        assertThat(sum).isCloseTo(walk.plan().cost(), within(0.005 + 1e-9));
        assertThat(money(lines.get(lines.size() - 1).sum())).isCloseTo(sum, within(1e-6));
        assertThat(lines).extracting(Ledger::item).doesNotHaveDuplicates();
    }

    private static double money(String text) {
        return Double.parseDouble(text.replace(",", ""));
    }
}
