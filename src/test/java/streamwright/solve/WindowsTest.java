package streamwright.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import streamwright.yard.Drives;

/** Windows of kept channels: what one stream can carry is in one of them, and nothing else is. */
class WindowsTest {
    private static final int YARDS = 400;

    /** By the rule of the trade that a stream's channels follow one another (common practice, no source). */
    private static boolean together(Site site, List<Integer> strings) {
        int first = strings.get(0);
        long width = site.kept.width[site.kind[first]];
        long from = strings.stream().mapToLong(i -> site.kept.channel[i]).min().orElseThrow();
        long behind = strings.stream()
                .mapToLong(i -> site.kept.channel[i] + site.kept.length(i))
                .max()
                .orElseThrow();
        return strings.stream()
                        .allMatch(i -> site.kind[i] == site.kind[first] && (site.kept.channel[i] - from) % width == 0)
                && behind - from <= width * site.limitMost(site.kind[first]);
    }

    @Test
    void whatOneStreamCarriesIsInOneWindow() {
        Random random = new Random(11);
        int in = 0;
        int out = 0;
        for (long seed = 1; seed < YARDS; seed += 2) {
            Site site = MixedYards.site(seed);
            Items items = new Items(site);
            Windows windows = new Windows(site, items);
            int[] pixels = IntStream.range(0, items.size)
                    .filter(k -> site.sort[items.sample[k]] == Drives.PIXELS)
                    .toArray();
            for (int trial = 0; trial < 20 && pixels.length > 0; trial++) {
                List<Integer> some = random.ints(1 + random.nextInt(3), 0, pixels.length)
                        .mapToObj(at -> pixels[at])
                        .toList();
                boolean one =
                        together(site, some.stream().map(k -> items.sample[k]).toList());
                boolean held =
                        windows.all.stream().anyMatch(window -> some.stream().allMatch(k -> window.holds()[k]));
                assertThat(held).as("mixed yard %d, items %s", seed, some).isEqualTo(one);
                in += one ? 1 : 0;
                out += one ? 0 : 1;
            }
        }
        assertThat(in).isGreaterThan(200);
        assertThat(out).isGreaterThan(200);
    }

    @Test
    void noWindowHoldsNoMoreThanAnother() {
        int several = 0;
        for (long seed = 1; seed < YARDS; seed += 2) {
            Site site = MixedYards.site(seed);
            List<Windows.Window> all = new Windows(site, new Items(site)).all;
            for (int one = 0; one < all.size(); one++) {
                for (int other = 0; other < all.size(); other++) {
                    boolean[] less = all.get(one).holds();
                    boolean[] more = all.get(other).holds();
                    boolean within = IntStream.range(0, less.length).allMatch(k -> !less[k] || more[k]);
                    assertThat(within).as("mixed yard %d", seed).isEqualTo(one == other);
                }
            }
            several += all.size() > 1 ? 1 : 0;
        }
        assertThat(several).isGreaterThan(20);
    }

    @Test
    void channelsNumberedAnewHaveNone() {
        Site site = MixedYards.site(2);
        assertThat(site.kept.on).isFalse();
        assertThat(new Windows(site, new Items(site)).all).isEmpty();
    }

    /** Sockets by the model's own list of the stream that each port hears. */
    @Test
    void socketsThatHearSomeStreams() {
        for (long seed = 0; seed < 40; seed++) {
            Site site = MixedYards.site(seed);
            for (int m = 0; m < site.offers.length; m++) {
                int[] heard = site.sockets.heard[m];
                for (int streams = 0; streams <= 4; streams++) {
                    assertThat(site.sockets.hearing(m, streams)).isEqualTo(most(heard, streams));
                }
            }
        }
    }

    /** Over every choice of so many streams. */
    private static int most(int[] heard, int streams) {
        int most = 0;
        for (int set = 0; set < 1 << 5; set++) {
            if (Integer.bitCount(set) <= streams) {
                int chosen = set;
                int hear = (int) Arrays.stream(heard)
                        .filter(stream -> stream == 0 ? chosen != 0 : (chosen >> stream & 1) != 0)
                        .count();
                most = Math.max(most, hear);
            }
        }
        return most;
    }
}
