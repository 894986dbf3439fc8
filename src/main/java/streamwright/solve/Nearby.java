package streamwright.solve;

import java.util.stream.IntStream;
import streamwright.yard.Point;

/** Of each string: the strings whose feeds are nearest, itself first; straight distance, for searching only. */
final class Nearby {
    private static final int MOST = 60;

    private final int[][] near;
    private final long[] remoteness;

    Nearby(Site site) {
        int n = site.strings.length;
        near = new int[n][];
        remoteness = new long[n];
        for (int i = 0; i < n; i++) {
            Point feed = site.strings[i].feed();
            double[] distance = new double[n];
            for (int j = 0; j < n; j++) {
                distance[j] = straight(feed, site.strings[j].feed());
            }
            near[i] = IntStream.range(0, n)
                    .boxed()
                    .sorted((a, b) -> Double.compare(distance[a], distance[b]))
                    .limit(MOST)
                    .mapToInt(Integer::intValue)
                    .toArray();
            double least = Double.POSITIVE_INFINITY;
            for (var controller : site.controllers) {
                least = Math.min(least, straight(feed, controller.at()));
            }
            remoteness[i] = (long) (least * 1000);
        }
    }

    int[] of(int string) {
        return near[string];
    }

    /** Distance to the nearest controller in thousandths of a unit. */
    long remoteness(int string) {
        return remoteness[string];
    }

    private static double straight(Point a, Point b) {
        return Math.hypot(a.x() - b.x(), a.y() - b.y()) + Math.abs(a.z() - b.z());
    }
}
