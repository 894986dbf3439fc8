package streamwright.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import streamwright.file.ModelLibrary;
import streamwright.yard.Follow;
import streamwright.yard.Panel;
import streamwright.yard.PixelKind;
import streamwright.yard.PixelString;
import streamwright.yard.Point;
import streamwright.yard.Prop;

/** Turns a home's props of one kind into props of several, some of them copies, with mains outputs and a panel beside. */
final class MixedProps {
    private final SplittableRandom random;
    private final List<PixelKind> kinds = new ArrayList<>();

    MixedProps(SplittableRandom random, long seed) {
        this.random = random;
        int turn = Math.floorMod(seed, 4);
        kinds.add(kind(turn == 3 ? "ws2815" : "ws2811"));
        // 32, 24 at half the speed, 48 and 24 bits; 5 V but for the second
        kinds.add(
                kind(List.of("sk6812-rgbw", "ws2811-slow", "ws2816", "ws2812b").get(turn)));
        if (seed % 3 != 0) {
            kinds.add(kind(List.of("ws2811-slow", "sk6812-rgbw", "ws2811-slow", "ws2816")
                    .get(turn)));
        }
    }

    private static PixelKind kind(String name) {
        return Objects.requireNonNull(ModelLibrary.builtIn().pixels().get(name));
    }

    /** What most props are of. */
    PixelKind main() {
        return kinds.get(0);
    }

    /** Every fourth prop or so of each of the other kinds, at least one of each. */
    List<Prop> kinds(List<Prop> props) {
        List<Prop> mixed = new ArrayList<>();
        int shift = random.nextInt(4);
        for (int p = 0; p < props.size(); p++) {
            int turn = p < 4 ? Math.floorMod(p + shift, 4) : random.nextInt(4);
            mixed.add(with(props.get(p), kinds.get(turn < kinds.size() ? turn : 0), null));
        }
        return mixed;
    }

    /** Props of equally many strings show the picture of the first of them, two or three of each number of strings. */
    List<Prop> copies(List<Prop> props) {
        Map<Integer, List<Prop>> alike = new LinkedHashMap<>();
        for (Prop prop : props) {
            alike.computeIfAbsent(prop.strings().size(), size -> new ArrayList<>())
                    .add(prop);
        }
        Map<String, Prop> originals = new LinkedHashMap<>();
        for (List<Prop> group : alike.values()) {
            Prop original = group.get(0);
            for (int copies = 1 + random.nextInt(2), c = 1; c < group.size() && c <= copies; c++) {
                originals.put(group.get(c).id(), original);
            }
        }
        return props.stream()
                .map(prop -> originals.containsKey(prop.id()) ? copy(prop, originals.get(prop.id())) : prop)
                .toList();
    }

    private static Prop copy(Prop prop, Prop original) {
        List<PixelString> strings = new ArrayList<>();
        for (PixelString string : prop.strings()) {
            int pixels = original.strings().get(string.number() - 1).pixels();
            strings.add(new PixelString(prop.id(), string.number(), pixels, string.feed(), string.tail()));
        }
        return with(Prop.ofStrings(prop.id(), main(original), prop.follow(), strings), main(original), original.id());
    }

    private static PixelKind main(Prop prop) {
        return Objects.requireNonNull(prop.pixel());
    }

    private static Prop with(Prop prop, @Nullable PixelKind kind, @Nullable String copyOf) {
        return new Prop(
                prop.id(),
                kind,
                prop.follow(),
                prop.tailGiven(),
                copyOf,
                prop.channel(),
                prop.controller(),
                prop.strings(),
                prop.outputs(),
                prop.panel(),
                prop.at());
    }

    /** Lamps at the feeds of some props. */
    List<Prop> outputs(List<Prop> props) {
        List<Prop> lamps = new ArrayList<>();
        for (int l = 1 + random.nextInt(3); l > 0; l--) {
            lamps.add(fixture("lamps " + l, null, 1 + random.nextInt(5), null, at(props)));
        }
        return lamps;
    }

    /** A sign near the feed of some prop. */
    Prop panel(List<Prop> props) {
        Panel panel =
                List.of(new Panel(32, 16), new Panel(64, 16), new Panel(32, 8)).get(random.nextInt(3));
        return fixture("sign", main(), 0, panel, at(props));
    }

    private Point at(List<Prop> props) {
        List<PixelString> strings =
                props.stream().flatMap(prop -> prop.strings().stream()).toList();
        Point feed = strings.get(random.nextInt(strings.size())).feed();
        return new Point(feed.x(), feed.y(), feed.z() + 1);
    }

    private static Prop fixture(String id, @Nullable PixelKind kind, int outputs, @Nullable Panel panel, Point at) {
        return new Prop(id, kind, Follow.PROP, true, null, OptionalInt.empty(), null, List.of(), outputs, panel, at);
    }

    /** A show sequenced already: kind by kind, each from the left to the right, with gaps here and there. */
    List<Prop> sequenced(List<Prop> props) {
        List<Prop> order = props.stream()
                .filter(prop -> prop.copyOf() == null)
                .sorted(Comparator.comparing(MixedProps::kindName).thenComparing(MixedProps::left))
                .toList();
        Map<String, Integer> channels = new LinkedHashMap<>();
        int next = 1;
        String kind = "";
        for (Prop prop : order) {
            if (!kindName(prop).equals(kind)) {
                kind = kindName(prop);
                // each kind begins with a hundred
                next = Math.floorDiv(next + 98, 100) * 100 + 1;
            } else if (random.nextInt(4) == 0) {
                next += 30 * (1 + random.nextInt(3));
            }
            channels.put(prop.id(), next);
            next += channels(prop);
        }
        return props.stream()
                .map(prop ->
                        numbered(prop, channels.getOrDefault(prop.copyOf() == null ? prop.id() : prop.copyOf(), 1)))
                .collect(Collectors.toList());
    }

    private static String kindName(Prop prop) {
        return prop.pixel() == null ? "" : prop.pixel().name();
    }

    private static double left(Prop prop) {
        return prop.at() != null ? prop.at().x() : prop.strings().get(0).feed().x();
    }

    private static int channels(Prop prop) {
        if (prop.pixel() == null) {
            return prop.outputs();
        }
        int pixels = prop.panel() != null
                ? prop.panel().pixels()
                : prop.strings().stream().mapToInt(PixelString::pixels).sum();
        return pixels * prop.pixel().channels();
    }

    private static Prop numbered(Prop prop, int channel) {
        return new Prop(
                prop.id(),
                prop.pixel(),
                prop.follow(),
                prop.tailGiven(),
                prop.copyOf(),
                OptionalInt.of(channel),
                null,
                prop.strings(),
                prop.outputs(),
                prop.panel(),
                prop.at());
    }
}
