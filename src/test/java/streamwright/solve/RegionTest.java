package streamwright.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import streamwright.physics.GroundPaths;
import streamwright.yard.Yard;

/** What a region calls its strands, and what the whole site calls them. */
class RegionTest {
    private static final int YARDS = 60;

    @Test
    void strandsKeepTheirStringsAndPricesInTheWholeSite() {
        int looked = 0;
        for (long seed = 0; seed < YARDS; seed++) {
            Yard yard = AnyYard.of(seed, 3, 6);
            Site site = new Site(yard, GroundPaths.of(yard));
            Items items = new Items(site);
            // every other spot, so that few numbers of items stay as they were
            int[] spots = IntStream.range(0, site.spots.length)
                    .filter(p -> p % 2 == 1)
                    .toArray();
            if (spots.length == 0) {
                continue;
            }
            Region region = Region.of(site, items, spots);
            List<Pricing.Found> own = new Start(region.site, region.items).alone();
            List<Pricing.Found> outward = region.outward(own);
            List<Pricing.Found> whole = new Start(site, items).alone();
            assertThat(outward).hasSameSizeAs(own);
            for (int s = 0; s < own.size(); s++) {
                Pricing.Found strand = outward.get(s);
                int spot = spots[strand.spot()];
                double cost = whole.stream()
                        .filter(one -> one.spot() == spot && Arrays.equals(one.order(), strand.order()))
                        .mapToDouble(Pricing.Found::cost)
                        .min()
                        .orElseThrow();
                assertThat(strand.cost()).isCloseTo(cost, within(1e-9));
                looked++;
            }
            assertThat(region.inward(outward)).usingRecursiveComparison().isEqualTo(own);
        }
        assertThat(looked).isGreaterThan(YARDS);
    }

    @Test
    void guessedStrandsStayBehind() {
        Yard yard = AnyYard.of(1, 3, 6);
        Site site = new Site(yard, GroundPaths.of(yard));
        Items items = new Items(site);
        Region region = Region.of(site, items, new int[] {0});
        var guessed = new Pricing.Found(0, new int[] {0}, 1, 0, true);
        assertThat(region.outward(List.of(guessed))).isEmpty();
    }
}
