package streamwright.solve;

import java.util.BitSet;
import java.util.stream.IntStream;
import streamwright.yard.Drives;

/** The streams that all pixels of a yard need: each kind by its own limit; strings are never split, copies count once. */
final class StreamNeed {
    private static final double ROUNDING = 1e-9;

    /** With more pixels to a stream or more strings, a stream counts as one that can be filled. */
    private static final int LONG = 1 << 16;

    private static final int MANY = 2_000;

    private StreamNeed() {}

    static long of(Site site) {
        double share = 0;
        long whole = 0;
        for (int k = 0; k < site.kinds.length; k++) {
            int kind = k;
            int limit = Math.max(1, site.limitMost(k));
            int[] sizes = IntStream.range(0, site.strings.length)
                    .filter(i -> site.kind[i] == kind && site.sort[i] == Drives.PIXELS)
                    .map(i -> site.pixelsAtLeast[i])
                    .toArray();
            if (IntStream.of(sizes).allMatch(size -> size <= limit)) {
                whole += streams(sizes, limit);
            }
            share += IntStream.range(0, site.strings.length)
                            .filter(i -> site.kind[i] == kind)
                            .mapToLong(i -> site.pixelsAtLeast[i])
                            .sum()
                    / (double) limit;
        }
        return Math.max(whole, (long) Math.ceil(share - ROUNDING));
    }

    /** Streams for strings of one kind: no fewer than by L2, nor than if each were as full as any can be. */
    static long streams(int[] sizes, int limit) {
        long sum = IntStream.of(sizes).asLongStream().sum();
        long fullest = Math.max(1, fullest(sizes, limit));
        return Math.max(StreamsAtLeast.quickly(sizes, limit), -Math.floorDiv(-sum, fullest));
    }

    /** The most that some of the strings fill of a stream. */
    private static int fullest(int[] sizes, int limit) {
        if (limit > LONG || sizes.length > MANY) {
            return limit;
        }
        BitSet sums = new BitSet(limit + 1);
        sums.set(0);
        for (int size : sizes) {
            for (int sum = sums.previousSetBit(limit - size);
                    size > 0 && sum >= 0;
                    sum = sums.previousSetBit(sum - 1)) {
                sums.set(sum + size);
            }
            if (sums.get(limit)) {
                return limit;
            }
        }
        return sums.length() - 1;
    }
}
