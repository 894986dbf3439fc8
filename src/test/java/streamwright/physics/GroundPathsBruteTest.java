package streamwright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import streamwright.yard.Point;

/**
 * Against all ways over all corners, without any of the search's pruning: the geometry library decides by its own
 * predicates whether a straight way meets an interior (DE-9IM pattern T********), and every pair is relaxed.
 */
class GroundPathsBruteTest {
    private static final GeometryFactory SHAPES = new GeometryFactory();

    /** Boxes and L shapes on whole numbers: many of them touch at corners and edges, none overlap. */
    private static List<double[]> grid(Random random) {
        boolean[][] taken = new boolean[12][12];
        List<double[]> rings = new ArrayList<>();
        for (int tries = 0; tries < 14; tries++) {
            int w = 2 + random.nextInt(3);
            int h = 2 + random.nextInt(3);
            int x = random.nextInt(12 - w);
            int y = random.nextInt(12 - h);
            boolean notched = random.nextBoolean();
            boolean free = true;
            for (int i = x; i < x + w; i++) {
                for (int j = y; j < y + h; j++) {
                    free &= !taken[i][j];
                }
            }
            if (free) {
                for (int i = x; i < x + w; i++) {
                    for (int j = y; j < y + h; j++) {
                        taken[i][j] = !(notched && i == x + w - 1 && j == y + h - 1);
                    }
                }
                rings.add(
                        notched
                                ? new double[] {
                                    x, y, x + w, y, x + w, y + h - 1, x + w - 1, y + h - 1, x + w - 1, y + h, x, y + h
                                }
                                : new double[] {x, y, x + w, y, x + w, y + h, x, y + h});
            }
        }
        return rings;
    }

    /** Stars about random centres, concave, and free to overlap. */
    private static List<double[]> stars(Random random) {
        List<double[]> rings = new ArrayList<>();
        for (int s = 0; s < 4; s++) {
            double x = 1 + random.nextDouble() * 10;
            double y = 1 + random.nextDouble() * 10;
            int points = 3 + random.nextInt(6);
            double[] ring = new double[2 * points];
            for (int k = 0; k < points; k++) {
                double radius = 0.4 + random.nextDouble() * 2.5;
                double angle = 2 * Math.PI * (k + 0.3 * random.nextDouble()) / points;
                ring[2 * k] = x + radius * Math.cos(angle);
                ring[2 * k + 1] = y + radius * Math.sin(angle);
            }
            rings.add(ring);
        }
        return rings;
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
    void matchesOnTouchingBoxes(int seed) {
        Random random = new Random(seed);
        List<Coordinate> places = new ArrayList<>();
        for (int k = 0; k < 20; k++) {
            places.add(new Coordinate(random.nextInt(13), random.nextInt(13)));
        }
        compare(grid(random), places);
    }

    @ParameterizedTest
    @ValueSource(ints = {11, 12, 13, 14, 15, 16, 17, 18})
    void matchesOnStars(int seed) {
        Random random = new Random(seed);
        List<Coordinate> places = new ArrayList<>();
        for (int k = 0; k < 20; k++) {
            places.add(new Coordinate(random.nextDouble() * 12, random.nextDouble() * 12));
        }
        compare(stars(random), places);
    }

    private static void compare(List<double[]> rings, List<Coordinate> places) {
        GroundPaths ground = GroundPathsTest.ground(rings.toArray(new double[0][]));
        double[][] expected = bruteForce(rings, places);
        int detours = 0;
        for (int a = 0; a < places.size(); a++) {
            for (int b = 0; b < a; b++) {
                Coordinate from = places.get(a);
                Coordinate to = places.get(b);
                double found = ground.path(new Point(from.x, from.y), new Point(to.x, to.y));
                if (Double.isInfinite(expected[a][b])) {
                    assertThat(found).as("%s to %s", from, to).isInfinite();
                } else {
                    assertThat(found).as("%s to %s", from, to).isEqualTo(expected[a][b], within(1e-9));
                    detours += expected[a][b] > from.distance(to) + 1e-9 ? 1 : 0;
                }
            }
        }
        assertThat(detours).as("pairs that must go around something").isGreaterThan(5);
    }

    private static double[][] bruteForce(List<double[]> rings, List<Coordinate> places) {
        List<Polygon> polygons =
                rings.stream().map(GroundPathsBruteTest::polygon).toList();
        List<Coordinate> nodes = new ArrayList<>(places);
        polygons.forEach(polygon -> nodes.addAll(Arrays.asList(polygon.getCoordinates())));
        int n = nodes.size();
        double[][] length = new double[n][n];
        for (int a = 0; a < n; a++) {
            for (int b = 0; b < a; b++) {
                length[a][b] = free(polygons, nodes.get(a), nodes.get(b))
                        ? nodes.get(a).distance(nodes.get(b))
                        : Double.POSITIVE_INFINITY;
                length[b][a] = length[a][b];
            }
        }
        for (int by = 0; by < n; by++) {
            for (int a = 0; a < n; a++) {
                for (int b = 0; b < n; b++) {
                    length[a][b] = Math.min(length[a][b], length[a][by] + length[by][b]);
                }
            }
        }
        return length;
    }

    private static boolean free(List<Polygon> polygons, Coordinate a, Coordinate b) {
        if (a.equals2D(b)) {
            return true;
        }
        LineString way = SHAPES.createLineString(new Coordinate[] {a, b});
        return polygons.stream()
                .noneMatch(polygon -> way.getEnvelopeInternal().intersects(polygon.getEnvelopeInternal())
                        && way.relate(polygon, "T********"));
    }

    private static Polygon polygon(double[] ring) {
        Coordinate[] shell = new Coordinate[ring.length / 2 + 1];
        for (int k = 0; k < shell.length - 1; k++) {
            shell[k] = new Coordinate(ring[2 * k], ring[2 * k + 1]);
        }
        shell[shell.length - 1] = shell[0];
        return SHAPES.createPolygon(shell);
    }
}
