package streamwright.report.walk;

import streamwright.physics.Channels;
import streamwright.plan.StringUse;
import streamwright.yard.Controller;
import streamwright.yard.PixelKind;
import streamwright.yard.PixelString;

/**
 * One string on its port.
 *
 * @param board the board's id
 * @param label the prop, and the string's number where the prop has several
 * @param after label of the string before it on the port, empty for the first
 */
public record StringStop(
        Controller controller,
        int jack,
        int stream,
        String board,
        int port,
        StringUse use,
        PixelString string,
        PixelKind kind,
        String label,
        String after) {

    /** Its board and port, e.g. {@code B7-3}. */
    public String at() {
        return board + "-" + port;
    }

    /** Whether a lead brings it the data, and not a jumper. */
    public boolean byLead() {
        return after.isEmpty();
    }

    /** Position of its last pixel on the stream. */
    public int lastPixel() {
        return use.firstPixel() + use.pixels() - 1;
    }

    /** Channel of the last channel of its last pixel. */
    public long lastChannel() {
        return use.channel() + (long) use.pixels() * kind.channels() - 1;
    }

    /** Channel of the first channel of one of its pixels, 1-based. */
    public long channel(int pixel) {
        return use.channel() + (long) (pixel - 1) * kind.channels();
    }

    public int universe() {
        return Channels.universe(controller, use.channel());
    }

    public int slot() {
        return Channels.slot(controller, use.channel());
    }
}
