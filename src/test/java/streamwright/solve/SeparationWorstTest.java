package streamwright.solve;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.ortools.Loader;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import streamwright.physics.GroundPaths;
import streamwright.yard.Controller;
import streamwright.yard.Drives;
import streamwright.yard.Yard;

/** Cuts beside every set of spots: of those that a point breaks, the most broken are found, and no others are. */
class SeparationWorstTest {
    private static final int YARDS = 120;
    private static final double BROKEN = 1e-3;
    private static final double ROUNDING = 1e-7;

    @BeforeAll
    static void load() {
        Loader.loadNativeLibraries();
    }

    /** What {@link Separation} may be asked of a yard, with sets of spots as the bits of a number. */
    private static final class Case {
        final Site site;
        final Items items;
        final Point point;
        final List<Row> found;
        private final int sets;

        Case(long seed, SplittableRandom random) {
            Yard yard = AnyYard.of(seed, 3, 6);
            site = new Site(yard, GroundPaths.of(yard));
            items = new Items(site);
            sets = 1 << site.spots.length;
            point = Point.nowhere(site, items);
            for (int p = 0; p < site.spots.length; p++) {
                for (int from = 0; from < point.arc().length; from++) {
                    boolean self = from == site.controllers.length + p;
                    point.arc()[from][p] = self || random.nextInt(3) > 0 ? 0 : part(random);
                }
                point.used()[p] = part(random);
                for (int k = 0; k < items.size; k++) {
                    point.served()[k][p] = random.nextBoolean() ? 0 : items.count[k] * part(random) / 2;
                }
            }
            found = new Separation(site, items).broken(point);
        }

        /** Quarters, so that several sets are the worst, and traces that must be let pass or just not. */
        private static double part(SplittableRandom random) {
            return random.nextInt(5) == 0 ? random.nextInt(1, 30) / 10_000.0 : random.nextInt(5) / 4.0;
        }

        double entering(int set) {
            double sum = 0;
            for (int p = 0; p < site.spots.length; p++) {
                for (int from = 0; from < point.arc().length; from++) {
                    int spot = from - site.controllers.length;
                    boolean outside = spot < 0 || (set >> spot & 1) == 0;
                    sum += (set >> p & 1) == 1 && outside ? point.arc()[from][p] : 0;
                }
            }
            return sum;
        }

        double served(int item, int set) {
            return IntStream.range(0, site.spots.length)
                    .filter(p -> (set >> p & 1) == 1)
                    .mapToDouble(p -> point.served()[item][p])
                    .sum();
        }

        /** The smallest and the largest of the sets by whose cut a point is farthest off; none where that is too little. */
        List<Integer> worst(IntToDoubleFunction off, double least) {
            double most = IntStream.range(0, sets).mapToDouble(off).max().orElseThrow();
            if (most <= least) {
                return List.of();
            }
            int[] worst = IntStream.range(0, sets)
                    .filter(set -> off.applyAsDouble(set) > most - ROUNDING)
                    .toArray();
            return List.of(
                    IntStream.of(worst).reduce(sets - 1, (a, b) -> a & b),
                    IntStream.of(worst).reduce(0, (a, b) -> a | b));
        }

        /** The sets that found cuts are about. */
        List<Integer> sets(List<Row> rows) {
            List<Integer> all = new ArrayList<>();
            for (Row row : rows) {
                all.add(IntStream.range(0, site.spots.length)
                        .filter(p -> row.arc(0, p) > 0)
                        .map(p -> 1 << p)
                        .sum());
            }
            return all;
        }
    }

    @Test
    void anItemIsToldOfTheSmallestAndTheLargestSetThatItsArcsDoNotReach() {
        int cuts = 0;
        SplittableRandom random = new SplittableRandom(1);
        for (long seed = 0; seed < YARDS; seed++) {
            Case tried = new Case(seed, random);
            for (int k = 0; k < tried.items.size; k++) {
                int item = k;
                int count = tried.items.count[k];
                List<Integer> sets = tried.sets(tried.found.stream()
                        .filter(row -> row.hasArcs() && row.onlyItem() == item)
                        .toList());
                assertThat(sets)
                        .as("any %d, item %d", seed, k)
                        .containsExactlyElementsOf(
                                tried
                                        .worst(set -> tried.served(item, set) / count - tried.entering(set), BROKEN)
                                        .stream()
                                        .distinct()
                                        .toList());
                cuts += sets.size();
            }
        }
        assertThat(cuts).isGreaterThan(100);
    }

    @Test
    void aUsedSpotIsToldOfTheSmallestSetAroundItThatIsNotReached() {
        int cuts = 0;
        SplittableRandom random = new SplittableRandom(2);
        for (long seed = 0; seed < YARDS; seed++) {
            Case tried = new Case(seed, random);
            for (int p = 0; p < tried.site.spots.length; p++) {
                int spot = p;
                List<Integer> sets = tried.sets(tried.found.stream()
                        .filter(row -> row.hasArcs() && row.onlyItem() == -1 && row.used(spot) < 0)
                        .toList());
                List<Integer> worst = tried.worst(
                        set -> (set >> spot & 1) == 1 ? tried.point.used()[spot] - tried.entering(set) : 0, BROKEN);
                assertThat(sets)
                        .as("any %d, spot %d", seed, p)
                        .containsExactlyElementsOf(worst.stream().limit(1).toList());
                cuts += sets.size();
            }
        }
        assertThat(cuts).isGreaterThan(100);
    }

