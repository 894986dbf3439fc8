package streamwright.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import streamwright.yard.Follow;
import streamwright.yard.Obstacle;
import streamwright.yard.PixelKind;
import streamwright.yard.PixelString;
import streamwright.yard.Point;
import streamwright.yard.Prop;

/**
 * The props of one house and its garden: eaves, windows, a fence, arches along the drive, a tree, small things on the
 * lawn. Rows of strings can be chained, some strings stand too far from all others to share a board without null
 * pixels, and strings that start together need several ports.
 */
final class Lot {
    /** Metres. */
    record Place(double x, double y, double width, double depth) {}

    private final SplittableRandom random;
    private final String prefix;
    private final Place place;
    private final PixelKind kind;
    private final List<Prop> props = new ArrayList<>();
    private int feeds;
    private int strings;

    private Lot(SplittableRandom random, String prefix, Place place, PixelKind kind) {
        this.random = random;
        this.prefix = prefix;
        this.place = place;
        this.kind = kind;
    }

    /**
     * @param feeds at so many points
     * @param strings at least three more than feeds
     * @param pixels in all, but for rounding
     */
    static List<Prop> props(
            SplittableRandom random, String prefix, Place place, PixelKind kind, int feeds, int strings, int pixels) {
        Lot lot = new Lot(random, prefix, place, kind);
        lot.fill(feeds, strings);
        return lot.scaled(pixels);
    }

    /** The house; wires go along its walls, not through it. */
    static Obstacle house(String id, Place place) {
        double left = round(place.x + 0.2 * place.width);
        double right = round(place.x + 0.7 * place.width);
        double front = front(place);
        double back = round(place.y + place.depth - 2);
        return new Obstacle(
                id,
                List.of(
                        new Point(left, front),
                        new Point(right, front),
                        new Point(right, back),
                        new Point(left, back)));
    }

    private static double front(Place place) {
        return round(place.y + 0.6 * place.depth);
    }

    private void fill(int feedsWanted, int stringsWanted) {
        double wall = front(place) - 0.2;
        double left = place.x + 0.2 * place.width;
        int eaves = 3 + random.nextInt(3);
        double eave = 0.5 * place.width / eaves;
        row("eave", eaves, new Point(left, wall, 3.5), eave, 50 + 10 * random.nextInt(3), Follow.PROP);
        int pickets = 4 + random.nextInt(3);
        row("fence", pickets, new Point(place.x + 1, place.y + 0.5, 1), 3, 50 + 25 * random.nextInt(3), Follow.ANY);
        Follow windows = random.nextBoolean() ? Follow.NONE : Follow.ANY;
        for (int w = 1 + random.nextInt(3); w <= 6; w++) {
            Point feed = new Point(left + w * 0.5 * place.width / 7, wall, 1);
            one("window " + w, feed, new Point(feed.x() + 1, wall, 1), 75, windows);
        }
        double drive = place.x + 0.8 * place.width;
        for (int a = 1 + random.nextInt(3); a <= 6; a++) {
            Point feed = new Point(drive, place.y + 1 + a * 2.2);
            one("arch " + a, feed, new Point(drive, feed.y() + 1.8), 50 + 50 * random.nextInt(2), Follow.ANY);
        }
        int spare = stringsWanted - feedsWanted;
        int boughs = Math.min(spare, 3 + random.nextInt(5));
        together("tree", lawn(), 1 + boughs, 70 + 30 * random.nextInt(2), 3);
        spare -= boughs;
        for (int s = 1; feeds < feedsWanted; s++) {
            int points = feedsWanted - feeds;
            int more = Math.min(spare, (spare + points - 1) / points + random.nextInt(2));
            together("small " + s, lawn(), 1 + more, 30 + 10 * random.nextInt(8), 0.5);
            spare -= more;
        }
        if (feeds != feedsWanted || strings != stringsWanted) {
            throw new IllegalArgumentException(
                    feeds + " feeds, " + strings + " strings; so few or so many cannot be had");
        }
    }

    /** Strings one behind the other, each beginning where the one before it ends. */
    private void row(String id, int count, Point from, double step, int pixels, Follow follow) {
        List<PixelString> row = new ArrayList<>();
        for (int s = 0; s < count; s++) {
            double x = from.x() + s * step;
            row.add(new PixelString(
                    prefix + id,
                    s + 1,
                    pixels,
                    rounded(x, from.y(), from.z()),
                    rounded(x + step - 0.3, from.y(), from.z())));
        }
        add(id, row, follow, count);
    }

    private void one(String id, Point feed, Point tail, int pixels, Follow follow) {
        add(id, List.of(new PixelString(prefix + id, 1, pixels, rounded(feed), rounded(tail))), follow, 1);
    }

    /** Equal strings from one point. */
    private void together(String id, Point feed, int count, int pixels, double height) {
        Point tail = rounded(feed.x(), feed.y(), feed.z() + height);
        List<PixelString> equal = new ArrayList<>();
        for (int s = 1; s <= count; s++) {
            equal.add(new PixelString(prefix + id, s, pixels, feed, tail));
        }
        Follow follow =
                List.of(Follow.NONE, Follow.PROP, Follow.ANY, Follow.ANY).get(random.nextInt(4));
        add(id, equal, follow, 1);
    }

    private void add(String id, List<PixelString> added, Follow follow, int places) {
        props.add(Prop.ofStrings(prefix + id, kind, follow, added));
        strings += added.size();
        feeds += places;
    }

    private Point lawn() {
        return rounded(
                place.x + random.nextDouble(place.width),
                place.y + random.nextDouble(0.55 * place.depth),
                random.nextInt(3) == 0 ? random.nextDouble(2) : 0);
    }

    private List<Prop> scaled(int pixels) {
        double all = props.stream()
                .flatMap(prop -> prop.strings().stream())
                .mapToInt(PixelString::pixels)
                .sum();
        return props.stream()
                .map(prop -> Prop.ofStrings(
                        prop.id(),
                        kind,
                        prop.follow(),
                        prop.strings().stream()
                                .map(s -> new PixelString(
                                        s.prop(),
                                        s.number(),
                                        (int) Math.max(1, Math.round(s.pixels() * pixels / all)),
                                        s.feed(),
                                        s.tail()))
                                .toList()))
                .toList();
    }

    private static Point rounded(Point point) {
        return rounded(point.x(), point.y(), point.z());
    }

    private static Point rounded(double x, double y, double z) {
        return new Point(round(x), round(y), round(z));
    }

    private static double round(double metres) {
        return Math.round(metres * 10) / 10.0;
    }
}
