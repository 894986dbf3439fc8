package streamwright.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import streamwright.physics.GroundPaths;
import streamwright.yard.Obstacle;
import streamwright.yard.Point;

class WaysTest {
    private static final double EXACT = 1e-9;

    private static Obstacle box(String id, double west, double south, double east, double north) {
        return ring(id, west, south, east, south, east, north, west, north);
    }

    private static Obstacle ring(String id, double... coordinates) {
        List<Point> ring = new ArrayList<>();
        for (int i = 0; i < coordinates.length; i += 2) {
            ring.add(new Point(coordinates[i], coordinates[i + 1]));
        }
        return new Obstacle(id, ring);
    }

    private static double between(List<Obstacle> obstacles, double... ends) {
        return new Ways(obstacles).between(new Point(ends[0], ends[1]), new Point(ends[2], ends[3]));
    }

    @Test
    void goesStraightWhereNothingIsInTheWay() {
        assertThat(between(List.of(), 0, 0, 3, 4)).isEqualTo(5);
        assertThat(between(List.of(box("pond", 10, 10, 11, 11)), 0, 0, 3, 4)).isEqualTo(5);
    }

    @Test
    void goesAroundTheNearerSide() {
        // two hypotenuses of 1 by 2, and 2 along the edge
        assertThat(between(List.of(box("pond", 1, -1, 3, 2)), 0, 0, 4, 0))
                .isCloseTo(2 * Math.sqrt(2) + 2, within(EXACT));
    }

    @Test
    void runsAlongAnEdge() {
        assertThat(between(List.of(box("pond", 1, 0, 3, 2)), 0, 0, 4, 0)).isCloseTo(4, within(EXACT));
        // a slanting edge on which no rounded point lies exactly
        assertThat(between(List.of(ring("slope", 0, 0, 3, 1, 3, -5)), 0.3, 0.1, 2.7, 0.9))
                .isCloseTo(Math.hypot(2.4, 0.8), within(EXACT));
    }

    @Test
    void runsAlongAnEdgeThatTwoShare() {
        List<Obstacle> both = List.of(box("left", 0, 0, 2, 9), box("right", 2, 0, 4, 9));
        assertThat(between(both, 2, -1, 2, 10)).isCloseTo(11, within(EXACT));
        // and not where they overlap
        List<Obstacle> overlapping = List.of(box("left", 0, 0, 2.5, 9), box("right", 2, 0, 4, 9));
        assertThat(between(overlapping, 2, -1, 2, 10)).isCloseTo(9 + 2 * Math.hypot(2, 1), within(EXACT));
    }

    @Test
    void passesBetweenTwoThatTouchAtACorner() {
        List<Obstacle> both = List.of(box("south west", 0, 0, 2, 2), box("north east", 2, 2, 4, 4));
        assertThat(between(both, 0, 4, 4, 0)).isCloseTo(Math.hypot(4, 4), within(EXACT));
    }

    @Test
    void findsItsWayOutOfACourt() {
        // a court open to the west: out at (0, 1) or (0, 3), around, and along the outer wall
        Obstacle court = ring("court", 0, 0, 6, 0, 6, 4, 0, 4, 0, 3, 5, 3, 5, 1, 0, 1);
        double out = Math.hypot(4, 1);
        assertThat(between(List.of(court), 4, 2, 7, 2)).isCloseTo(out + 1 + 6 + Math.hypot(1, 2), within(EXACT));
    }

    @Test
    void hasNoWayInsideOrOutOfAMoat() {
        assertThat(between(List.of(box("pond", 0, 0, 2, 2)), 1, 1, 5, 5)).isNaN();
        List<Obstacle> moat = List.of(
                box("south", 0, 0, 4, 1), box("north", 0, 3, 4, 4), box("west", 0, 0, 1, 4), box("east", 3, 0, 4, 4));
        assertThat(between(moat, 2, 2, 9, 9)).isNaN();
        assertThat(new Ways(moat).blocks(new Point(2, 2))).isNull();
        assertThat(new Ways(moat).blocks(new Point(0.5, 2))).isEqualTo("west");
    }

    @Test
    void takesRingsEitherWayRoundAndClosedOrNot() {
        Obstacle clockwise = ring("pond", 1, 2, 3, 2, 3, -1, 1, -1, 1, 2);
        assertThat(between(List.of(clockwise), 0, 0, 4, 0)).isCloseTo(2 * Math.sqrt(2) + 2, within(EXACT));
    }

    /** The planner finds its ways with arithmetic of its own; two programs that agree are hardly wrong in the same way. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void agreesWithThePlanner(long seed) {
        Random random = new Random(seed);
        for (int trial = 0; trial < 12; trial++) {
            List<Obstacle> obstacles = new ArrayList<>();
            for (int i = 0; i < 1 + random.nextInt(8); i++) {
                obstacles.add(random.nextBoolean() ? randomBox(i, random) : randomTriangle(i, random));
            }
            Ways own = new Ways(obstacles);
            GroundPaths planner = GroundPaths.of(Edit.set(Lane.yard(), "obstacles", obstacles));
            for (int pair = 0; pair < 40; pair++) {
                Point from = new Point(random.nextInt(25), random.nextInt(25));
                Point to = new Point(random.nextInt(25), random.nextInt(25));
                double there = own.between(from, to);
                double planned = planner.path(from, to);
                if (Double.isNaN(there)) {
                    assertThat(planned)
                            .as("%s to %s in %s", from, to, obstacles)
                            .isInfinite();
                } else {
                    assertThat(there).as("%s to %s in %s", from, to, obstacles).isCloseTo(planned, within(1e-5));
                }
            }
        }
    }

    private static Obstacle randomBox(int id, Random random) {
        int west = random.nextInt(20);
        int south = random.nextInt(20);
        return box("o" + id, west, south, west + 1 + random.nextInt(6), south + 1 + random.nextInt(6));
    }

    private static Obstacle randomTriangle(int id, Random random) {
        int x = random.nextInt(18);
        int y = random.nextInt(18);
        return ring("o" + id, x, y, x + 2 + random.nextInt(5), y + random.nextInt(2), x + random.nextInt(3), y + 3);
    }
}
