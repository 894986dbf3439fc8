package streamwright.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import streamwright.yard.Address;
import streamwright.yard.BoardCount;
import streamwright.yard.BoardModel;
import streamwright.yard.BoardOffer;
import streamwright.yard.Controller;
import streamwright.yard.ControllerModel;
import streamwright.yard.Costs;
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

/**
 * Seeded yards of 3 to 6 strings on flat open ground, with one controller, one board model and one pixel kind, dimmed so
 * far that no rule of power can bind and small enough that no limit of length can: ports, streams, following, null
 * pixels, spots, boards and jacks are what is left to decide.
 */
final class TinyGarden {
    private static final PixelKind RGB = new PixelKind("rgb", 3, 24, 1.25, 300, 0, 12, 6, 0.05, 0.1, 0.52, "invented");
    private static final double AREA = 12;

    private TinyGarden() {}

    static Yard of(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int strings = 3 + random.nextInt(4);
        List<Prop> props = new ArrayList<>();
        int pixels = 0;
        for (int left = strings; left > 0; ) {
            List<PixelString> row = new ArrayList<>();
            Point feed = place(random);
            boolean together = random.nextBoolean();
            for (int s = Math.min(left, 1 + random.nextInt(3)); s > 0; s--) {
                int lit = 20 + 10 * random.nextInt(3);
                row.add(new PixelString(
                        "p" + props.size(), row.size() + 1, lit, together ? feed : place(random), place(random)));
                pixels += lit;
                left--;
            }
            Follow follow = List.of(Follow.NONE, Follow.PROP, Follow.ANY).get(random.nextInt(3));
            props.add(Prop.ofStrings("p" + props.size(), RGB, follow, row));
        }
        return yard(random, "garden " + seed, props, pixels);
    }

    private static Yard yard(SplittableRandom random, String name, List<Prop> props, int pixels) {
        List<Integer> ports =
                List.of(List.of(1, 2), List.of(1, 2, 3, 4), List.of(1, 1, 2)).get(random.nextInt(3));
        BoardModel model =
                BoardModel.ofPorts("board", ports, new Address.Switches(0, 15, 4), 2.5 * random.nextInt(4), 5);
        ControllerModel source = new ControllerModel(
                "source",
                1 + random.nextInt(2),
                2 + random.nextInt(3),
                1 + random.nextInt(3),
                pixels / (1 + random.nextInt(3)) + random.nextInt(8),
                65_535,
                510);
        List<Spot> spots = new ArrayList<>();
        for (int s = random.nextBoolean() ? 2 + random.nextInt(2) : 0; s > 0; s--) {
            double price = 3.0 * random.nextInt(2);
            spots.add(new Spot("s" + s, place(random), 1 + random.nextInt(2), price, Double.POSITIVE_INFINITY));
        }
        Rules usual = Rules.defaults(Units.M);
        Rules rules = new Rules(
                5,
                3,
                1 + random.nextInt(2),
                usual.hopMost(),
                usual.cableMost(),
                1.1,
                random.nextInt(2),
                0.3,
                usual.leadWireMm2(),
                usual.injectionWireMm2(),
                usual.wireFactor(),
                usual.connector(),
                usual.fuseLoad());
        return new Yard(
                name,
                Units.M,
                40,
                0,
                0.05,
                false,
                List.of(new Controller("c", source, place(random), 1, 1)),
                List.of(new BoardOffer(model, Integer.MAX_VALUE, 0, model.price())),
                new BoardCount(0, random.nextInt(4) == 0 ? 1 : 3),
                spots,
                props,
                List.of(),
                rules,
                random.nextBoolean() ? Costs.defaults(Units.M) : new Costs(1, 1.5, 1, 3, 0, 0),
                Work.DEFAULTS);
    }

    private static Point place(SplittableRandom random) {
        return new Point(random.nextInt((int) AREA), random.nextInt((int) AREA / 2));
    }
}
