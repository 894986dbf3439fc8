package streamwright.solve;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.ortools.Loader;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import streamwright.physics.Ground;
import streamwright.physics.GroundPaths;
import streamwright.yard.Yard;

/** What cables carry: told apart without a gap, and a bound that no plan of a tiny yard undercuts. */
class MakeupTest {
    private static final int YARDS = Integer.getInteger("makeupYards", 2_000);
    private static final int MIXED = Integer.getInteger("mixedYards", 2_000);
    private static final int KINDS = 3;
    private static final int STREAMS = 4;
    private static final double ROUNDING = 1e-6;

    /** Nanoseconds for a bound by the clock. */
    private static final long CLOCK = 100_000_000L;

    private static final ExecutorService WORKERS = Executors.newFixedThreadPool(2);

    @BeforeAll
    static void load() {
        Loader.loadNativeLibraries();
    }

    @AfterAll
    static void end() {
        WORKERS.shutdownNow();
    }

    /**
     * A cable.
     *
     * @param streams of each kind, some of which may be empty
     * @param lone whether a board without address is alone on it
     */
    private record Carried(int[] streams, boolean lone) {}

    private static List<Carried> cables() {
        List<Carried> all = new ArrayList<>();
        for (int a = 0; a <= STREAMS; a++) {
            for (int b = 0; a + b <= STREAMS; b++) {
                for (int c = 0; a + b + c <= STREAMS; c++) {
                    all.add(new Carried(new int[] {a, b, c}, true));
                    all.add(new Carried(new int[] {a, b, c}, false));
                }
            }
        }
        return all;
    }

    private static boolean may(Makeup makeup, Carried cable) {
        for (int k = 0; k < KINDS; k++) {
            if (cable.streams[k] > makeup.most()[k] || cable.streams[k] < makeup.least()[k]) {
                return false;
            }
        }
        return makeup.has(!cable.lone);
    }

