package streamwright.physics;

import java.util.Arrays;
import java.util.Comparator;
import java.util.PriorityQueue;

/** Dijkstra's search over the corners from one place, carried only as far as the farthest question so far needs. */
final class Wavefront {
    private record Reached(double distance, int corner) {}

    private final Sight sight;
    private final double[] distance;
    private final int[] settled;
    private int settledCount;
    private final boolean[] done;
    private final PriorityQueue<Reached> front =
            new PriorityQueue<>(Comparator.comparingDouble(Reached::distance).thenComparingInt(Reached::corner));

    Wavefront(Sight sight, double fromX, double fromY) {
        this.sight = sight;
        int corners = sight.corners();
        distance = new double[corners];
        Arrays.fill(distance, Double.POSITIVE_INFINITY);
        settled = new int[corners];
        done = new boolean[corners];
        for (int corner = 0; corner < corners; corner++) {
            if (sight.sees(fromX, fromY, corner)) {
                reach(corner, between(fromX, fromY, corner));
            }
        }
    }

    /** Shortest way around at least one corner; infinite where there is none. */
    synchronized double to(double x, double y) {
        double best = Double.POSITIVE_INFINITY;
        for (int s = 0; s < settledCount; s++) {
            best = Math.min(best, over(settled[s], x, y, best));
        }
        while (!front.isEmpty() && front.peek().distance < best) {
            int corner = front.poll().corner;
            if (!done[corner]) {
                settle(corner);
                best = Math.min(best, over(corner, x, y, best));
            }
        }
        return best;
    }

    private void settle(int corner) {
        done[corner] = true;
        settled[settledCount++] = corner;
        for (int next : sight.seen(corner)) {
            reach(next, distance[corner] + between(sight.x(corner), sight.y(corner), next));
        }
    }

    private void reach(int corner, double length) {
        if (length < distance[corner]) {
            distance[corner] = length;
            front.add(new Reached(length, corner));
        }
    }

    /** Way over a settled corner, looked for only where it could beat the best. */
    private double over(int corner, double x, double y, double best) {
        double length = distance[corner] + between(x, y, corner);
        return length < best && sight.sees(x, y, corner) ? length : Double.POSITIVE_INFINITY;
    }

    private double between(double x, double y, int corner) {
        return Math.hypot(sight.x(corner) - x, sight.y(corner) - y);
    }
}
