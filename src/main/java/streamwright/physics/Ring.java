package streamwright.physics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import streamwright.yard.Point;

/** An obstacle's outline, anticlockwise, and what it blocks. Any simple polygon, concave too. */
final class Ring {
    /**
     * How deep a straight way may seem to enter an obstacle, in the yard's units: far more than doubles lose at
     * coordinates of a million, far less than any length that is written.
     */
    static final double GRAZE = 1e-7;

    final double[] x;
    final double[] y;
    private final double west;
    private final double east;
    private final double south;
    private final double north;

    private Ring(double[] x, double[] y) {
        this.x = x;
        this.y = y;
        west = Arrays.stream(x).min().orElse(0);
        east = Arrays.stream(x).max().orElse(0);
        south = Arrays.stream(y).min().orElse(0);
        north = Arrays.stream(y).max().orElse(0);
    }

    /** The outline without repeated points; a ring without an area blocks nothing. */
    static Ring of(List<Point> outline) {
        List<Point> points = new ArrayList<>();
        for (Point point : outline) {
            if (points.isEmpty() || !samePlace(points.get(points.size() - 1), point)) {
                points.add(point);
            }
        }
        while (points.size() > 1 && samePlace(points.get(0), points.get(points.size() - 1))) {
            points.remove(points.size() - 1);
        }
        double[] x = points.stream().mapToDouble(Point::x).toArray();
        double[] y = points.stream().mapToDouble(Point::y).toArray();
        if (twiceArea(x, y) < 0) {
            reverse(x);
            reverse(y);
        }
        return new Ring(x, y);
    }

    int size() {
        return x.length;
    }

    int after(int k) {
        return k + 1 < x.length ? k + 1 : 0;
    }

    int before(int k) {
        return k > 0 ? k - 1 : x.length - 1;
    }

    /** Whether the outline turns outwards at this corner: only there can a shortest way bend around it. */
    boolean convex(int k) {
        int p = before(k);
        int n = after(k);
        return (x[k] - x[p]) * (y[n] - y[k]) - (y[k] - y[p]) * (x[n] - x[k]) > 0;
    }

    /** Whether a way from a place to this corner can bend around it: the corner's two edges lie on one side of it. */
    boolean tangent(double px, double py, int k) {
        int p = before(k);
        int n = after(k);
        double one = off(px, py, x[k], y[k], x[p], y[p]);
        double other = off(px, py, x[k], y[k], x[n], y[n]);
        return Math.min(one, other) >= -GRAZE || Math.max(one, other) <= GRAZE;
    }

    /** Whether a place is inside, farther from the edge than a graze. */
    boolean contains(double px, double py) {
        if (px <= west || px >= east || py <= south || py >= north) {
            return false;
        }
        boolean inside = false;
        for (int k = 0, last = x.length - 1; k < x.length; last = k++) {
            if (distance(px, py, last, k) <= GRAZE) {
                return false;
            }
            // even-odd rule along the ray to the east
            if ((y[k] > py) != (y[last] > py) && px < x[last] + (py - y[last]) / (y[k] - y[last]) * (x[k] - x[last])) {
                inside = !inside;
            }
        }
        return inside;
    }

    /** Whether the straight way between two places runs through the inside. */
    boolean blocks(double ax, double ay, double bx, double by) {
        if (Math.max(ax, bx) <= west
                || Math.min(ax, bx) >= east
                || Math.max(ay, by) <= south
                || Math.min(ay, by) >= north) {
            return false;
        }
        double length = Math.hypot(bx - ax, by - ay);
        // a way of no length enters nothing
        if (length <= GRAZE || onOneSide(ax, ay, bx, by)) {
            return false;
        }
        double[] cuts = cuts(ax, ay, bx, by, length);
        for (int c = 1; c < cuts.length; c++) {
            double middle = (cuts[c - 1] + cuts[c]) / 2 / length;
            if (cuts[c] - cuts[c - 1] > GRAZE && contains(ax + middle * (bx - ax), ay + middle * (by - ay))) {
                return true;
            }
        }
        return false;
    }

    private boolean onOneSide(double ax, double ay, double bx, double by) {
        boolean left = false;
        boolean right = false;
        for (int k = 0; k < x.length && !(left && right); k++) {
            double off = off(ax, ay, bx, by, x[k], y[k]);
            left |= off > GRAZE;
            right |= off < -GRAZE;
        }
        return !(left && right);
    }

    /** Distances from a at which the way meets the outline, its ends among them, in order. */
    private double[] cuts(double ax, double ay, double bx, double by, double length) {
        double[] cuts = new double[2 * x.length + 2];
        int n = 0;
        cuts[n++] = 0;
        cuts[n++] = length;
        double ux = (bx - ax) / length;
        double uy = (by - ay) / length;
        for (int k = 0, last = x.length - 1; k < x.length; last = k++) {
            double from = off(ax, ay, bx, by, x[last], y[last]);
            double to = off(ax, ay, bx, by, x[k], y[k]);
            double along = (x[k] - ax) * ux + (y[k] - ay) * uy;
            if (Math.abs(to) <= GRAZE) {
                cuts[n++] = along;
            }
            if ((from > 0) != (to > 0)) {
                double start = (x[last] - ax) * ux + (y[last] - ay) * uy;
                cuts[n++] = start + from / (from - to) * (along - start);
            }
        }
        for (int c = 2; c < n; c++) {
            cuts[c] = Math.min(Math.max(cuts[c], 0), length);
        }
        Arrays.sort(cuts, 0, n);
        return Arrays.copyOf(cuts, n);
    }

    /** Signed distance of p from the line through a and b, left of it positive; 0 if they are one place. */
    private static double off(double ax, double ay, double bx, double by, double px, double py) {
        double length = Math.hypot(bx - ax, by - ay);
        return length == 0 ? 0 : ((bx - ax) * (py - ay) - (by - ay) * (px - ax)) / length;
    }

    private double distance(double px, double py, int from, int to) {
        double dx = x[to] - x[from];
        double dy = y[to] - y[from];
        double along = ((px - x[from]) * dx + (py - y[from]) * dy) / (dx * dx + dy * dy);
        double held = Math.min(1, Math.max(0, along));
        return Math.hypot(px - x[from] - held * dx, py - y[from] - held * dy);
    }

    private static boolean samePlace(Point a, Point b) {
        return a.x() == b.x() && a.y() == b.y();
    }

    private static double twiceArea(double[] x, double[] y) {
        double sum = 0;
        for (int k = 0, last = x.length - 1; k < x.length; last = k++) {
            // from the first point, so that far from the origin no digits are lost
            sum += (x[last] - x[0]) * (y[k] - y[0]) - (x[k] - x[0]) * (y[last] - y[0]);
        }
        return sum;
    }

    private static void reverse(double[] values) {
        for (int a = 0, b = values.length - 1; a < b; a++, b--) {
            double kept = values[a];
            values[a] = values[b];
            values[b] = kept;
        }
    }
}
