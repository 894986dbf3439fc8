package streamwright.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static streamwright.solve.Changed.with;

import com.google.ortools.Loader;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import streamwright.physics.Ground;
import streamwright.physics.GroundPaths;
import streamwright.yard.Yard;

/** The bounds that tiny yards seldom need, forced on them and held against brute force. */
class PartialBoundsTest {
    private static final int YARDS = 300;
    private static final double ROUNDING = 1e-6;
    private static final ExecutorService WORKERS = Executors.newFixedThreadPool(2);

    @BeforeAll
    static void load() {
        Loader.loadNativeLibraries();
    }

    @AfterAll
    static void end() {
        WORKERS.shutdownNow();
    }

    private interface Bounding {
        void raise(Site site, Effort effort, Incumbent incumbent) throws InterruptedException, ExecutionException;
    }

    private record Bounded(long seed, double optimum, double cost, double bound) {}

    private static List<Bounded> bounded(int level, Bounding bounding) throws InterruptedException, ExecutionException {
        return bounded(level, bounding, yard -> yard);
    }

    private static List<Bounded> bounded(int level, Bounding bounding, UnaryOperator<Yard> change)
            throws InterruptedException, ExecutionException {
        List<Bounded> all = new ArrayList<>();
        for (long seed = 0; seed < YARDS; seed++) {
            Yard yard = change.apply(AnyYard.of(seed, 2, 5));
            Ground ground = GroundPaths.of(yard);
            EveryPlan.Tried best = EveryPlan.cheapest(yard, ground);
            Site site = new Site(yard, ground);
            if (best == null || !Obstructions.of(site).isEmpty()) {
                continue;
            }
            Draft draft = new Draft(site);
            new Search(draft, new Nearby(site), new SplittableRandom(seed)).fill();
            if (!draft.complete() || !draft.loads.channelsHold()) {
                continue;
            }
            Incumbent incumbent = new Incumbent((cost, bound) -> {});
            incumbent.offer(Snapshot.of(draft));
            long deadline = level > 0 ? Long.MAX_VALUE : System.nanoTime() + 300_000_000L;
            bounding.raise(site, new Effort(deadline, level, 2, 1, () -> false), incumbent);
            all.add(new Bounded(seed, best.cost(), incumbent.cost(), incumbent.bound()));
        }
        assertThat(all).hasSizeGreaterThan(YARDS / 3);
        assertThat(all).allSatisfy(one -> {
            assertThat(one.bound).isLessThanOrEqualTo(one.optimum + ROUNDING);
            assertThat(one.cost).isGreaterThanOrEqualTo(one.optimum - ROUNDING);
        });
        return all;
    }

    /** Regions of one or two strings each, so that nearly every chain and every price crosses a border. */
    @Test
    void regionsNeverBoundTooHigh() throws InterruptedException, ExecutionException {
        List<Bounded> all = bounded(
                2, (site, effort, incumbent) -> new Regions(site, new Items(site), 2, effort, incumbent).run(WORKERS));
        // and they say something
        assertThat(all.stream().filter(one -> one.bound > 0.5 * one.optimum)).hasSizeGreaterThan(all.size() / 2);
    }

    /** Every cable is to be shorter than the longest of a plan made without a search, so that lengths decide. */
    private static Yard shorter(Yard yard) {
        Draft draft = new Draft(new Site(yard, GroundPaths.of(yard)));
        new Search(draft, new Nearby(draft.site), new SplittableRandom(1)).fill();
        double longest = 0;
        for (Draft.Cable cable : draft.cables) {
            longest = Math.max(longest, cable.length);
        }
        return longest == 0 ? yard : with(yard, "rules", with(yard.rules(), "cableMost", 0.95 * longest));
    }

    @Test
    void cablesAtTheirLengthNeverBoundTooHigh() throws InterruptedException, ExecutionException {
        int[] lengths = {0};
        List<Bounded> all = bounded(
                0,
                (site, effort, incumbent) -> {
                    lengths[0] += Lengths.matter(site, incumbent.best()) ? 1 : 0;
                    new Proof(site, new Strands(), new Items(site), effort, incumbent, WORKERS, -1).run(() -> {});
                },
                PartialBoundsTest::shorter);
        assertThat(lengths[0]).isGreaterThan(all.size() / 3);
        assertThat(all.stream().filter(one -> one.bound > one.optimum - 0.005)).hasSizeGreaterThan(all.size() / 3);
    }

    /** Every case is told apart spot by spot until nothing is left to decide. */
    @Test
    void casesToldApartNeverBoundTooHigh() throws InterruptedException, ExecutionException {
        List<Bounded> all = bounded(
                0,
                (site, effort, incumbent) ->
                        new Proof(site, new Strands(), new Items(site), effort, incumbent, WORKERS, -1).run(() -> {}));
        assertThat(all.stream().filter(one -> one.bound > one.optimum - 0.005)).hasSizeGreaterThan(all.size() / 3);
    }
}
