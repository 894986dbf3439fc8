package streamwright.solve;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * What some cables may carry: of each kind at least and at most so many streams.
 *
 * @param least of each kind; their sum is no more than a cable has
 * @param most of each kind
 * @param lone whether a board without address, which is alone there, is on each of them
 */
record Makeup(int[] least, int[] most, Lone lone) {
    /** Boards without address. */
    enum Lone {
        /** There may be such cables among them. */
        SOME,
        NONE,
        EACH
    }

    static Makeup any(int kinds, int streams) {
        int[] most = new int[kinds];
        Arrays.fill(most, streams);
        return new Makeup(new int[kinds], most, Lone.SOME);
    }

    Makeup with(Lone other) {
        return new Makeup(least, most, other);
    }

    /** Whether there may be boards with an address, or without. */
    boolean has(boolean addressed) {
        return lone == Lone.SOME || addressed == (lone == Lone.NONE);
    }

    /** Streams of some kinds together at most, on a cable of so many. */
    int most(boolean[] of, int streams) {
        int sum = 0;
        int others = 0;
        for (int k = 0; k < most.length; k++) {
            sum += of[k] ? most[k] : 0;
            others += of[k] ? 0 : least[k];
        }
        return Math.min(sum, streams - others);
    }

    /** Those with no more than so many streams of a kind. */
    Makeup upTo(int kind, int streams) {
        int[] fewer = most.clone();
        fewer[kind] = Math.min(fewer[kind], streams);
        return new Makeup(least, fewer, lone);
    }

    /** Those with more, on a cable of {@code all}: so much less is left for the other kinds. */
    Makeup above(int kind, int streams, int all) {
        int[] more = least.clone();
        more[kind] = Math.max(more[kind], streams + 1);
        int taken = Arrays.stream(more).sum();
        int[] room = IntStream.range(0, most.length)
                .map(k -> Math.min(most[k], all - taken + more[k]))
                .toArray();
        return new Makeup(more, room, lone);
    }

    /** Whether there is nothing left to tell apart: a cable may carry all that each kind is allowed. */
    boolean isKnown(int streams) {
        return Arrays.stream(most).sum() <= streams;
    }
}
