package streamwright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import streamwright.yard.BoardCount;
import streamwright.yard.Costs;
import streamwright.yard.Obstacle;
import streamwright.yard.Point;
import streamwright.yard.Rules;
import streamwright.yard.Units;
import streamwright.yard.Work;
import streamwright.yard.Yard;

/** Detours worked out by hand. */
class GroundPathsTest {
    private static final Offset<Double> EXACT = within(1e-12);

    static GroundPaths ground(double[]... rings) {
        List<Obstacle> obstacles = new ArrayList<>();
        for (double[] ring : rings) {
            List<Point> points = new ArrayList<>();
            for (int k = 0; k < ring.length; k += 2) {
                points.add(new Point(ring[k], ring[k + 1]));
            }
            obstacles.add(new Obstacle("obstacle " + obstacles.size(), points));
        }
        return GroundPaths.of(new Yard(
                "ground",
                Units.M,
                40,
                0,
                1,
                false,
                List.of(),
                List.of(),
                BoardCount.FREE,
                List.of(),
                List.of(),
                obstacles,
                Rules.defaults(Units.M),
                Costs.defaults(Units.M),
                Work.DEFAULTS));
    }

    private static double[] box(double west, double south, double east, double north) {
        return new double[] {west, south, east, south, east, north, west, north};
    }

    private static double path(Ground ground, double ax, double ay, double bx, double by) {
        double there = ground.path(new Point(ax, ay), new Point(bx, by));
        assertThat(ground.path(new Point(bx, by), new Point(ax, ay))).isEqualTo(there);
        return there;
    }

    /** Half a graze within a side counts as on it, two grazes do not; on slanted sides, where a place on it is seldom exact. */
    @Test
    void aPlaceIsInsideBeyondAGrazeOfASide() {
        double[] ring = {0, 0, 10, 3, 4, 9, 3, 5};
        GroundPaths ground = ground(ring);
        for (int k = 0; k < ring.length; k += 2) {
            double ax = ring[k];
            double ay = ring[k + 1];
            double bx = ring[(k + 2) % ring.length];
            double by = ring[(k + 3) % ring.length];
            double length = Math.hypot(bx - ax, by - ay);
            for (double along : new double[] {0.1, 0.37, 0.5, 0.82}) {
                // the ring runs anticlockwise, so that its inside lies to the left
                for (double deep : new double[] {-2, 0, 0.5, 2}) {
                    double off = deep * Ring.GRAZE / length;
                    Point place = new Point(
                            ax + along * (bx - ax) - off * (by - ay), ay + along * (by - ay) + off * (bx - ax));
                    assertThat(ground.inside(place).isPresent())
                            .as("side %d at %s, %s grazes deep", k / 2, along, deep)
                            .isEqualTo(deep > 1);
                }
            }
        }
    }

    @Test
    void openGroundIsTheStraightWayPlusTheHeight() {
        assertThat(ground().path(new Point(0, 0, 1), new Point(3, 4, 3))).isEqualTo(7, EXACT);
    }

    @Test
    void aPondIsGoneAround() {
        Ground pond = ground(box(5, 5, 8, 9));
        // by (5,5) and (8,5)
        assertThat(path(pond, 4, 7, 9, 7)).isEqualTo(3 + 2 * Math.sqrt(5), EXACT);
        assertThat(pond.path(new Point(4, 7, 2), new Point(9, 7, -1))).isEqualTo(6 + 2 * Math.sqrt(5), EXACT);
        assertThat(path(pond, 4, 4, 9, 4)).isEqualTo(5, EXACT);
    }

    @Test
    void aRingMayRunEitherWayAndCloseItself() {
        Ground clockwise = ground(new double[] {5, 5, 5, 9, 8, 9, 8, 5, 5, 5});
        assertThat(path(clockwise, 4, 7, 9, 7)).isEqualTo(3 + 2 * Math.sqrt(5), EXACT);
    }

    @Test
    void wireMayRunAlongAnEdgeAndTouchACorner() {
        Ground pond = ground(box(5, 5, 8, 9));
        assertThat(path(pond, 4, 5, 9, 5)).isEqualTo(5, EXACT);
        assertThat(path(pond, 5, 6, 5, 8)).isEqualTo(2, EXACT);
        // diagonal through the corner (5,9)
        assertThat(path(pond, 4, 8, 6, 10)).isEqualTo(2 * Math.sqrt(2), EXACT);
        // the diagonal of the pond itself is not free
        assertThat(path(pond, 5, 5, 8, 9)).isEqualTo(7, EXACT);
    }

