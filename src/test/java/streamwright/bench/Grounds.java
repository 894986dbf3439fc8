package streamwright.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import streamwright.yard.Obstacle;
import streamwright.yard.Point;

/** Ground of a home that no wire may cross: a house with a porch cut out of it, and beds on the lawn, few of them convex. */
final class Grounds {
    /** Outlines in a unit square. */
    private static final double[][][] BEDS = {
        {{0, 0}, {1, 0}, {1, 0.4}, {0.4, 0.4}, {0.4, 1}, {0, 1}},
        {{0, 0}, {1, 0}, {1, 1}, {0.7, 1}, {0.7, 0.3}, {0.3, 0.3}, {0.3, 1}, {0, 1}},
        {{0.3, 0}, {0.7, 0}, {1, 0.5}, {0.7, 1}, {0.3, 1}, {0, 0.5}},
        {{0.5, 0}, {0.6, 0.4}, {1, 0.5}, {0.6, 0.6}, {0.5, 1}, {0.4, 0.6}, {0, 0.5}, {0.4, 0.4}},
    };
    /** Kept free around a bed, metres. */
    private static final double MARGIN = 0.3;

    private static final int TRIES = 200;

    private final SplittableRandom random;
    private final Lot.Place place;
    private final List<Point> kept;
    private final List<double[]> taken = new ArrayList<>();

    /** @param kept points that wire must come to */
    Grounds(SplittableRandom random, Lot.Place place, List<Point> kept) {
        this.random = random;
        this.place = place;
        this.kept = kept;
    }

    List<Obstacle> obstacles() {
        List<Obstacle> obstacles = new ArrayList<>();
        obstacles.add(withPorch(Lot.house("house", place)));
        int beds = 2 + random.nextInt(3);
        for (int t = 0; t < TRIES && obstacles.size() <= beds; t++) {
            double x = random.nextDouble(place.width() - 4);
            double y = random.nextDouble(0.5 * place.depth() - 3);
            double width = 1.5 + random.nextDouble(3);
            double depth = 1.5 + random.nextDouble(2);
            int outline = random.nextInt(BEDS.length);
            double[] box = {x - MARGIN, y - MARGIN, x + width + MARGIN, y + depth + MARGIN};
            if (kept.stream().noneMatch(point -> holds(box, point))
                    && taken.stream().noneMatch(o -> overlap(o, box))) {
                taken.add(box);
                List<Point> ring = new ArrayList<>();
                for (double[] corner : BEDS[outline]) {
                    ring.add(new Point(round(x + corner[0] * width), round(y + corner[1] * depth)));
                }
                obstacles.add(new Obstacle("bed " + obstacles.size(), ring));
            }
        }
        return obstacles;
    }

    /** Two metres deep, in the middle of the front. */
    private static Obstacle withPorch(Obstacle house) {
        Point left = house.ring().get(0);
        Point right = house.ring().get(1);
        double middle = round((left.x() + right.x()) / 2);
        List<Point> ring = new ArrayList<>();
        ring.add(left);
        ring.add(new Point(middle - 1.5, left.y()));
        ring.add(new Point(middle - 1.5, round(left.y() + 2)));
        ring.add(new Point(middle + 1.5, round(left.y() + 2)));
        ring.add(new Point(middle + 1.5, left.y()));
        ring.addAll(house.ring().subList(1, 4));
        return new Obstacle(house.id(), ring);
    }

    private static boolean holds(double[] box, Point point) {
        return point.x() > box[0] && point.x() < box[2] && point.y() > box[1] && point.y() < box[3];
    }

    private static boolean overlap(double[] a, double[] b) {
        return a[0] < b[2] && b[0] < a[2] && a[1] < b[3] && b[1] < a[3];
    }

    private static double round(double metres) {
        return Math.round(metres * 10) / 10.0;
    }
}
