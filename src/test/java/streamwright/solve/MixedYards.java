package streamwright.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import streamwright.physics.GroundPaths;
import streamwright.yard.Address;
import streamwright.yard.BoardCount;
import streamwright.yard.BoardModel;
import streamwright.yard.BoardOffer;
import streamwright.yard.Controller;
import streamwright.yard.ControllerModel;
import streamwright.yard.Costs;
import streamwright.yard.Drives;
import streamwright.yard.Follow;
import streamwright.yard.Panel;
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
 * Yards small enough to try every plan of them, with outputs, panels, copies, several kinds and voltages, boards without
 * address; of odd seeds with channels kept.
 */
final class MixedYards {
    private static final PixelKind RGB = kind("rgb", 3, 24, 12, 0.05);
    private static final PixelKind RGBW = kind("rgbw", 4, 32, 5, 0.05);

    private final Random random;
    private final boolean keep;
    private final List<Prop> props = new ArrayList<>();
    private int nextChannel;

    private MixedYards(long seed) {
        // nearby seeds begin alike unless they are spread
        random = new Random(seed * 0x9E3779B97F4A7C15L);
        keep = seed % 2 != 0;
        nextChannel = 1 + random.nextInt(3) * random.nextInt(5);
    }

    static Site site(long seed) {
        Yard yard = of(seed);
        return new Site(yard, GroundPaths.of(yard));
    }

    static Yard of(long seed) {
        return new MixedYards(seed).yard(seed);
    }

    private static PixelKind kind(String name, int channels, int bits, double volts, double amps) {
        return new PixelKind(name, channels, bits, 1.25, 300, 0, volts, volts * 0.7, amps, 0.1, 0.52, "invented");
    }

    private Yard yard(long seed) {
        int strings = 1 + random.nextInt(2);
        while (strings > 0) {
            int count = 1 + random.nextInt(Math.min(2, strings));
            strings(count);
            strings -= count;
        }
        if (random.nextBoolean()) {
            copy(props.get(random.nextInt(props.size())));
        }
        int outputs = random.nextInt(3);
        for (int i = 0; i < outputs; i++) {
            int lines = 1 + random.nextInt(3);
            props.add(fixture("o" + i, null, lines, null, channels(lines)));
        }
        if (random.nextInt(3) == 0) {
            Panel panel = new Panel(8, pick(5, 8, 10));
            props.add(fixture("wall", RGB, 0, panel, channels(panel.pixels() * 3)));
        }
        ControllerModel model = new ControllerModel(
                "source",
                pick(1, 2, 2),
                pick(1, 2, 2, 3),
                pick(1, 3, 4, 4),
                pick(70, 110, 150, 300),
                pick(400, 900, 65_535),
                510);
        List<Spot> spots = new ArrayList<>();
        for (int s = 0; s < random.nextInt(3); s++) {
            spots.add(new Spot("s" + s, place(), pick(1, 2, 9), pick(0, 0, 9), Double.POSITIVE_INFINITY));
        }
        return new Yard(
                "mixed " + seed,
                Units.M,
                40,
                0,
                1,
                keep,
                List.of(new Controller("c", model, place(), 1, 1)),
                offers(),
                BoardCount.FREE,
                spots,
                props,
                List.of(),
                Rules.defaults(Units.M),
                Costs.defaults(Units.M),
                Work.DEFAULTS);
    }

    private OptionalInt channels(int count) {
        if (!keep) {
            return OptionalInt.empty();
        }
        int gap = random.nextInt(3) == 0 ? pick(1, 3, 6, 30) : 0;
        int first = nextChannel + gap;
        nextChannel = first + count;
        return OptionalInt.of(first);
    }

    private void strings(int count) {
        PixelKind kind = random.nextInt(4) == 0 ? RGBW : RGB;
        int pixels = pick(20, 30, 60);
        Point feed = place();
        boolean alike = random.nextBoolean();
        List<PixelString> strings = new ArrayList<>();
        String id = "p" + props.size();
        for (int s = 1; s <= count; s++) {
            strings.add(new PixelString(id, s, pixels, alike ? feed : place(), alike ? feed : place()));
        }
        Follow follow = List.of(Follow.NONE, Follow.PROP, Follow.ANY).get(random.nextInt(3));
        OptionalInt channel = channels(count * pixels * kind.channels());
        props.add(new Prop(id, kind, follow, true, null, channel, null, strings, 0, null, null));
    }

    private void copy(Prop original) {
        List<PixelString> strings = original.strings().stream()
                .map(string -> new PixelString("copy", string.number(), string.pixels(), place(), place()))
                .toList();
        props.add(new Prop(
                "copy",
                original.pixel(),
                original.follow(),
                true,
                original.id(),
                original.channel(),
                null,
                strings,
                0,
                null,
                null));
    }

    private Prop fixture(String id, @Nullable PixelKind kind, int outputs, @Nullable Panel panel, OptionalInt channel) {
        // means nothing without strings
        Follow follow = List.of(Follow.NONE, Follow.PROP, Follow.ANY).get(props.size() % 3);
        return new Prop(id, kind, follow, true, null, channel, null, List.of(), outputs, panel, place());
    }

    private List<BoardOffer> offers() {
        List<Integer> ports = List.of(List.of(1, 2), List.of(1, 1, 2), List.of(0, 0), List.of(1, 2, 0))
                .get(random.nextInt(4));
        Address address = random.nextInt(6) == 0 ? new Address.None() : new Address.Switches(0, 3, 2);
        List<BoardOffer> offers = new ArrayList<>();
        offers.add(offer("pixels", Drives.PIXELS, ports, address, 0, 0, List.of()));
        offers.add(offer(
                "mains", Drives.OUTPUTS, List.of(), new Address.Rotary(0, 3), pick(3, 4, 6), pick(0, 1, 2), List.of()));
        List<Integer> cut = List.of(List.of(1), List.of(1, 2), List.of(2, 1)).get(random.nextInt(3));
        offers.add(offer("panels", Drives.PANEL, List.of(), new Address.Switches(0, 3, 2), 0, 0, cut));
        return offers;
    }

    private BoardOffer offer(
            String name,
            Drives drives,
            List<Integer> ports,
            Address address,
            int outputs,
            int hears,
            List<Integer> cut) {
        double amps = drives == Drives.OUTPUTS ? 2 : Double.POSITIVE_INFINITY;
        double price = pick(5, 20);
        BoardModel model =
                new BoardModel(name, drives, ports, address, price, 5, amps, Integer.MAX_VALUE, outputs, hears, cut);
        int most = random.nextInt(6) == 0 ? 1 : Integer.MAX_VALUE;
        return new BoardOffer(model, most, random.nextInt(4) == 0 ? 1 : 0, price);
    }

    private Point place() {
        return new Point(random.nextInt(8), random.nextInt(8));
    }

    private int pick(int... values) {
        return values[random.nextInt(values.length)];
    }
}
