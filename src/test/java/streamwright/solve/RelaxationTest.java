package streamwright.solve;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.ortools.Loader;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import streamwright.physics.GroundPaths;
import streamwright.yard.Yard;

/** What a bound with a held number says of other numbers, held against their own bounds. */
class RelaxationTest {
    private static final double ROUNDING = 1e-6;

    @BeforeAll
    static void load() {
        Loader.loadNativeLibraries();
    }

    /** The value is convex in the number of boards, so that no line through it by the worth of one more lies above it. */
    @Test
    void oneBoardMoreIsWorthNoMoreThanItSays() {
        int told = 0;
        for (long seed = 0; seed < 60; seed++) {
            Yard yard = AnyYard.of(seed, 3, 7);
            Site site = new Site(yard, GroundPaths.of(yard));
            if (!Obstructions.of(site).isEmpty()) {
                continue;
            }
            Items items = new Items(site);
            var workings = new Relaxation.Workings(new Strands(), 1, () -> false, () -> 60);
            Relaxation relaxation = new Relaxation(site, items, workings, MasterLimits.missingPrices(site, items));
            int most = site.strings.length;
            double[] value = new double[most + 1];
            double[] worth = new double[most + 1];
            for (int boards = 1; boards <= most; boards++) {
                relaxation.hold(0, Double.POSITIVE_INFINITY, boards, boards);
                value[boards] = relaxation.tighten(1e-4, bound -> false);
                double found = relaxation.boardsWorth();
                relaxation.hold(0, Double.POSITIVE_INFINITY, 0, Double.POSITIVE_INFINITY);
                relaxation.slim();
                worth[boards] = relaxation.boardsWorth();
                assertThat(Double.compare(worth[boards], found)).isZero();
            }
            for (int boards = 1; boards <= most; boards++) {
                for (int others = 1; others <= most; others++) {
                    if (Double.isFinite(value[boards]) && Double.isFinite(value[others]) && others > boards) {
                        assertThat(value[boards] + worth[boards] * (others - boards))
                                .as("any %d: %d boards and %d", seed, boards, others)
                                .isLessThanOrEqualTo(value[others] + ROUNDING * value[others]);
                        told += Math.abs(worth[boards]) > 1 ? 1 : 0;
                    }
                }
            }
        }
        assertThat(told).isGreaterThan(100);
    }
}
