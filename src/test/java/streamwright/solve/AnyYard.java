package streamwright.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import streamwright.yard.Address;
import streamwright.yard.BoardCount;
import streamwright.yard.BoardModel;
import streamwright.yard.BoardOffer;
import streamwright.yard.Controller;
import streamwright.yard.ControllerModel;
import streamwright.yard.Costs;
import streamwright.yard.Drives;
import streamwright.yard.Follow;
import streamwright.yard.Obstacle;
import streamwright.yard.PixelKind;
import streamwright.yard.PixelString;
import streamwright.yard.Point;
import streamwright.yard.Prop;
import streamwright.yard.Rules;
import streamwright.yard.Spot;
import streamwright.yard.Units;
import streamwright.yard.Work;
import streamwright.yard.Yard;

/** Seeded yards of a few strings in which each rule binds often enough to be broken by a planner that forgets it. */
final class AnyYard {
    private static final PixelKind RGB = kind("rgb", 3, 12);
    private static final PixelKind RGBW = kind("rgbw", 4, 12);
    private static final PixelKind FIVE = kind("five", 3, 5);

    private final SplittableRandom random;
    private final double area;

    private AnyYard(SplittableRandom random) {
        this.random = random;
        area = pick(4.0, 7.0, 10.0);
    }

    /** The same yard for the same seed; strings from {@code least} to {@code most}. */
    static Yard of(long seed, int least, int most) {
        SplittableRandom random = new SplittableRandom(seed);
        return new AnyYard(random).yard("any " + seed, least + random.nextInt(most - least + 1));
    }

    private Yard yard(String name, int strings) {
        List<Prop> props = props(strings);
        int pixels = props.stream()
                .flatMap(prop -> prop.strings().stream())
                .mapToInt(PixelString::pixels)
                .sum();
        return new Yard(
                name,
                Units.M,
                40,
                pick(0.0, 0.0, 0.1),
                pick(1.0, 1.0, 0.5),
                false,
                controllers(pixels, strings > 10 ? 4 : Math.min(3, 10 / strings)),
                offers(),
                one(10) ? new BoardCount(random.nextInt(3), 1 + random.nextInt(3)) : BoardCount.FREE,
                one(2) ? spots() : List.of(),
                props,
                one(6) ? List.of(new Obstacle("pond", ring())) : List.of(),
                rules(),
                costs(),
                Work.DEFAULTS);
    }

    private static PixelKind kind(String name, int channels, double volts) {
        return new PixelKind(
                name, channels, 8 * channels, 1.25, 300, 0, volts, volts * 0.85, 0.05, 0.1, 0.52, "invented");
    }

    private List<Prop> props(int strings) {
        PixelKind second = one(3) ? FIVE : RGBW;
        boolean mixed = one(4);
        List<Prop> props = new ArrayList<>();
        for (int left = strings; left > 0; ) {
            int count = Math.min(left, 1 + random.nextInt(3));
            props.add(prop("p" + props.size(), mixed && one(2) ? second : RGB, count));
            left -= count;
        }
        return props;
    }

    private Prop prop(String id, PixelKind kind, int count) {
        boolean equal = one(2);
        Point feed = place();
        Point tail = place();
        int pixels = pixels();
        List<PixelString> strings = new ArrayList<>();
        for (int s = 1; s <= count; s++) {
            strings.add(
                    equal
                            ? new PixelString(id, s, pixels, feed, tail)
                            : new PixelString(id, s, pixels(), place(), place()));
        }
        Follow follow = one(4) ? Follow.NONE : one(2) ? Follow.PROP : Follow.ANY;
        return new Prop(id, kind, follow, true, null, OptionalInt.empty(), null, strings, 0, null, null);
    }

    private int pixels() {
        return 10 * (1 + random.nextInt(5)) + (one(3) ? 1 : 0);
    }

    private List<Controller> controllers(int pixels, int streams) {
        List<Controller> controllers = new ArrayList<>();
        int streamMost = one(3) ? 1024 : Math.max(60, pixels / (1 + random.nextInt(3)) + random.nextInt(4));
        int count = one(4) ? 2 : 1;
        for (int c = 0; c < count; c++) {
            ControllerModel model = new ControllerModel(
                    "source " + c,
                    1 + random.nextInt(3),
                    1 + random.nextInt(streams),
                    1 + random.nextInt(4),
                    streamMost + 5 * c,
                    one(6) ? 4 * pixels + random.nextInt(20) - 10 : 65_535,
                    510);
            controllers.add(new Controller("c" + c, model, place(), 1, 1));
        }
        return controllers;
    }

