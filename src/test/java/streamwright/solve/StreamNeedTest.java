package streamwright.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import streamwright.physics.GroundPaths;
import streamwright.yard.Drives;
import streamwright.yard.Yard;

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

    /** Of a yard with several kinds: each kind packs by itself, and copies may lie on what they copy. */
    @Test
    void aYardNeedsNoMoreThanItsKindsPackedEachByItself() {
        int several = 0;
        int tight = 0;
        int all = 0;
        for (long seed = 0; seed < 300; seed++) {
            Yard yard = seed % 2 == 0 ? AnyYard.of(seed, 2, 8) : MixedYards.of(seed);
            Site site = new Site(yard, GroundPaths.of(yard));
            long fewest = 0;
            double filled = 0;
            int kinds = 0;
            boolean fits = true;
            for (int kind = 0; kind < site.kinds.length; kind++) {
                List<Integer> sizes = new ArrayList<>();
                int limit = site.limitMost(kind);
                for (int i = 0; i < site.strings.length; i++) {
                    boolean copy = yard.props().get(site.prop[i]).copyOf() != null;
                    if (site.kind[i] == kind && site.sort[i] == Drives.PIXELS && !copy) {
                        sizes.add(site.pixels[i]);
                    }
                }
                int[] given = sizes.stream().mapToInt(Integer::intValue).toArray();
                fits &= sizes.stream().allMatch(size -> size <= limit);
                fewest += fits ? EveryPacking.fewest(given, limit) : 0;
                filled += Arrays.stream(given).sum() / (double) limit;
                kinds += sizes.isEmpty() ? 0 : 1;
            }
            long need = StreamNeed.of(site);
            assertThat(need).as(yard.name()).isGreaterThanOrEqualTo((long) Math.ceil(filled - 1e-9));
            boolean only = yard.props().stream().allMatch(prop -> prop.outputs() == 0 && prop.panel() == null);
            if (fits && only) {
                all++;
                assertThat(need).as(yard.name()).isLessThanOrEqualTo(fewest);
                tight += need == fewest ? 1 : 0;
                several += kinds > 1 ? 1 : 0;
            }
        }
        assertThat(several).isGreaterThan(10);
        assertThat(tight).isGreaterThan(all * 9 / 10);
    }
}
