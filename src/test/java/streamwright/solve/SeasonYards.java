package streamwright.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import streamwright.yard.Address;
import streamwright.yard.BoardCount;
import streamwright.yard.BoardModel;
import streamwright.yard.BoardOffer;
import streamwright.yard.Controller;
import streamwright.yard.ControllerModel;
import streamwright.yard.Costs;
import streamwright.yard.Drives;
import streamwright.yard.Follow;
import streamwright.yard.PixelKind;
import streamwright.yard.PixelString;
import streamwright.yard.Point;
import streamwright.yard.Prop;
import streamwright.yard.Rules;
import streamwright.yard.Spot;
import streamwright.yard.Units;
import streamwright.yard.Work;
import streamwright.yard.Yard;

/** Yards small enough to try every plan, for a season and the next. */
final class SeasonYards {
    private SeasonYards() {}

    static Yard of(long seed) {
        // nearby seeds begin alike unless they are spread
        Random random = new Random(seed * 0x9E3779B97F4A7C15L);
        int strings = 1 + random.nextInt(10) / 3;
        PixelKind kind = new PixelKind(
                "tiny",
                3,
                24,
                1.25,
                300,
                0,
                12,
                pick(random, 6.0, 9.0, 10.5),
                pick(random, 0.02, 0.05),
                0.1,
                0.52,
                "invented");
        List<Prop> props = new ArrayList<>();
        for (int left = strings; left > 0; ) {
            int count = 1 + random.nextInt(Math.min(2, left));
            props.add(prop("p" + props.size(), kind, count, random));
            left -= count;
        }
        List<Controller> controllers = new ArrayList<>();
        for (int c = 0; c <= random.nextInt(5) / 4; c++) {
            ControllerModel model = new ControllerModel(
                    "source",
                    1 + random.nextInt(2),
                    1 + random.nextInt(2),
                    1 + random.nextInt(3),
                    pick(random, 90, 130, 400),
                    pick(random, 300, 600, 65_535),
                    510);
            controllers.add(new Controller("c" + c, model, place(random), 1, 1));
        }
        List<BoardOffer> offers = new ArrayList<>();
        offers.add(offer("one", random));
        if (random.nextInt(3) == 0) {
            offers.add(offer("two", random));
        }
        List<Spot> spots = new ArrayList<>();
        for (int s = 1; s <= (random.nextBoolean() ? 0 : 1 + random.nextInt(strings >= 3 ? 2 : 3)); s++) {
            spots.add(new Spot(
                    "s" + s,
                    place(random),
                    1 + random.nextInt(3),
                    random.nextInt(3) == 0 ? 9 : 0,
                    random.nextInt(6) == 0 ? 5 : Double.POSITIVE_INFINITY));
        }
        int least = random.nextInt(8) == 0 ? 2 : 0;
        int most = random.nextInt(8) == 0 ? 2 : Integer.MAX_VALUE;
        return new Yard(
                "tiny " + seed,
                Units.M,
                40,
                0,
                1,
                false,
                controllers,
                offers,
                new BoardCount(least, most),
                spots,
                props,
                List.of(),
                rules(random),
                random.nextInt(4) == 0 ? new Costs(0.6, 1.9, 1.9, 0, 1, 0.5) : Costs.defaults(Units.M),
                Work.DEFAULTS);
    }

    private static Rules rules(Random random) {
        Rules usual = Rules.defaults(Units.M);
        return new Rules(
                pick(random, 2.0, 6.0),
                pick(random, 1.5, 3.0),
                random.nextInt(3),
                pick(random, 8.0, 60.0),
                pick(random, 14.0, 90.0),
                usual.slack(),
                usual.trunkLoop(),
                usual.leadLoop(),
                usual.leadWireMm2(),
                usual.injectionWireMm2(),
                usual.wireFactor(),
                usual.connector(),
                usual.fuseLoad());
    }

    private static Prop prop(String id, PixelKind kind, int count, Random random) {
        int pixels = pick(random, 20, 40, 60, 80);
        Point feed = place(random);
        boolean alike = random.nextBoolean();
        List<PixelString> strings = new ArrayList<>();
        for (int s = 1; s <= count; s++) {
            Point from = alike ? feed : place(random);
            strings.add(new PixelString(id, s, pixels, from, alike ? feed : place(random)));
        }
        return Prop.ofStrings(
                id, kind, List.of(Follow.NONE, Follow.PROP, Follow.ANY).get(random.nextInt(3)), strings);
    }

    private static BoardOffer offer(String name, Random random) {
        List<Integer> ports = List.of(List.of(1), List.of(1, 2), List.of(1, 1, 2), List.of(0, 0), List.of(1, 2, 0))
                .get(random.nextInt(5));
        Address address = random.nextInt(6) == 0
                ? new Address.None()
                : random.nextBoolean() ? new Address.Switches(0, 15, 4) : new Address.Rotary(0, 1);
        BoardModel model = new BoardModel(
                name,
                Drives.PIXELS,
                ports,
                address,
                pick(random, 5, 27),
                pick(random, 2.0, 5.0, 100.0),
                random.nextInt(5) == 0 ? 6 : Double.POSITIVE_INFINITY,
                random.nextInt(4) == 0 ? 85 : Integer.MAX_VALUE,
                0,
                BoardModel.ANY,
                List.of());
        int most = random.nextInt(5) == 0 ? 1 : Integer.MAX_VALUE;
        return new BoardOffer(model, most, random.nextInt(4) == 0 ? 1 : 0, model.price());
    }

    private static Point place(Random random) {
        return new Point(random.nextInt(9), random.nextInt(9), random.nextInt(4) == 0 ? 1 : 0);
    }

    private static double pick(Random random, double... values) {
        return values[random.nextInt(values.length)];
    }

    private static int pick(Random random, int... values) {
        return values[random.nextInt(values.length)];
    }
}
