package streamwright.check;

import java.util.List;
import java.util.OptionalLong;
import org.jspecify.annotations.Nullable;
import streamwright.plan.StreamUse;
import streamwright.yard.Controller;
import streamwright.yard.PixelKind;

/**
 * A stream that carries something, or is said to.
 *
 * @param controller null where the yard has none of that name
 * @param stated what the cable says of it; null where it says nothing
 * @param kind of its pixels; null where the yard has no pixels of that kind
 */
record SeenStream(
        Jack jack,
        int number,
        @Nullable Controller controller,
        @Nullable StreamUse stated,
        @Nullable PixelKind kind,
        List<Segment> segments) {
    /** Beyond every channel that exists, small enough to count on from. */
    private static final long FAR = 1_000_000_000_000_000L;

    String label() {
        return jack.label(number);
    }

    /** Position of its last used pixel. */
    long pixels() {
        return Math.max(0, segments.stream().mapToLong(Segment::last).max().orElse(0));
    }

    /** Of the first pixel; empty where the plan does not say. */
    OptionalLong startChannel() {
        return stated == null
                ? OptionalLong.empty()
                : OptionalLong.of(Math.max(-FAR, Math.min(FAR, stated.startChannel())));
    }

    /** Channels a pixel; 1 where the kind is not known. */
    int width() {
        return kind == null ? 1 : kind.channels();
    }

    /** Of the pixel at a position; empty where it cannot be known. */
    OptionalLong channelAt(long position) {
        OptionalLong start = startChannel();
        boolean known = start.isPresent() && (kind != null || position == 1);
        return known ? OptionalLong.of(start.getAsLong() + (position - 1) * width()) : OptionalLong.empty();
    }
}
