package streamwright.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import streamwright.physics.GroundPaths;

/** Strands below a bar, found by pricing, beside every chain of tiny yards at every spot. */
class PricingTest {
    private static final double ROUNDING = 1e-6;
    private static final int YARDS = 200;

    /** A strand: its head and its items, sorted. */
    private record Key(int head, List<Integer> items) {
        static Key of(int[] order) {
            int[] sorted = order.clone();
            Arrays.sort(sorted);
            return new Key(order[0], Arrays.stream(sorted).boxed().toList());
        }
    }

    @Test
    void nothingBelowTheBarIsMissed() {
        SplittableRandom random = new SplittableRandom(1);
        int below = 0;
        for (long seed = 0; seed < YARDS; seed++) {
            Site site = siteOf(seed);
            Items items = new Items(site);
            for (int spot = 0; spot < site.spots.length; spot++) {
                Pricing pricing = new Pricing(site, items, () -> false);
                double[] ofItems = random.doubles(items.size, -1, 8).toArray();
                double[] ofHeads = random.doubles(items.size, -1, 3).toArray();
                Pricing.Worth worth = new Pricing.Worth(ofItems, ofHeads, random.nextDouble(-3, 3));
                double bar = random.nextDouble(-3, 2);
                if (random.nextBoolean()) {
                    // as for spots at some of which each item is worth more
                    pricing.lookAhead(Arrays.stream(ofItems)
                            .map(one -> one + random.nextDouble(2))
                            .toArray());
                }
                Pricing.Result result = pricing.below(spot, worth, bar, 1_000_000, true);
                assertThat(result.complete()).isTrue();
                Map<Key, Double> said = new HashMap<>();
                result.found().forEach(found -> said.put(Key.of(found.order()), found.reduced()));
                Map<Key, Double> all = all(site, items, spot, worth);
                for (Map.Entry<Key, Double> one : all.entrySet()) {
                    if (one.getValue() < bar - ROUNDING) {
                        below++;
                        assertThat(said)
                                .as("any %d, spot %d: %s", seed, spot, one)
                                .containsKey(one.getKey());
                        assertThat(said.get(one.getKey()))
                                .as("any %d, spot %d: %s", seed, spot, one.getKey())
                                .isCloseTo(one.getValue(), within(ROUNDING));
                    }
                }
            }
        }
        assertThat(below).isGreaterThan(500);
    }

    private static Site siteOf(long seed) {
        var yard = AnyYard.of(seed, 2, 5);
        return new Site(yard, GroundPaths.of(yard));
    }

    /** The least reduced cost of every strand that some model can carry. */
    private static Map<Key, Double> all(Site site, Items items, int spot, Pricing.Worth worth) {
        Map<Key, Double> all = new HashMap<>();
        grow(site, items, spot, worth, new ArrayList<>(), all);
        return all;
    }

    private static void grow(
            Site site, Items items, int spot, Pricing.Worth worth, List<Integer> strings, Map<Key, Double> all) {
        for (int next = 0; next < site.strings.length; next++) {
            if (strings.contains(next)) {
                continue;
            }
            strings.add(next);
            int[] order = strings.stream().mapToInt(Integer::intValue).toArray();
            double reduced = cost(site, spot, order) - worth.start() - worth.heads()[items.of[order[0]]];
            for (int string : order) {
                reduced -= worth.items()[items.of[string]];
            }
            if (Double.isFinite(reduced)) {
                int[] ofItems = Arrays.stream(order).map(i -> items.of[i]).toArray();
                all.merge(Key.of(ofItems), reduced, Math::min);
            }
            grow(site, items, spot, worth, strings, all);
            strings.remove(strings.size() - 1);
        }
    }

    /** On the model where it is cheapest; infinite where no port or no stream holds it. */
    private static double cost(Site site, int spot, int[] order) {
        double least = Double.POSITIVE_INFINITY;
        for (int m = 0; m < site.offers.length; m++) {
            Chain chain = Chain.of(site, spot, m, order);
            if (chain != null && Arrays.stream(order).allMatch(i -> site.kind[i] == site.kind[order[0]])) {
                for (int[] ofController : site.limit) {
                    if (chain.pixels() <= ofController[site.kind[order[0]]]) {
                        least = Math.min(least, chain.cost());
                    }
                }
            }
        }
        return least;
    }
}
