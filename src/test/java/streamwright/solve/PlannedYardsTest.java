package streamwright.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import streamwright.check.Audit;
import streamwright.check.Findings;
import streamwright.layout.Assembly;
import streamwright.physics.Ground;
import streamwright.physics.GroundPaths;
import streamwright.plan.Plan;
import streamwright.yard.Spot;
import streamwright.yard.Yard;

/** Yards of 12 to 25 strings, too many for brute force: every plan is clean and costs what the audit says. */
class PlannedYardsTest {
    private static final int YARDS = 60;
    private static final double SECONDS_MOST = 0.5;

    private static boolean planned(Yard yard, long seed) {
        Ground ground = GroundPaths.of(yard);
        Budget budget = new Budget(0, 1, seed, 1, new CpuLimit(SECONDS_MOST));
        Outcome outcome = Planner.plan(yard, ground, budget, Outcome.SILENT);
        if (!(outcome instanceof Outcome.Found found)) {
            return false;
        }
        Plan plan = Assembly.plan(yard, ground, found.layout()).proved(found.bound(), 0, seed);
        Findings findings = Audit.of(yard, plan);
        assertThat(findings.list()).as(yard.name()).isEmpty();
        assertThat(findings.restated().cost()).as(yard.name()).isCloseTo(found.cost(), within(1e-6));
        assertThat(found.bound()).as(yard.name()).isLessThanOrEqualTo(found.cost() + 1e-6);
        return true;
    }

    @Test
    void everyPlanIsClean() {
        List<Long> planned = LongStream.range(0, YARDS)
                .parallel()
                .filter(seed -> planned(AnyYard.of(seed, 12, 25), seed))
                .boxed()
                .toList();
        assertThat(planned).hasSizeGreaterThan(YARDS / 10);
    }

    @Test
    void spotsOfTheSameCoordinatesAreTwoPlaces() {
        Yard yard = TinyGarden.of(10208);
        assertThat(yard.spots().stream().map(Spot::at).distinct())
                .hasSizeLessThan(yard.spots().size());
        assertThat(planned(yard, 1)).isTrue();
    }
}
