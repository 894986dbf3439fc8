package streamwright.physics;

import java.util.Arrays;
import java.util.Comparator;
import java.util.PriorityQueue;

/** Dijkstra's search over the corners from one place, carried only as far as the farthest question so far needs. */
final class Wavefront {
    private record Reached(double distance, int corner) {}

    private final Sight sight;
    private final double[] distance;
    private final boolean[] settled;
    private final PriorityQueue<Reached> front =
            new PriorityQueue<>(Comparator.comparingDouble(Reached::distance).thenComparingInt(Reached::corner));

    Wavefront(Sight sight, Sight.View from) {
        this.sight = sight;
        distance = new double[sight.corners()];
        Arrays.fill(distance, Double.POSITIVE_INFINITY);
        settled = new boolean[sight.corners()];
        for (int v = 0; v < from.corners.length; v++) {
            reach(from.corners[v], from.distances[v]);
        }
    }

    /** Shortest way around at least one corner; infinite where there is none. */
    synchronized double to(Sight.View place) {
        double best = best(place);
        while (!front.isEmpty() && front.peek().distance < best) {
            int corner = front.poll().corner;
            if (!settled[corner]) {
                settled[corner] = true;
                Sight.View view = sight.fromCorner(corner);
                for (int v = 0; v < view.corners.length; v++) {
                    reach(view.corners[v], distance[corner] + view.distances[v]);
                }
                best = best(place);
            }
        }
        return best;
    }

    private void reach(int corner, double length) {
        if (length < distance[corner]) {
            distance[corner] = length;
            front.add(new Reached(length, corner));
        }
    }

    private double best(Sight.View place) {
        double best = Double.POSITIVE_INFINITY;
        for (int v = 0; v < place.corners.length; v++) {
            best = Math.min(best, distance[place.corners[v]] + place.distances[v]);
        }
        return best;
    }
}
