package streamwright.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Streams that strings need at least, said at once: beside every packing. */
class StreamNeedTest {
    /** Sizes with a common measure leave a rest in every stream. */
    @Test
    void whatIsSaidAtOnceIsNeverTooMuch() {
        SplittableRandom random = new SplittableRandom(2);
        int tight = 0;
        for (int run = 0; run < 600; run++) {
            int limit = 20 + random.nextInt(80);
            int measure = 1 + random.nextInt(12);
            int[] sizes = random.ints(1 + random.nextInt(8), 0, limit / measure + 1)
                    .map(size -> size * measure)
                    .toArray();
            int fewest = fewest(sizes, limit, 0, new int[sizes.length], 0);
            assertThat(StreamNeed.streams(sizes, limit))
                    .as("%s in %d", Arrays.toString(sizes), limit)
                    .isBetween((Arrays.stream(sizes).sum() + limit - 1L) / limit, (long) fewest);
            tight += StreamNeed.streams(sizes, limit) == fewest ? 1 : 0;
        }
        assertThat(tight).isGreaterThan(500);
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

    /** Two of 49 leave two pixels of a stream that four do not fit into. Those above a half have a stream each. */
    @Test
    void whatIsSaidAtOnce() {
        assertThat(StreamNeed.streams(new int[] {49, 49, 49, 49, 4}, 100)).isEqualTo(3);
        assertThat(StreamNeed.streams(new int[] {49, 49, 49, 49, 2}, 100)).isEqualTo(2);
        assertThat(StreamNeed.streams(new int[] {51, 51, 51}, 100)).isEqualTo(3);
        assertThat(StreamNeed.streams(new int[] {60, 60, 41, 41}, 100)).isEqualTo(3);
        assertThat(StreamNeed.streams(new int[] {60, 60, 40, 40}, 100)).isEqualTo(2);
        assertThat(StreamNeed.streams(new int[] {0, 0}, 100)).isZero();
        assertThat(StreamNeed.streams(new int[0], 100)).isZero();
    }

    @Test
    void longStreamsCountAsFilled() {
        assertThat(StreamNeed.streams(new int[] {60_000, 60_000, 1}, 1 << 16)).isEqualTo(2);
        assertThat(StreamNeed.streams(new int[] {40_000, 40_000, 40_000}, 1 << 17))
                .isEqualTo(1);
        assertThat(StreamNeed.streams(new int[] {500_000_000, 500_000_000}, 1 << 30))
                .isEqualTo(1);
    }
}
