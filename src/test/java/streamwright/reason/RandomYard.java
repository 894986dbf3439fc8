package streamwright.reason;

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

/** Invented yards of props in clusters, the same for the same seed. */
final class RandomYard {
    static final PixelKind RGB = new PixelKind("rgb", 3, 24, 1.25, 300, 0, 12, 9.0, 0.03, 0.05, 0.82, "invented");
    static final BoardModel FOUR =
            BoardModel.ofPorts("four", List.of(1, 2, 3, 4), new Address.Switches(0, 15, 4), 25, 5);
    static final BoardModel DIAL =
            BoardModel.ofPorts("dial", List.of(0, 0, 0, 0, 0, 0, 0, 0), new Address.Rotary(0, 9), 49, 5);
    static final BoardModel PLAIN = BoardModel.ofPorts("plain", List.of(1, 2, 3, 4), new Address.None(), 18, 5);

    private static final double DEPTH = 10;

    private RandomYard() {}

    /** @param strings about so many, one to four a prop */
    static Yard of(long seed, int strings, double width, int obstacles, boolean spots) {
        Random random = new Random(seed);
        List<Prop> props = new ArrayList<>();
        int left = strings;
        for (int p = 1; left > 0; p++) {
            int count = Math.min(left, 1 + random.nextInt(4));
            props.add(prop(
                    "prop " + p, count, new Point(random.nextDouble() * width, random.nextDouble() * DEPTH), random));
            left -= count;
        }
        return yard(props, width, ponds(random, width, obstacles), spots ? spots(random, width) : List.of());
    }

    private static Prop prop(String id, int count, Point at, Random random) {
        List<PixelString> strings = new ArrayList<>();
        int pixels = 20 + random.nextInt(130);
        for (int s = 1; s <= count; s++) {
            Point feed = new Point(at.x() + (s - 1) * 1.5, at.y(), 0.5 * random.nextInt(3));
            Point tail = random.nextBoolean() ? feed : new Point(feed.x() + 1.2, feed.y(), feed.z());
            strings.add(new PixelString(id, s, pixels, feed, tail));
        }
        return Prop.ofStrings(
                id, RGB, List.of(Follow.NONE, Follow.PROP, Follow.ANY).get(random.nextInt(3)), strings);
    }

    private static List<Obstacle> ponds(Random random, double width, int count) {
        List<Obstacle> ponds = new ArrayList<>();
        for (int o = 1; o <= count; o++) {
            double x = random.nextDouble() * width;
            // behind all props and before none, so that no feed lies inside
            double y = 30 + random.nextDouble() * 5;
            ponds.add(new Obstacle(
                    "pond " + o,
                    List.of(new Point(x, y), new Point(x + 3, y), new Point(x + 3, y + 2), new Point(x, y + 2))));
        }
        return ponds;
    }

    private static List<Spot> spots(Random random, double width) {
        List<Spot> spots = new ArrayList<>();
        for (int s = 1; s <= width / 2; s++) {
            // two rows, so that some spot is in reach of everything
            Point at = new Point(2 * s + random.nextDouble(), DEPTH * (0.25 + 0.5 * (s % 2)));
            spots.add(new Spot("post " + s, at, 3, s % 3 * 5, s % 2 == 0 ? 25 : Double.POSITIVE_INFINITY));
        }
        return spots;
    }

    static Yard yard(List<Prop> props, double width, List<Obstacle> obstacles, List<Spot> spots) {
        Controller shed = new Controller(
                "shed",
                new ControllerModel("source", 60, 4, 16, 1024, 1_000_000, 510),
                new Point(width / 2, -2, 1),
                1,
                1);
        return new Yard(
                "Invented lane",
                Units.M,
                40,
                0.1,
                0.5,
                false,
                List.of(shed),
                List.of(
                        new BoardOffer(FOUR, Integer.MAX_VALUE, 1, 25),
                        new BoardOffer(DIAL, 2, 0, 49),
                        new BoardOffer(PLAIN, Integer.MAX_VALUE, 0, 18)),
                BoardCount.FREE,
                spots,
                props,
                obstacles,
                Rules.defaults(Units.M),
                Costs.defaults(Units.M),
                Work.DEFAULTS);
    }
}
