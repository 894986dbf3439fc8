package streamwright.plan;

import java.util.List;

/**
 * A port that carries something.
 *
 * @param startPixel where its data begins on the stream, null pixels included
 * @param amps drawn through the port's fuse at the show's brightness
 * @param strings in the order of the data
 */
public record PortUse(
        int port, int stream, int startPixel, double amps, List<StringUse> strings, List<Injection> injections) {
    public PortUse {
        strings = List.copyOf(strings);
        injections = List.copyOf(injections);
    }
}