    /** Shares of streams count: pixels over the most that a stream of any controller takes. */
    @Test
    void theSetIsToldWhoseStreamsOverflowTheMost() {
        int cuts = 0;
        SplittableRandom random = new SplittableRandom(3);
        for (long seed = 0; seed < YARDS; seed++) {
            Case tried = new Case(seed, random);
            Site site = tried.site;
            int streams = IntStream.of(site.streams).max().orElseThrow();
            List<Integer> sets = tried.sets(tried.found.stream()
                    .filter(row -> row.onlyItem() == Row.ALL)
                    .toList());
            List<Integer> worst = tried.worst(
                    set -> IntStream.range(0, tried.items.size)
                                    .mapToDouble(k -> tried.served(k, set) * share(site, tried.items.sample[k]))
                                    .sum()
                            - streams * tried.entering(set),
                    10 * BROKEN);
            assertThat(sets)
                    .as("any %d", seed)
                    .containsExactlyElementsOf(worst.stream().limit(1).toList());
            cuts += sets.size();
        }
        assertThat(cuts).isGreaterThan(30);
    }

    private static double share(Site site, int string) {
        return site.pixels[string] / (double) site.limitMost(site.kind[string]);
    }

    @Test
    void anItemIsToldOfSpotsThatServeMoreThanTheyAreUsed() {
        int cuts = 0;
        int suited = 0;
        SplittableRandom random = new SplittableRandom(4);
        for (long seed = 0; seed < YARDS; seed++) {
            Case tried = new Case(seed, random);
            List<Row> found = tried.found.stream().filter(row -> !row.hasArcs()).toList();
            int expected = 0;
            for (int k = 0; k < tried.items.size; k++) {
                for (int p = 0; p < tried.site.spots.length; p++) {
                    int item = k;
                    int spot = p;
                    double served = tried.point.served()[k][p] - BROKEN;
                    boolean ofUse = served > tried.items.count[k] * tried.point.used()[p];
                    // where there is one group, a used spot has a board of it
                    boolean ofBoards = tried.site.groups > 1
                            && served
                                    > tried.items.count[k] * boards(tried.site, tried.point, tried.items.sample[k], p);
                    List<Row> here = found.stream()
                            .filter(row -> row.item(item, spot) < 0)
                            .toList();
                    assertThat(here.stream().filter(row -> row.used(spot) > 0))
                            .as("any %d, item %d, spot %d", seed, k, p)
                            .hasSize(ofUse ? 1 : 0);
                    assertThat(here)
                            .as("any %d, item %d, spot %d", seed, k, p)
                            .hasSize((ofUse ? 1 : 0) + (ofBoards ? 1 : 0));
                    expected += here.size();
                    suited += ofBoards ? 1 : 0;
                }
            }
            assertThat(found).as("any %d", seed).hasSize(expected);
            cuts += found.size();
        }
        assertThat(cuts).isGreaterThan(100);
        assertThat(suited).isGreaterThan(20);
    }

    private static double boards(Site site, Point point, int string, int spot) {
        double sum = 0;
        for (int m = 0; m < site.offers.length; m++) {
            sum += site.groupOf[m] == site.group[string] ? point.board()[spot][m] : 0;
        }
        return sum;
    }

    /** Streams by every packing of each kind, and by parts of streams; a cable carries the most that any jack gives. */
    @Test
    void cablesThatAllStreamsNeed() {
        int several = 0;
        for (long seed = 0; seed < 400; seed++) {
            Yard yard = AnyYard.of(seed, 3, 7);
            Site site = new Site(yard, GroundPaths.of(yard));
            int streams = 0;
            double parts = 0;
            boolean fits = true;
            for (int kind = 0; kind < site.kinds.length; kind++) {
                int its = kind;
                int limit = site.limitMost(kind);
                int[] sizes = IntStream.range(0, site.strings.length)
                        .filter(i -> site.kind[i] == its && site.sort[i] == Drives.PIXELS)
                        .map(i -> site.pixels[i])
                        .toArray();
                fits &= IntStream.of(sizes).allMatch(size -> size <= limit);
                streams += fits ? EveryPacking.fewest(sizes, limit) : 0;
                parts += IntStream.of(sizes).sum() / (double) limit;
            }
            if (!fits) {
                continue;
            }
            double perCable = IntStream.of(site.streams).max().orElseThrow();
            int expected = (int) Math.max(1, Math.ceil(Math.max(streams, parts - ROUNDING) / perCable));
            assertThat(new Separation(site, new Items(site)).cablesAtLeast())
                    .as("any %d", seed)
                    .isEqualTo(expected);
            several += expected > 1 ? 1 : 0;
        }
        assertThat(several).isGreaterThan(50);
    }

    /** Copies, panels and outputs: no plan has fewer cables. */
    @Test
    void noPlanHasFewerCables() {
        int plans = 0;
        int met = 0;
        for (long seed = 0; seed < 60; seed++) {
            Yard yard = AnyYard.of(seed, 2, 4);
            Site site = new Site(yard, GroundPaths.of(yard));
            int least = new Separation(site, new Items(site)).cablesAtLeast();
            int jacks = yard.controllers().stream()
                    .map(Controller::model)
                    .mapToInt(model -> model.jacks())
                    .sum();
            int[] fewest = {Integer.MAX_VALUE};
            EveryPlan.all(yard, GroundPaths.of(yard), plan -> {
                fewest[0] = Math.min(fewest[0], plan.cables().size());
            });
            if (fewest[0] <= jacks) {
                assertThat(fewest[0]).as("any %d", seed).isGreaterThanOrEqualTo(least);
                plans++;
                met += fewest[0] == least ? 1 : 0;
            }
        }
        assertThat(plans).isGreaterThan(20);
        assertThat(met).isGreaterThan(plans / 2);
    }
}