    private List<BoardOffer> offers() {
        List<BoardOffer> offers = new ArrayList<>();
        for (int m = one(3) ? 2 : 1; m > 0; m--) {
            BoardModel model = new BoardModel(
                    "model " + m,
                    Drives.PIXELS,
                    ports(),
                    address(),
                    pick(0.0, 5.0, 12.5),
                    one(3) ? pick(1.5, 2.5) : 6,
                    one(6) ? pick(2.0, 5.0) : Double.POSITIVE_INFINITY,
                    one(6) ? 50 + random.nextInt(40) : Integer.MAX_VALUE,
                    0,
                    BoardModel.ANY,
                    List.of());
            int most = one(6) ? 1 + random.nextInt(2) : Integer.MAX_VALUE;
            offers.add(new BoardOffer(model, most, one(4) ? 1 + random.nextInt(2) : 0, model.price()));
        }
        return offers;
    }

    private List<Integer> ports() {
        return switch (random.nextInt(10)) {
            case 0 -> List.of(1);
            case 1, 8, 9 -> List.of(1, 2, 3, 4);
            case 2 -> List.of(1, 2);
            case 3 -> List.of(1, 2, 3);
            case 4 -> List.of(1, 1);
            case 5 -> List.of(BoardModel.ANY);
            case 6 -> List.of(BoardModel.ANY, BoardModel.ANY);
            default -> List.of(1, 2, BoardModel.ANY, 2);
        };
    }

    private Address address() {
        return switch (random.nextInt(8)) {
            case 0 -> one(2) ? new Address.None() : new Address.Rotary(0, 9);
            case 1 -> new Address.Rotary(1, 2);
            case 2 -> new Address.Switches(0, 1, 1);
            default -> new Address.Switches(0, 15, 4);
        };
    }

    private List<Spot> spots() {
        List<Spot> spots = new ArrayList<>();
        for (int s = 1 + random.nextInt(4); s > 0; s--) {
            spots.add(new Spot(
                    "s" + s,
                    place(),
                    one(3) ? 1 : 3,
                    pick(0.0, 0.0, 7.5),
                    one(8) ? pick(2.0, 4.0) : Double.POSITIVE_INFINITY));
        }
        return spots;
    }

    private Rules rules() {
        Rules usual = Rules.defaults(Units.M);
        return new Rules(
                pick(3.0, 6.0, 6.0),
                pick(1.5, 3.0, 3.0),
                random.nextInt(3),
                one(6) ? area * 0.8 + 2 : 60,
                one(5) ? area * pick(1.5, 2.5) + 2 : 90,
                pick(1.0, 1.1),
                pick(0.0, 1.0),
                pick(0.0, 0.3),
                usual.leadWireMm2(),
                usual.injectionWireMm2(),
                usual.wireFactor(),
                usual.connector(),
                usual.fuseLoad());
    }

    private Costs costs() {
        return switch (random.nextInt(6)) {
            case 0 -> new Costs(0, 1, 1, 0, 0, 0);
            case 1 -> new Costs(2, 0, 0.5, 3, 1, 0);
            case 2 -> new Costs(0.6, 1.9, 1.9, 0, 0.5, 0.1);
            case 3 -> new Costs(1, 0.5, 2, 4, 1, 1);
            default -> Costs.defaults(Units.M);
        };
    }

    private List<Point> ring() {
        Point at = place();
        return List.of(
                at,
                new Point(at.x() + area / 4, at.y()),
                new Point(at.x() + area / 4, at.y() + area / 4),
                new Point(at.x(), at.y() + area / 4));
    }

    private Point place() {
        double step = 0.25;
        int steps = (int) (area / step);
        return new Point(step * random.nextInt(steps), step * random.nextInt(steps), one(4) ? 1.5 : 0);
    }

    private boolean one(int in) {
        return random.nextInt(in) == 0;
    }

    private double pick(double... values) {
        return values[random.nextInt(values.length)];
    }
}
