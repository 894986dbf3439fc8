package streamwright.layout;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import streamwright.physics.Feed;
import streamwright.physics.Ground;
import streamwright.physics.Power;
import streamwright.physics.Runs;
import streamwright.plan.Injection;
import streamwright.plan.PortUse;
import streamwright.plan.StreamUse;
import streamwright.plan.StringUse;
import streamwright.yard.PixelKind;
import streamwright.yard.PixelString;
import streamwright.yard.Yard;

/** A port's channels and power. */
record Ports(Yard yard, Ground ground, Map<Integer, StreamUse> streams) {

    /**
     * A port as planned.
     *
     * @param ampsAll injected stretches included
     * @param injectionCost with the wire
     */
    record Powered(PortUse use, double ampsAll, double injectionCost) {}

    Powered of(Layout.Hung board, Placement.Port port) {
        Optional<Feed> found = feed(board, port);
        // where no injections help, the port is planned without any, and the audit tells what is broken
        double all = port.strings().stream()
                .mapToDouble(placed -> placed.string().pixels() * placed.kind().amps() * yard.brightness())
                .sum();
        Feed feed = found.orElse(new Feed(all, all, Double.NaN, List.of(), 0));
        PortUse use = new PortUse(
                port.chain().port(),
                port.chain().stream(),
                Whole.of(port.startPixel()),
                feed.amps(),
                port.strings().stream()
                        .map(placed -> string(placed, port.chain().stream()))
                        .toList(),
                feed.injections().stream().map(place -> injection(port, place)).toList());
        return new Powered(use, feed.ampsAll(), feed.cost());
    }

    private StringUse string(Placement.Placed placed, int stream) {
        PixelString string = placed.string();
        return new StringUse(
                string.prop(),
                string.number(),
                placed.nulls(),
                Whole.of(placed.firstPixel()),
                string.pixels(),
                Others.channel(streams, stream, placed.firstPixel(), placed.kind()),
                placed.length());
    }

    private static Injection injection(Placement.Port port, Feed.Place place) {
        PixelString string = port.strings().get(place.string()).string();
        return new Injection(string.prop(), string.number(), place.pixel());
    }

    /** Empty where no injections help, or where the strings are not of one kind. */
    private Optional<Feed> feed(Layout.Hung board, Placement.Port port) {
        List<Placement.Placed> strings = port.strings();
        PixelKind kind = strings.get(0).kind();
        if (!strings.stream().allMatch(placed -> placed.kind().equals(kind))) {
            return Optional.empty();
        }
        int[] pixels = strings.stream().mapToInt(s -> s.string().pixels()).toArray();
        double[] lengths =
                strings.stream().mapToDouble(Placement.Placed::length).toArray();
        double[] wires = strings.stream()
                .mapToDouble(s -> Runs.lead(
                        yard.rules(), ground.path(board.spot().at(), s.string().feed())))
                .toArray();
        return Power.of(yard, kind, board.model().fuse()).feed(lengths[0], pixels, lengths, wires, pixels.length);
    }
}
