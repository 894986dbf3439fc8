package streamwright.solve;

import java.util.Arrays;
import java.util.function.IntConsumer;
import streamwright.yard.Point;

/** Places sorted into square cells of their plan view, so that what is near is found without looking at all. */
final class Grid {
    /** Places to a cell, about. */
    private static final int CELL = 3;

    private final Point[] places;
    private final double left;
    private final double low;
    private final double cell;
    private final int columns;
    private final int rows;

    /** The places of cell c are {@code sorted[begin[c]] .. sorted[begin[c + 1] - 1]}, in rising order. */
    private final int[] begin;

    private final int[] sorted;

    Grid(Point[] places) {
        this.places = places;
        left = Arrays.stream(places).mapToDouble(Point::x).min().orElse(0);
        low = Arrays.stream(places).mapToDouble(Point::y).min().orElse(0);
        double width = Arrays.stream(places).mapToDouble(Point::x).max().orElse(0) - left;
        double height = Arrays.stream(places).mapToDouble(Point::y).max().orElse(0) - low;
        double cells = Math.max(1, places.length / (double) CELL);
        cell = Math.max(Math.max(width, height) / cells, Math.max(1e-9, Math.sqrt(width * height / cells)));
        columns = 1 + (int) (width / cell);
        rows = 1 + (int) (height / cell);
        begin = new int[columns * rows + 1];
        for (Point place : places) {
            begin[cell(place) + 1]++;
        }
        for (int c = 1; c < begin.length; c++) {
            begin[c] += begin[c - 1];
        }
        int[] next = begin.clone();
        sorted = new int[places.length];
        for (int i = 0; i < places.length; i++) {
            sorted[next[cell(places[i])]++] = i;
        }
    }

    private int column(double x) {
        return Math.max(0, Math.min(columns - 1, (int) Math.floor((x - left) / cell)));
    }

    private int row(double y) {
        return Math.max(0, Math.min(rows - 1, (int) Math.floor((y - low) / cell)));
    }

    private int cell(Point place) {
        return row(place.y()) * columns + column(place.x());
    }

    /** Tells of every place no farther than this in plan, and of some others. */
    void near(Point from, double distance, IntConsumer told) {
        int lastRow = row(from.y() + distance);
        int lastColumn = column(from.x() + distance);
        for (int r = row(from.y() - distance); r <= lastRow; r++) {
            for (int c = column(from.x() - distance); c <= lastColumn; c++) {
                for (int i = begin[r * columns + c]; i < begin[r * columns + c + 1]; i++) {
                    told.accept(sorted[i]);
                }
            }
        }
    }

    /** Straight way along the ground and up: no path is shorter. */
    static double straight(Point a, Point b) {
        return Math.hypot(a.x() - b.x(), a.y() - b.y()) + Math.abs(a.z() - b.z());
    }

    /** The nearest places by straight way, nearest first; of equally near ones the first. */
    int[] nearest(Point from, int most) {
        int enough = Math.min(most, places.length);
        double distance = 2 * cell;
        while (true) {
            double within = distance;
            Collected all = new Collected();
            near(from, distance, all);
            long inside = Arrays.stream(all.found, 0, all.count)
                    .filter(i -> straight(from, places[i]) <= within)
                    .count();
            if (inside >= enough || all.count == places.length) {
                return Arrays.stream(all.found, 0, all.count)
                        .boxed()
                        .sorted((a, b) -> {
                            int by = Double.compare(straight(from, places[a]), straight(from, places[b]));
                            return by != 0 ? by : Integer.compare(a, b);
                        })
                        .limit(enough)
                        .mapToInt(Integer::intValue)
                        .toArray();
            }
            distance *= 2;
        }
    }

    private static final class Collected implements IntConsumer {
        int[] found = new int[64];
        int count;

        @Override
        public void accept(int place) {
            if (count == found.length) {
                found = Arrays.copyOf(found, 2 * count);
            }
            found[count++] = place;
        }
    }
}
