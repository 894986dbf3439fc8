package streamwright.physics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.atomic.AtomicReferenceArray;

/**
 * The visibility graph of a yard's obstacles (Lozano-Perez and Wesley, CACM 22, 1979): shortest ways bend only at
 * corners that turn outwards, and only around them. Which corners see each other is found when first asked.
 */
final class Sight {
    private final List<Ring> rings;

    /** The corners: the ring of each, and its index there. */
    private final List<Ring> ring = new ArrayList<>();

    private final int[] index;
    private final AtomicReferenceArray<View> views;

    Sight(List<Ring> rings) {
        this.rings = rings;
        List<Integer> indices = new ArrayList<>();
        for (Ring around : rings) {
            for (int k = 0; k < around.size(); k++) {
                if (around.convex(k) && !buried(around.x[k], around.y[k])) {
                    ring.add(around);
                    indices.add(k);
                }
            }
        }
        index = indices.stream().mapToInt(Integer::intValue).toArray();
        views = new AtomicReferenceArray<>(index.length);
    }

    /** The corners that a place sees, for ways that can bend there, and how far they are. */
    static final class View {
        final int[] corners;
        final double[] distances;

        private View(int[] corners, double[] distances) {
            this.corners = corners;
            this.distances = distances;
        }
    }

    /** Number of corners. */
    int corners() {
        return index.length;
    }

    boolean clear(double ax, double ay, double bx, double by) {
        for (Ring around : rings) {
            if (around.blocks(ax, ay, bx, by)) {
                return false;
            }
        }
        return true;
    }

    View from(double x, double y) {
        return look(x, y, -1);
    }

    /** What a corner sees, for ways that can bend at both ends. */
    View fromCorner(int corner) {
        View known = views.get(corner);
        if (known == null) {
            known = look(x(corner), y(corner), corner);
            views.set(corner, known);
        }
        return known;
    }

    /** Looks from a place, which is the corner {@code at} unless that is negative. */
    private View look(double px, double py, int at) {
        int[] corners = new int[index.length];
        double[] distances = new double[index.length];
        int n = 0;
        for (int corner = 0; corner < index.length; corner++) {
            double x = x(corner);
            double y = y(corner);
            if (corner != at
                    && (at < 0 || ring.get(at).tangent(x, y, index[at]))
                    && ring.get(corner).tangent(px, py, index[corner])
                    && clear(px, py, x, y)) {
                corners[n] = corner;
                distances[n++] = Math.hypot(x - px, y - py);
            }
        }
        return new View(Arrays.copyOf(corners, n), Arrays.copyOf(distances, n));
    }

    private double x(int corner) {
        return ring.get(corner).x[index[corner]];
    }

    private double y(int corner) {
        return ring.get(corner).y[index[corner]];
    }

    private boolean buried(double x, double y) {
        return rings.stream().anyMatch(around -> around.contains(x, y));
    }
}
