package streamwright.solve;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.ortools.Loader;
import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class StreamsAtLeastTest {
    @BeforeAll
    static void load() {
        Loader.loadNativeLibraries();
    }

    /** Few strings: the bound is the truth, found here by trying every packing. */
    @Test
    void fewStringsNeedAsManyStreamsAsSaid() {
        SplittableRandom random = new SplittableRandom(1);
        for (int run = 0; run < 300; run++) {
            int limit = 20 + random.nextInt(80);
            int[] sizes = random.ints(1 + random.nextInt(8), 1, limit + 1).toArray();
            assertThat(StreamsAtLeast.of(sizes, limit))
                    .as("%s in %d", Arrays.toString(sizes), limit)
                    .isEqualTo(EveryPacking.fewest(sizes, limit));
        }
    }

    /** However early it is stopped; and it tells what L2 does not. */
    @Test
    void boundOfPatternsIsNeverAboveTheTruth() {
        SplittableRandom random = new SplittableRandom(2);
        int stronger = 0;
        for (int run = 0; run < 300; run++) {
            int limit = 20 + random.nextInt(80);
            int[] sizes = random.ints(1 + random.nextInt(9), 1, limit / 2 + 2).toArray();
            int truth = EveryPacking.fewest(sizes, limit);
            for (int programmes : new int[] {0, 1, 2, 1000}) {
                int said = StreamsAtLeast.patterns(sizes, limit, programmes);
                assertThat(said)
                        .as("%s in %d after %d programmes", Arrays.toString(sizes), limit, programmes)
                        .isLessThanOrEqualTo(truth);
                stronger += said > StreamsAtLeast.quickly(sizes, limit) ? 1 : 0;
            }
        }
        assertThat(stronger).isPositive();
    }

    /** Too many strings to try every packing. */
    @Test
    void manyStringsNeedWhatTheirPatternsSay() {
        int[] sizes = IntStream.range(0, 70).map(i -> 26).toArray();
        // three of 26 to a stream of 100; 1,820 pixels fill 19 streams
        assertThat(StreamsAtLeast.quickly(sizes, 100)).isEqualTo(19);
        assertThat(StreamsAtLeast.of(sizes, 100)).isEqualTo(24);
    }

    @Test
    void whatHasNoPixelsNeedsNoStream() {
        assertThat(StreamsAtLeast.of(new int[] {0, 0}, 10)).isZero();
        assertThat(StreamsAtLeast.of(new int[0], 10)).isZero();
        assertThat(StreamsAtLeast.of(new int[] {10, 0, 10}, 10)).isEqualTo(2);
    }
}
