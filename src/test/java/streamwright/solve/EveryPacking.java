package streamwright.solve;

/** Streams for a few strings, by trying every packing. */
final class EveryPacking {
    private EveryPacking() {}

    /** The fewest streams that hold all; strings without pixels need none. */
    static int fewest(int[] sizes, int limit) {
        return fewest(sizes, limit, 0, new int[sizes.length], 0);
    }

    private static int fewest(int[] sizes, int limit, int next, int[] load, int bins) {
        if (next == sizes.length) {
            return bins;
        }
        if (sizes[next] == 0) {
            return fewest(sizes, limit, next + 1, load, bins);
        }
        int best = Integer.MAX_VALUE;
        for (int bin = 0; bin <= bins; bin++) {
            if (bin < load.length && load[bin] + sizes[next] <= limit) {
                load[bin] += sizes[next];
                best = Math.min(best, fewest(sizes, limit, next + 1, load, Math.max(bins, bin + 1)));
                load[bin] -= sizes[next];
            }
        }
        return best;
    }
}
