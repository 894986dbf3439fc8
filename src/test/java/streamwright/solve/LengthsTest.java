package streamwright.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.google.ortools.Loader;
import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPVariable;
import java.util.Arrays;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import streamwright.physics.GroundPaths;
import streamwright.yard.Yard;

/** Flows of what is left of a cable: rows by their theorem, and with the numbers of whole plans. */
class LengthsTest {
    @BeforeAll
    static void load() {
        Loader.loadNativeLibraries();
    }

    private static Site site(long seed) {
        Yard yard = AnyYard.of(seed, 3, 7);
        return new Site(yard, GroundPaths.of(yard));
    }

    /** Whether the longest cable is more than four fifths of the limit. */
    @Test
    void aLimitMattersWhereACableComesNearIt() {
        int near = 0;
        int far = 0;
        for (long seed = 0; seed < 400; seed++) {
            Site site = site(seed);
            Draft draft = new Draft(site);
            new FirstFit(draft).run();
            double longest = Arrays.stream(draft.cables)
                    .mapToDouble(cable -> cable.length)
                    .max()
                    .orElse(0);
            boolean matters = longest > 0.8 * site.cableMost;
            assertThat(Lengths.matter(site, Snapshot.of(draft)))
                    .as("any %d", seed)
                    .isEqualTo(matters);
            near += matters ? 1 : 0;
            far += matters ? 0 : 1;
        }
        assertThat(Lengths.matter(site(0), null)).isFalse();
        assertThat(near).isGreaterThanOrEqualTo(10);
        assertThat(far).isGreaterThan(10);
    }

    /** The row of all cables weighs what those of a plan measure, several boards at one spot too. */
    @Test
    void cablesTogether() {
        int plans = 0;
        for (long seed = 0; seed < 400; seed++) {
            Site site = site(seed);
            Draft draft = new Draft(site);
            new FirstFit(draft).run();
            if (!draft.complete()) {
                continue;
            }
            plans++;
            Point point = Point.of(site, new Items(site), Snapshot.of(draft));
            double[] lengths = Arrays.stream(draft.cables)
                    .filter(cable -> cable.size > 0)
                    .mapToDouble(cable -> cable.length)
                    .toArray();
            Row row = Lengths.together(site, lengths.length);
            double sum = 0;
            for (int spot = 0; spot < site.spots.length; spot++) {
                for (int from = 0; from < point.arc().length; from++) {
                    sum += point.arc()[from][spot] > 0 ? point.arc()[from][spot] * row.arc(from, spot) : 0;
                }
                for (int m = 0; m < site.offers.length; m++) {
                    sum += point.board()[spot][m] * row.board(spot, m);
                }
            }
            assertThat(sum).as("any %d", seed).isCloseTo(-Arrays.stream(lengths).sum(), within(1e-6));
            assertThat(row.low()).isEqualTo(-lengths.length * site.cableMost);
        }
        assertThat(plans).isGreaterThan(40);
    }

    /** A board takes a loop at either end, and each arc into its spot the rest of its length. */
    @Test
    void whatIsDrawnAtASpot() {
        Site site = site(3);
        int controllers = site.controllers.length;
        for (int spot = 0; spot < site.spots.length; spot++) {
            Row row = Lengths.drawn(site, spot);
            assertThat(row.low()).isZero();
            assertThat(row.high()).isEqualTo(Double.POSITIVE_INFINITY);
            assertThat(row.hasArcs()).isTrue();
            double[][] sums = new double[controllers + site.spots.length][site.spots.length];
            row.addArcs(2, sums);
            row.addArcs(1, sums);
            for (int from = 0; from < sums.length; from++) {
                for (int to = 0; to < site.spots.length; to++) {
                    double expected = to == spot ? site.loops() - site.arcLength(from, to) : 0;
                    assertThat(row.arc(from, to)).isEqualTo(expected);
                    assertThat(sums[from][to]).isCloseTo(3 * expected, within(1e-9));
                }
                assertThat(row.board(spot, 0)).isEqualTo(-site.loops());
                assertThat(row.board((spot + 1) % site.spots.length, 0))
                        .isEqualTo(site.spots.length == 1 ? -site.loops() : 0);
            }
        }
    }

