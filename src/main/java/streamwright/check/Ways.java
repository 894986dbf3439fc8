package streamwright.check;

import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;
import streamwright.yard.Obstacle;
import streamwright.yard.Point;

/**
 * Shortest planar paths that enter no obstacle's interior. A shortest path is a chain of straight lines that bends only
 * at convex corners of obstacles (Lozano-Perez and Wesley 1979, from memory), so Dijkstra's search over those that see
 * each other finds it; it is led by the straight distance to the goal. What sees what is worked out once, when asked.
 */
final class Ways {
    private final Ground ground;
    private final Coordinate[] corners;
    private final int[] @Nullable [] seenFromCorner;
    private final Map<Coordinate, int[]> seenFrom = new HashMap<>();

    Ways(List<Obstacle> obstacles) {
        ground = new Ground(obstacles);
        corners = ground.corners().toArray(Coordinate[]::new);
        seenFromCorner = new int[corners.length][];
    }

    /** The id of the obstacle whose interior holds a point, or null. */
    @Nullable
    String blocks(Point point) {
        return ground.inside(flat(point));
    }

    /** Length of the shortest planar path; not a number where there is none. */
    double between(Point from, Point to) {
        Coordinate start = flat(from);
        Coordinate goal = flat(to);
        if (ground.free()) {
            return start.distance(goal);
        }
        if (ground.inside(start) != null || ground.inside(goal) != null) {
            return Double.NaN;
        }
        return ground.clear(start, goal) ? start.distance(goal) : around(start, goal);
    }

    private record Reached(int corner, double length, double atLeast) {}

    private double around(Coordinate start, Coordinate goal) {
        double[] best = new double[corners.length];
        Arrays.fill(best, Double.POSITIVE_INFINITY);
        boolean[] beforeGoal = new boolean[corners.length];
        for (int corner : seenFrom(goal)) {
            beforeGoal[corner] = true;
        }
        PriorityQueue<Reached> open = new PriorityQueue<>(Comparator.comparingDouble(Reached::atLeast));
        reach(seenFrom(start), start, 0, goal, best, open);
        double whole = Double.POSITIVE_INFINITY;
        while (!open.isEmpty()) {
            Reached next = open.remove();
            if (next.atLeast >= whole) {
                break;
            }
            if (next.length > best[next.corner]) {
                continue;
            }
            if (beforeGoal[next.corner]) {
                whole = Math.min(whole, next.length + corners[next.corner].distance(goal));
            }
            reach(seenFromCorner(next.corner), corners[next.corner], next.length, goal, best, open);
        }
        return whole == Double.POSITIVE_INFINITY ? Double.NaN : whole;
    }

    private void reach(
            int[] seen, Coordinate at, double length, Coordinate goal, double[] best, PriorityQueue<Reached> open) {
        for (int corner : seen) {
            double further = length + at.distance(corners[corner]);
            if (further < best[corner]) {
                best[corner] = further;
                open.add(new Reached(corner, further, further + corners[corner].distance(goal)));
            }
        }
    }

    private int[] seenFromCorner(int corner) {
        int[] seen = seenFromCorner[corner];
        if (seen == null) {
            seen = look(corners[corner]);
            seenFromCorner[corner] = seen;
        }
        return seen;
    }

    private int[] seenFrom(Coordinate point) {
        return seenFrom.computeIfAbsent(point, this::look);
    }

    private int[] look(Coordinate point) {
        return IntStream.range(0, corners.length)
                .filter(corner -> ground.clear(point, corners[corner]))
                .toArray();
    }

    private static Coordinate flat(Point point) {
        return new Coordinate(point.x(), point.y());
    }
}
