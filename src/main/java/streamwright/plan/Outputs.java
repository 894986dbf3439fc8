package streamwright.plan;

import java.util.List;

/** The block of one channel an output, in whole pixels of the stream that the board hears. */
public record Outputs(int stream, int startPixel, int pixels, long channel, List<Line> lines) {
    public Outputs {
        lines = List.copyOf(lines);
    }

    /** One output: which of the prop's it switches, and its channel. */
    public record Line(int output, String prop, int number, long channel) {}
}