    /** The flow of two arcs one behind the other, from the first controller to spot 0 and on to spot 1. */
    private static final class Chained {
        final Site site = site(3);
        final MPSolver solver = MPSolver.createSolver("GLOP");
        final MPConstraint[] drawn = new MPConstraint[site.spots.length];
        final Lengths lengths;
        final MPVariable firstArc;
        final MPVariable secondArc;

        /** What the arcs carry. */
        final MPVariable first;

        final MPVariable second;

        /** @param draws of the second spot */
        Chained(double whole, double draws) {
            for (int p = 0; p < drawn.length; p++) {
                drawn[p] = solver.makeConstraint(p == 1 ? draws : 0, Double.POSITIVE_INFINITY);
            }
            lengths = new Lengths(site, solver, drawn);
            firstArc = arc(whole);
            secondArc = arc(whole);
            first = lengths.add(0, 0, firstArc);
            second = lengths.add(site.controllers.length, 1, secondArc);
        }

        private MPVariable arc(double whole) {
            MPVariable arc = solver.makeNumVar(0, whole, "");
            solver.objective().setCoefficient(arc, 1);
            return arc;
        }

        void solve() {
            solver.objective().setCoefficient(first, 0.001);
            assertThat(solver.solve()).isEqualTo(MPSolver.ResultStatus.OPTIMAL);
        }
    }

    @Test
    void anArcCarriesNoMoreThanIsLeftAtItsStart() {
        Site site = new Chained(1, 1).site;
        assertThat(site.spots.length).isGreaterThan(1);
        double nearest = Double.POSITIVE_INFINITY;
        for (int c = 0; c < site.controllers.length; c++) {
            nearest = Math.min(nearest, site.hopFrom(c, 0));
        }
        Chained chained = new Chained(1, 2);
        double most = site.cableMost - nearest;
        assertThat(chained.lengths.most(0)).isEqualTo(site.cableMost);
        assertThat(chained.lengths.most(site.controllers.length)).isEqualTo(most);
        chained.solve();
        // what is drawn at the end goes through both arcs
        assertThat(chained.first.solutionValue()).isCloseTo(2, within(1e-6));
        assertThat(chained.second.solutionValue()).isCloseTo(2, within(1e-6));
        assertThat(chained.firstArc.solutionValue()).isCloseTo(2 / site.cableMost, within(1e-6));
        assertThat(chained.secondArc.solutionValue()).isCloseTo(2 / most, within(1e-6));
        // one more metre at the end costs what the arcs that carry it cost
        double[] duals = chained.lengths.duals();
        assertThat(duals).hasSize(chained.drawn.length);
        assertThat(duals[0]).isCloseTo(0.001 + 1 / site.cableMost, within(1e-6));
        assertThat(duals[1]).isCloseTo(duals[0] + 1 / most, within(1e-6));
    }

    /** The best price of a row is what the start offers less than the end asks, never above nothing. */
    @Test
    void theRoomOfAnArcThatIsOut() {
        Chained chained = new Chained(1, 2);
        int controllers = chained.site.controllers.length;
        double[] duals = new double[chained.drawn.length];
        duals[0] = 0.2;
        duals[1] = 0.5;
        assertThat(chained.lengths.room(duals, 0, 1)).isCloseTo(-0.5 * chained.lengths.most(0), within(1e-9));
        assertThat(chained.lengths.room(duals, controllers, 1))
                .isCloseTo(-0.3 * chained.lengths.most(controllers), within(1e-9));
        assertThat(chained.lengths.room(duals, controllers + 1, 0)).isZero();
    }
}
