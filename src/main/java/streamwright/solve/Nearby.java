package streamwright.solve;

import java.util.Arrays;
import streamwright.yard.PixelString;
import streamwright.yard.Point;

/** Of each string: the strings whose feeds are nearest, equal ones in the order of the file; straight distance, for searching only. */
final class Nearby {
    private static final int MOST = 60;

    private final int[][] near;
    private final long[] remoteness;

    Nearby(Site site) {
        int n = site.strings.length;
        near = new int[n][];
        remoteness = new long[n];
        Point[] feeds = Arrays.stream(site.strings).map(PixelString::feed).toArray(Point[]::new);
        Grid grid = new Grid(feeds);
        for (int i = 0; i < n; i++) {
            near[i] = grid.nearest(feeds[i], MOST);
            double least = Double.POSITIVE_INFINITY;
            for (var controller : site.controllers) {
                least = Math.min(least, Grid.straight(feeds[i], controller.at()));
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
}
