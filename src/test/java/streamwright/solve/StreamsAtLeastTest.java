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

    /**
     * L2 as it is written (Martello and Toth 1990), for every threshold a: strings above limit - a have a stream each,
     * so have those above a half, and what is from a to a half fills what the latter leave, and further streams.
     */
    @Test
    void whatIsSaidAtOnceIsL2() {
        SplittableRandom random = new SplittableRandom(3);
        int more = 0;
        for (int run = 0; run < 2_000; run++) {
            int limit = 10 + random.nextInt(30);
            int[] sizes = random.ints(random.nextInt(12), 0, limit + 1).toArray();
            int best = 0;
            for (int a = 0; a <= limit / 2; a++) {
                int least = Math.max(a, 1);
                int above = limit - a;
                long first = Arrays.stream(sizes).filter(size -> size > above).count();
                int[] second = Arrays.stream(sizes)
                        .filter(size -> size <= above && 2 * size > limit)
                        .toArray();
                int third = Arrays.stream(sizes)
                        .filter(size -> 2 * size <= limit && size >= least)
                        .sum();
                int over =
                        third - (second.length * limit - Arrays.stream(second).sum());
                best = Math.max(
                        best, (int) first + second.length + (int) Math.ceil(Math.max(0, over) / (double) limit));
            }
            assertThat(StreamsAtLeast.quickly(sizes, limit))
                    .as("%s in %d", Arrays.toString(sizes), limit)
                    .isEqualTo(best);
            more += best > (Arrays.stream(sizes).sum() + limit - 1) / limit ? 1 : 0;
        }
        assertThat(more).isGreaterThan(200);
    }

    /** 274 pixels in four streams of 69 leave two free: parts of patterns fit so, whole ones do not. */
    @Test
    void whereNeitherL2NorPatternsTellTheTruth() {
        int[] sizes = {46, 26, 26, 23, 23, 23, 17, 17, 17, 17, 13, 13, 13};
        assertThat(StreamsAtLeast.quickly(sizes, 69)).isEqualTo(4);
        assertThat(StreamsAtLeast.patterns(sizes, 69, 1_000)).isEqualTo(4);
        assertThat(EveryPacking.fewest(sizes, 69)).isEqualTo(5);
        assertThat(StreamsAtLeast.of(sizes, 69)).isEqualTo(5);
    }

    /** First fit puts 4 + 4, 4 + 3 + 3, 3 + 3 + 3 and 3 into streams of 10; three times 4 + 3 + 3 fill three. */
    @Test
    void whereFirstFitNeedsMoreThanTheTruth() {
        int[] sizes = {4, 4, 4, 3, 3, 3, 3, 3, 3};
        assertThat(StreamsAtLeast.of(sizes, 10)).isEqualTo(3);
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
