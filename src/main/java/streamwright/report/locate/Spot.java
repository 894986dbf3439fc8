package streamwright.report.locate;

import java.util.List;
import streamwright.physics.Channels;
import streamwright.report.walk.CableWalk;
import streamwright.yard.PixelKind;

/**
 * One pixel of one stream, in every way of saying where it is.
 *
 * @param pixel 1-based position on the stream
 * @param channel of its first channel, {@code lastChannel} of its last; universe and slot are those of the first
 * @param shown where it is to be seen; empty where the stream carries it past everything
 */
public record Spot(
        String controller,
        int jack,
        int stream,
        int pixel,
        String kind,
        long channel,
        long lastChannel,
        int universe,
        int slot,
        List<Shown> shown) {
    public Spot {
        shown = List.copyOf(shown);
    }

    static Spot of(CableWalk cable, int stream, int pixel, long startChannel, PixelKind kind, List<Shown> shown) {
        long channel = startChannel + (long) (pixel - 1) * kind.channels();
        return new Spot(
                cable.cable().controller(),
                cable.cable().jack(),
                stream,
                pixel,
                kind.name(),
                channel,
                channel + kind.channels() - 1,
                Channels.universe(cable.controller(), channel),
                Channels.slot(cable.controller(), channel),
                shown);
    }
}
