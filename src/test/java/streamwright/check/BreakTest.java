package streamwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import streamwright.plan.Rule;

/** Each rule is broken on purpose, in each of its ways, and nothing else is. */
class BreakTest {
    static Stream<Wrong> wrongs() {
        return Stream.of(CarriedWrongly.list(), NumberedWrongly.list(), CabledWrongly.list(), PoweredWrongly.list())
                .flatMap(List::stream);
    }

    @ParameterizedTest
    @MethodSource("wrongs")
    void breaksThatRuleAlone(Wrong wrong) {
        List<Finding> found = wrong.scene().audit().list();
        assertThat(found).extracting(Finding::rule).containsOnly(wrong.rule());
        assertThat(found).extracting(Finding::about).containsExactly(wrong.about());
        assertThat(found).allSatisfy(finding -> {
            assertThat(finding.text()).startsWith(wrong.about() + ": ");
            assertThat(finding.figure()).isNotEqualTo(finding.limit());
        });
    }

    @Test
    void tellsOfEveryCableOfAnUnknownController() {
        List<Finding> found =
                Lane.scene().yard("controllers.0.id", "cellar").audit().list();
        assertThat(found).extracting(Finding::rule).containsOnly(Rule.JACK_ONCE);
        assertThat(found).extracting(Finding::about).containsExactly("shed jack 1", "shed jack 2", "shed jack 3");
    }

    @Test
    void tellsOfAllThatIsWrongInOneRun() {
        Scene scene = Lane.scene()
                .plan("boards.0.terminator", true)
                .plan("boards.0.switches", "0000")
                .plan("totals.nulls", 7)
                .yard("rules.hopMost", 9.0);
        assertThat(scene.audit().rules())
                .containsExactlyInAnyOrder(Rule.TERMINATOR_LAST, Rule.ID_SWITCHES, Rule.TOTALS, Rule.HOP_LENGTH);
    }

    @Test
    void everyRuleIsBroken() {
        Set<Rule> broken = EnumSet.noneOf(Rule.class);
        wrongs().forEach(wrong -> broken.add(wrong.rule()));
        assertThat(broken).containsExactlyInAnyOrder(Rule.values());
    }
}
