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
            int fewest = EveryPacking.fewest(sizes, limit);
            assertThat(StreamNeed.streams(sizes, limit))
                    .as("%s in %d", Arrays.toString(sizes), limit)
                    .isBetween((Arrays.stream(sizes).sum() + limit - 1L) / limit, (long) fewest);
            tight += StreamNeed.streams(sizes, limit) == fewest ? 1 : 0;
        }
        assertThat(tight).isGreaterThan(500);
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
