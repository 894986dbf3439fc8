package streamwright.solve;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import streamwright.physics.GroundPaths;
import streamwright.yard.Controller;
import streamwright.yard.ControllerModel;
import streamwright.yard.Drives;
import streamwright.yard.Follow;
import streamwright.yard.PixelKind;
import streamwright.yard.PixelString;
import streamwright.yard.Point;
import streamwright.yard.Prop;
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

    /**
     * Up to 65,536 pixels, five strings of 22,000 lie two and two in streams that none fills: three streams. In longer ones
     * their 110,000 pixels count as filling two.
     */
    @Test
    void fromWhatLengthOnStreamsCountAsFilled() {
        int[] five = {22_000, 22_000, 22_000, 22_000, 22_000};
        assertThat(StreamNeed.streams(five, 1 << 16)).isEqualTo(3);
        assertThat(StreamNeed.streams(five, (1 << 16) + 1)).isEqualTo(2);
    }

    /** Three of 33 leave a pixel of a stream of 100; with more than 2,000 strings it counts as filled. */
    @Test
    void fromHowManyStringsOnStreamsCountAsFilled() {
        int[] all = new int[2_001];
        Arrays.fill(all, 33);
        // 66,000 / 99 and 66,033 / 100
        assertThat(StreamNeed.streams(Arrays.copyOf(all, 2_000), 100)).isEqualTo(667);
        assertThat(StreamNeed.streams(all, 100)).isEqualTo(661);
    }

    /** At 40 frames a second a stream takes 823 pixels of 24 bits, or 617 of 32 bits. */
    @Test
    void ofAWholeYard() {
        // 800 pixels and 600, each in a stream of its kind; in those of the other kind they would need three
        assertThat(need(List.of(400, 400), List.of(300, 300))).isEqualTo(2);
        // one that fills a stream, three that each need one, for 2,323 pixels
        assertThat(need(List.of(823, 500, 500, 500), List.of(1))).isEqualTo(5);
        // one that no stream takes, of which its pixels alone are counted
        assertThat(need(List.of(900), List.of(1))).isEqualTo(2);
    }

    private static long need(List<Integer> rgb, List<Integer> rgbw) {
        Yard garden = TinyGarden.of(1);
        PixelKind first = requireNonNull(garden.props().get(0).pixel());
        PixelKind second = Changed.with(Changed.with(first, "channels", 4), "bits", 32);
        Controller controller = garden.controllers().get(0);
        ControllerModel wide = Changed.with(controller.model(), "streamMost", 1024);
        Yard yard = Changed.with(garden, "controllers", List.of(Changed.with(controller, "model", wide)));
        List<Prop> props = List.of(prop("first", first, rgb), prop("second", second, rgbw));
        yard = Changed.with(yard, "props", props);
        return StreamNeed.of(new Site(yard, GroundPaths.of(yard)));
    }

    private static Prop prop(String id, PixelKind kind, List<Integer> pixels) {
        Point here = new Point(0, 0);
        List<PixelString> strings = new ArrayList<>();
        pixels.forEach(each -> strings.add(new PixelString(id, strings.size() + 1, each, here, here)));
        return Prop.ofStrings(id, kind, Follow.PROP, strings);
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
