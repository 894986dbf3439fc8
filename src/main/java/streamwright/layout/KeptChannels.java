package streamwright.layout;

import java.util.HashMap;
import java.util.Map;
import streamwright.yard.PixelKind;
import streamwright.yard.PixelString;
import streamwright.yard.Prop;
import streamwright.yard.Yard;

/** Where the lamps of a sequenced show stay: a prop's strings follow its first one without a gap. */
public final class KeptChannels {
    private final Map<String, long[]> strings = new HashMap<>();

    /** @param yard one whose channels are kept */
    public KeptChannels(Yard yard) {
        for (Prop prop : yard.props()) {
            if (prop.channel().isPresent()) {
                strings.put(prop.id(), channels(prop));
            }
        }
    }

    private static long[] channels(Prop prop) {
        PixelKind kind = prop.pixel();
        long[] channels = new long[Math.max(1, prop.strings().size())];
        long next = prop.channel().orElseThrow();
        for (int s = 0; s < channels.length; s++) {
            channels[s] = next;
            next += kind == null || prop.strings().isEmpty()
                    ? 0
                    : prop.strings().get(s).pixels() * (long) kind.channels();
        }
        return channels;
    }

    /** Channel of a string's first pixel. */
    public long of(PixelString string) {
        return at(string.prop(), string.number());
    }

    /** Channel of a prop's first pixel or output. */
    public long of(Prop prop) {
        return at(prop.id(), 1);
    }

    private long at(String prop, int number) {
        long[] channels = strings.get(prop);
        if (channels == null || number > channels.length) {
            throw new IllegalArgumentException("the yard keeps no channel of " + prop + " " + number);
        }
        return channels[number - 1];
    }
}