    @Test
    void aBayIsLeftByItsMouth() {
        // a U open to the north, walls 1 thick, bay from x 1 to 3 and y 1 to 6
        Ground bay = ground(new double[] {0, 0, 4, 0, 4, 6, 3, 6, 3, 1, 1, 1, 1, 6, 0, 6});
        // from (2,2) by (3,6) and (4,6) to (5,2)
        assertThat(path(bay, 2, 2, 5, 2)).isEqualTo(2 * Math.sqrt(17) + 1, EXACT);
        assertThat(path(bay, 1.5, 2, 2.5, 5)).isEqualTo(Math.sqrt(10), EXACT);
        // wire along the bay's floor
        assertThat(path(bay, 1, 1, 3, 1)).isEqualTo(2, EXACT);
    }

    @Test
    void aSharedEdgeIsAWay() {
        Ground pair = ground(box(0, 0, 4, 4), box(4, 0, 8, 4));
        assertThat(path(pair, 4, -1, 4, 5)).isEqualTo(6, EXACT);
        assertThat(path(pair, 2, -1, 6, 5)).isEqualTo(4 + 2 * Math.sqrt(5), EXACT);
    }

    @Test
    void aPartlySharedEdgeIsAWayToo() {
        // the second box leans on the first from y 1 to 3
        Ground pair = ground(box(0, 0, 4, 4), box(4, 1, 8, 3));
        assertThat(path(pair, 5, 0, 5, 4)).isEqualTo(2 + 2 * Math.sqrt(2), EXACT);
    }

    @Test
    void overlappingObstaclesHaveNoSeam() {
        Ground pair = ground(box(0, 0, 4.5, 4), box(4, 0, 8, 4));
        // around the east end: (8,0) and (8,4)
        assertThat(path(pair, 6, -1, 6, 5)).isEqualTo(4 + 2 * Math.sqrt(5), EXACT);
    }

    @Test
    void cornersThatTouchLetAWireThrough() {
        Ground pair = ground(box(0, 0, 4, 4), box(4, 4, 8, 8));
        assertThat(path(pair, 3, 5, 5, 3)).isEqualTo(2 * Math.sqrt(2), EXACT);
    }

    @Test
    void wallsThatOverlapAllAroundLeaveNoWay() {
        Ground court = ground(box(0, 0, 9, 1), box(8, 0, 9, 9), box(0, 8, 9, 9), box(0, 0, 1, 9));
        assertThat(path(court, 4, 4, 12, 4)).isInfinite();
        assertThat(path(court, 4, 4, 6, 6)).isEqualTo(2 * Math.sqrt(2), EXACT);
    }

    @Test
    void aPlaceInsideIsToldAndHasNoWay() {
        GroundPaths pond = ground(box(5, 5, 8, 9));
        assertThat(pond.inside(new Point(6, 6)).map(Obstacle::id)).contains("obstacle 0");
        assertThat(pond.inside(new Point(5, 6))).isEmpty();
        assertThat(pond.inside(new Point(5, 5))).isEmpty();
        assertThat(pond.inside(new Point(4, 6))).isEmpty();
        assertThat(path(pond, 6, 6, 20, 20)).isInfinite();
    }

    @Test
    void aRingWithoutAnAreaBlocksNothing() {
        assertThat(path(ground(new double[] {0, 0, 4, 4, 8, 8}), 0, 8, 8, 0)).isEqualTo(8 * Math.sqrt(2), EXACT);
    }

    @Test
    void aRoundPondOfManyPointsApproachesTheTangentsAndTheArc() {
        // circle of radius 5 about the origin, from (-13,0) to (13,0): two tangents of 12 and an arc of
        // 5 * (pi - 2 acos(5/13)); a 720-gon inscribed is shorter by less than a part in 10^4
        double[] ring = new double[1440];
        for (int k = 0; k < 720; k++) {
            ring[2 * k] = 5 * Math.cos(Math.toRadians(k / 2.0));
            ring[2 * k + 1] = 5 * Math.sin(Math.toRadians(k / 2.0));
        }
        double round = 24 + 5 * (Math.PI - 2 * Math.acos(5.0 / 13));
        assertThat(path(ground(ring), -13, 0, 13, 0)).isBetween(round * (1 - 1e-4), round);
    }

    @Test
    void farFromTheOriginNothingChanges() {
        double far = 999_000;
        Ground pond = ground(box(far + 5, far + 5, far + 8, far + 9), box(far + 8, far + 5, far + 9, far + 9));
        assertThat(path(pond, far + 8, far + 4, far + 8, far + 10)).isEqualTo(6, within(1e-9));
        assertThat(path(pond, far + 4, far + 7, far + 10, far + 7)).isEqualTo(4 + 2 * Math.sqrt(5), within(1e-9));
    }
}
