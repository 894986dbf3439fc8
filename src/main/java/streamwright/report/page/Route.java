package streamwright.report.page;

import java.util.ArrayList;
import java.util.List;
import streamwright.physics.Ground;
import streamwright.yard.Obstacle;
import streamwright.yard.Point;

/** The way that a wire takes, corner by corner, found again from the lengths of shortest ways. */
final class Route {
    /** Lengths that are sums of roots agree no closer than this share. */
    private static final double CLOSE = 1e-9;

    private final Ground ground;
    private final List<Point> corners;

    Route(Ground ground, List<Obstacle> obstacles) {
        this.ground = ground;
        corners = obstacles.stream()
                .flatMap(obstacle -> obstacle.ring().stream())
                .map(corner -> new Point(corner.x(), corner.y()))
                .toList();
    }

    /** From one place to another, both among the points; a straight line where no way is known. */
    List<Point> points(Point from, Point to) {
        List<Point> points = new ArrayList<>(List.of(from));
        Point at = flat(from);
        Point end = flat(to);
        // each step leaves one corner behind for good
        for (int step = 0; step < corners.size() && bent(at, end); step++) {
            Point next = next(at, end);
            if (next == null) {
                break;
            }
            points.add(next);
            at = next;
        }
        points.add(to);
        return points;
    }

    private boolean bent(Point from, Point to) {
        return !close(ground.path(from, to), straight(from, to));
    }

    private @org.jspecify.annotations.Nullable Point next(Point from, Point to) {
        double whole = ground.path(from, to);
        for (Point corner : corners) {
            double leg = straight(from, corner);
            if (leg > CLOSE
                    && leg < whole
                    && close(ground.path(from, corner), leg)
                    && close(leg + ground.path(corner, to), whole)) {
                return corner;
            }
        }
        return null;
    }

    private static boolean close(double one, double other) {
        return Math.abs(one - other) <= CLOSE * Math.max(1, Math.max(one, other));
    }

    private static double straight(Point from, Point to) {
        return Math.hypot(to.x() - from.x(), to.y() - from.y());
    }

    private static Point flat(Point place) {
        return new Point(place.x(), place.y());
    }
}
