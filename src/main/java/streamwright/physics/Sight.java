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
    private final AtomicReferenceArray<int[]> seen;

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
        seen = new AtomicReferenceArray<>(index.length);
    }

    /** Number of corners. */
    int corners() {
        return index.length;
    }

    double x(int corner) {
        return ring.get(corner).x[index[corner]];
    }

    double y(int corner) {
        return ring.get(corner).y[index[corner]];
    }

    boolean clear(double ax, double ay, double bx, double by) {
        for (Ring around : rings) {
            if (around.blocks(ax, ay, bx, by)) {
                return false;
            }
        }
        return true;
    }

    /** Whether a place and a corner see each other, and a way between them can bend there. */
    boolean sees(double px, double py, int corner) {
        return ring.get(corner).tangent(px, py, index[corner]) && clear(px, py, x(corner), y(corner));
    }

    /** The corners that a corner sees, for ways that can bend at both. */
    int[] seen(int corner) {
        int[] known = seen.get(corner);
        if (known == null) {
            known = look(corner);
            seen.set(corner, known);
        }
        return known;
    }

    private int[] look(int corner) {
        int[] found = new int[index.length];
        int n = 0;
        for (int other = 0; other < index.length; other++) {
            if (other != corner
                    && ring.get(corner).tangent(x(other), y(other), index[corner])
                    && sees(x(corner), y(corner), other)) {
                found[n++] = other;
            }
        }
        return Arrays.copyOf(found, n);
    }

    private boolean buried(double x, double y) {
        return rings.stream().anyMatch(around -> around.contains(x, y));
    }
}