    /** Whether cables can be shared out over the make-ups, as many to each as it says. */
    private static boolean may(Makeups makeups, List<Carried> fleet, int next, int[] left) {
        if (next == fleet.size()) {
            return true;
        }
        for (int s = 0; s < left.length; s++) {
            if (left[s] > 0 && may(makeups.sorts().get(s), fleet.get(next))) {
                left[s]--;
                boolean rest = may(makeups, fleet, next + 1, left);
                left[s]++;
                if (rest) {
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean may(Makeups makeups, List<Carried> fleet) {
        int[] left = makeups.cables().stream().mapToInt(Integer::intValue).toArray();
        return may(makeups, fleet, 0, left);
    }

    @Test
    void noCablesAreForgottenWhenTheyAreToldApart() {
        Random random = new Random(5);
        List<Carried> all = cables();
        int moved = 0;
        for (int trial = 0; trial < 300; trial++) {
            int cables = 1 + random.nextInt(4);
            Makeups makeups = Makeups.any(KINDS, STREAMS, cables);
            List<Carried> fleet = new ArrayList<>();
            for (int c = 0; c < cables; c++) {
                fleet.add(all.get(random.nextInt(all.size())));
            }
            for (int step = 0; step < 4; step++) {
                int sort = random.nextInt(makeups.sorts().size());
                int kind = random.nextInt(KINDS);
                Makeup makeup = makeups.sorts().get(sort);
                int most = makeup.most()[kind];
                int least = makeup.least()[kind];
                boolean lone = makeup.lone() == Makeup.Lone.SOME && random.nextInt(3) == 0;
                if (most == least && !lone) {
                    continue;
                }
                int upTo = least + random.nextInt(Math.max(1, most - least));
                MakeupSplit split = lone
                        ? MakeupSplit.byLone(sort, makeup)
                        : MakeupSplit.byStreams(sort, makeup, kind, upTo, STREAMS);
                List<Makeups> parts = makeups.apart(split).stream()
                        .map(Makeups.Part::makeups)
                        .filter(part -> may(part, fleet))
                        .toList();
                assertThat(parts).as("parts of %s", makeups).isNotEmpty();
                makeups = parts.get(random.nextInt(parts.size()));
                moved++;
            }
            assertThat(makeups.holds(sums(fleet))).isTrue();
        }
        assertThat(moved).isGreaterThan(300);
    }

    private static int[] sums(List<Carried> fleet) {
        int[] sums = new int[KINDS];
        for (Carried cable : fleet) {
            Arrays.setAll(sums, k -> sums[k] + cable.streams[k]);
        }
        return sums;
    }

    @Test
    void aStreamMoreOfOneKindIsOneLessForTheOthers() {
        Makeup some = Makeup.any(KINDS, STREAMS).above(0, 1, STREAMS).upTo(1, 1);
        assertThat(some.least()).containsExactly(2, 0, 0);
        assertThat(some.most()).containsExactly(4, 1, 2);
        assertThat(some.most(new boolean[] {false, true, true}, STREAMS)).isEqualTo(2);
        assertThat(some.most(new boolean[] {true, true, false}, STREAMS)).isEqualTo(4);
        assertThat(some.isKnown(STREAMS)).isFalse();
        assertThat(some.upTo(0, 2).upTo(2, 1).isKnown(STREAMS)).isTrue();
    }

    @Test
    void aBoardWithoutAddressIsOnACableOfItsOwnOrNot() {
        Makeup some = Makeup.any(KINDS, STREAMS);
        assertThat(some.has(true) && some.has(false)).isTrue();
        MakeupSplit split = MakeupSplit.byLone(0, some);
        assertThat(split.few().has(true)).isFalse();
        assertThat(split.few().has(false)).isTrue();
        assertThat(split.many().has(true)).isTrue();
        assertThat(split.many().has(false)).isFalse();
        assertThat(split.few().upTo(0, 1).has(true)).isFalse();
        assertThat(split.many().above(0, 1, STREAMS).has(false)).isFalse();
    }

    /** Every plan of tiny yards of two kinds against the bound, driven as far as it goes. */
    @Test
    void noPlanUndercutsTheBound() throws InterruptedException, ExecutionException {
        int bounded = 0;
        int raised = 0;
        for (long seed = 1; seed <= YARDS; seed++) {
            Yard yard = AnyYard.of(seed, 2, 5);
            Ground ground = GroundPaths.of(yard);
            Site site = new Site(yard, ground);
            if (!Fleets.matter(site) || !Obstructions.of(site).isEmpty()) {
                continue;
            }
            EveryPlan.Tried best = EveryPlan.cheapest(yard, ground);
            if (best != null) {
                bounded++;
                raised += raises(site, best.cost(), "yard " + seed, bounded % 3 == 0) ? 1 : 0;
            }
        }
        System.out.printf(
                "%d yards of two kinds bounded by what their cables carry, %d above the relaxation%n", bounded, raised);
        assertThat(bounded).isGreaterThan(YARDS / 50);
        assertThat(raised).isGreaterThan(bounded / 8);
    }

    /** The same with outputs, panels and copies, and of odd seeds with kept channels. */
    @Test
    void noPlanOfMixedHardwareUndercutsTheBound() throws InterruptedException, ExecutionException {
        int[] bounded = new int[2];
        int[] raised = new int[2];
        for (long seed = 1; seed <= MIXED; seed++) {
            Yard yard = MixedYards.of(seed);
            Ground ground = GroundPaths.of(yard);
            Site site = new Site(yard, ground);
            if (!Fleets.matter(site) || !Obstructions.of(site).isEmpty()) {
                continue;
            }
            EveryMixedPlan every = new EveryMixedPlan(yard, ground);
            OptionalDouble optimum = every.optimum();
            if (!every.tooMany() && optimum.isPresent()) {
                int keeps = site.kept.on ? 1 : 0;
                bounded[keeps]++;
                raised[keeps] +=
                        raises(site, optimum.getAsDouble(), "mixed yard " + seed, bounded[keeps] % 3 == 0) ? 1 : 0;
            }
        }
        System.out.printf(
                "mixed yards bounded by what their cables carry: %d, %d above the relaxation; with kept channels %d, %d%n",
                bounded[0], raised[0], bounded[1], raised[1]);
        assertThat(bounded[0]).isGreaterThan(MIXED / 100);
        assertThat(bounded[1]).isGreaterThan(MIXED / 100);
        assertThat(raised[0] + raised[1]).isGreaterThan((bounded[0] + bounded[1]) / 8);
    }

    /** Holds the bound against the optimum, by the clock or by counts; whether it is above the relaxation. */
    private static boolean raises(Site site, double optimum, String yard, boolean byClock)
            throws InterruptedException, ExecutionException {
        Items items = new Items(site);
        Strands strands = new Strands();
        Effort effort = byClock
                ? new Effort(System.nanoTime() + CLOCK, 0, 2, 1, () -> false)
                : new Effort(Long.MAX_VALUE, 2, 2, 1, () -> false);
        var workings = new Relaxation.Workings(strands, 2, effort::stopped, effort::secondsLeft, false);
        Relaxation relaxation = new Relaxation(site, items, workings, MasterLimits.missingPrices(site, items));
        Counts any = new Counts(1, site.jacks(), 1, site.strings.length);
        relaxation.hold(any);
        double root = relaxation.tighten(Fleets.GAIN, value -> false);
        // far above the optimum, so that only what the bound rests on holds it below
        double cost = optimum * 1.4;
        Fleets fleets = new Fleets(site, items, strands, effort, () -> cost, bound -> {}, relaxation);
        fleets.run(any, root, WORKERS, () -> {});
        double bound = fleets.bound(any);
        assertThat(bound).as("bound of %s", yard).isLessThanOrEqualTo(optimum + ROUNDING);
        return bound > root + ROUNDING;
    }
}
