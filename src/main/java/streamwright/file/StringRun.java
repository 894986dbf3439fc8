package streamwright.file;

import org.jspecify.annotations.Nullable;
import streamwright.yard.Point;

/**
 * Equal strings of one prop, still in one piece: a file may ask for more of them than could be kept.
 *
 * @param tail null where not given
 */
record StringRun(
        int count, int pixels, Point feed, @Nullable Point tail) {
    static final int MOST_PIXELS = 1_000_000;
    static final int MOST_STRINGS = 100_000;
    static final Shape<Integer> PIXELS = Whole.of(1, MOST_PIXELS);
    static final Shape<Integer> COUNT = Whole.of(1, MOST_STRINGS);

    Point end() {
        return tail == null ? feed : tail;
    }
}
