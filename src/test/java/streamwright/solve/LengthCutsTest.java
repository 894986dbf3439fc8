package streamwright.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import streamwright.physics.GroundPaths;
import streamwright.yard.Yard;

/** Rows that keep cables within their length: no plan breaks one, and a solution with too little cable does. */
class LengthCutsTest {
    private static final double ROUNDING = 1e-9;
    private static final int SEEDS = 500;

    /** The same with only so large a part of what leaves the controllers. */
    private static Point starved(Site site, Point plan, double part) {
        double[][] arc = new double[plan.arc().length][];
        for (int from = 0; from < arc.length; from++) {
            arc[from] = plan.arc()[from].clone();
            for (int to = 0; from < site.controllers.length && to < arc[from].length; to++) {
                arc[from][to] *= part;
            }
        }
        return new Point(arc, plan.used(), plan.board(), plan.served(), plan.led());
    }

    @Test
    void noPlanBreaksThemAndTooLittleCableDoes() {
        int limited = 0;
        int broken = 0;
        for (long seed = 0; seed < SEEDS; seed++) {
            Yard yard = AnyYard.of(seed, 2, 5);
            Site site = new Site(yard, GroundPaths.of(yard));
            Draft draft = new Draft(site);
            if (site.cableMost == Double.POSITIVE_INFINITY || !new FirstFit(draft).run()) {
                continue;
            }
            limited++;
            Point plan = Point.of(site, new Items(site), Snapshot.of(draft));
            LengthCuts cuts = new LengthCuts(site);
            assertThat(cuts.broken(plan)).as("yard %d", seed).isEmpty();
            List<Row> found = cuts.broken(starved(site, plan, 0.2));
            for (Row row : found) {
                assertThat(Weights.of(plan).sum(row)).as("yard %d", seed).isGreaterThan(-ROUNDING);
                assertThat(Weights.of(starved(site, plan, 0.2)).sum(row))
                        .as("yard %d", seed)
                        .isNegative();
            }
            broken += found.isEmpty() ? 0 : 1;
        }
        System.out.printf("%d plans with cables of limited length, %d broken with too little cable%n", limited, broken);
        assertThat(limited).isGreaterThan(SEEDS / 50);
        assertThat(broken).isGreaterThan(limited / 20);
    }
}
