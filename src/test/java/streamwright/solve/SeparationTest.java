package streamwright.solve;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.ortools.Loader;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import streamwright.physics.Ground;
import streamwright.physics.GroundPaths;
import streamwright.yard.Yard;

/** Cuts beside every plan of tiny yards: no plan breaks one, and each breaks the point that it was found for. */
class SeparationTest {
    private static final int YARDS = 80;
    private static final int PLANS_MOST = 3_000;
    private static final int POINTS = 40;
    private static final double ROUNDING = 1e-6;

    @BeforeAll
    static void load() {
        Loader.loadNativeLibraries();
    }

    /** A site with the points of its plans, each once. */
    private record Planned(long seed, Site site, Items items, List<Weights> plans) {
        static Planned of(long seed) {
            Yard yard = AnyYard.of(seed, 2, 4);
            Ground ground = GroundPaths.of(yard);
            Site site = new Site(yard, ground);
            Items items = new Items(site);
            List<Weights> plans = new ArrayList<>();
            Set<String> seen = new HashSet<>();
            EveryPlan.all(yard, ground, plan -> {
                Weights weights = Weights.of(site, items, plan);
                if (plans.size() < PLANS_MOST && seen.add(weights.toString())) {
                    plans.add(weights);
                }
            });
            return new Planned(seed, site, items, plans);
        }

        void keepAll(List<Row> rows) {
            for (Row row : rows) {
                for (Weights plan : plans) {
                    if (plan.broken(row) > ROUNDING) {
                        throw new AssertionError("any " + seed + ": a plan breaks a cut by " + plan.broken(row) + ": "
                                + plan + ", cut " + told(row));
                    }
                }
            }
        }

        private String told(Row row) {
            StringBuilder told = new StringBuilder();
            for (int p = 0; p < site.spots.length; p++) {
                told.append(" spot ").append(p).append(": used ").append(row.used(p));
                for (int k = 0; k < items.size; k++) {
                    told.append(" item ")
                            .append(row.item(k, p))
                            .append(" head ")
                            .append(row.head(k, p));
                }
            }
            return told + " at least " + row.low();
        }
    }

    /** Every cut that can be stated of a set of spots, whether a relaxation would need it or not. */
    @Test
    void noPlanBreaksAnyCut() {
        int yards = 0;
        for (long seed = 0; seed < YARDS; seed++) {
            Planned planned = Planned.of(seed);
            planned.keepAll(every(planned.site, planned.items));
            yards += planned.plans.isEmpty() ? 0 : 1;
        }
        assertThat(yards).isGreaterThan(YARDS / 3);
    }

    /** What streams must enter a set of spots is never more than plans have, whatever is thought to be served there. */
    @Test
    void noPlanHasFewerCablesThanStreamsNeed() {
        SplittableRandom random = new SplittableRandom(2);
        int needs = 0;
        int rounded = 0;
        for (long seed = 0; seed < YARDS; seed++) {
            Planned planned = Planned.of(seed);
            Crowding crowding = new Crowding(planned.site, planned.items);
            StreamNeeds of = new StreamNeeds(planned.site, planned.items);
            List<Row> rows = new ArrayList<>();
            for (int mask = 1; mask < 1 << planned.site.spots.length; mask++) {
                BitSet spots = BitSet.valueOf(new long[] {mask});
                for (int i = 0; i < POINTS; i++) {
                    double[] served = new double[planned.items.size];
                    for (int k = 0; k < served.length; k++) {
                        double all = planned.items.count[k];
                        served[k] =
                                random.nextInt(3) == 0 ? all * random.nextDouble() : random.nextInt(4) == 0 ? 0 : all;
                    }
                    List<StreamNeeds.Need> some = of.of(served);
                    if (!some.isEmpty() && !planned.plans.isEmpty()) {
                        rows.add(crowding.row(spots, some));
                        rows.add(crowding.row(spots, some.subList(0, 1)));
                        needs++;
                        rounded += some.stream().anyMatch(need -> need.streams() > 1) ? 1 : 0;
                    }
                }
            }
            planned.keepAll(rows);
        }
        assertThat(needs).isGreaterThan(5_000);
        assertThat(rounded).isGreaterThan(500);
    }

    /** Boards counted whole for amps: every set of items at every spot. */
    @Test
    void noPlanHasFewerBoardsThanAmpsNeed() {
        int tried = 0;
        for (long seed = 0; seed < 5 * YARDS; seed++) {
            Yard yard = AnyYard.of(seed, 2, 4);
            Site site = new Site(yard, GroundPaths.of(yard));
            AmpsRounding amps = new AmpsRounding(site, new Items(site));
            if (Arrays.stream(amps.limits).allMatch(limits -> limits.length == 0)) {
                continue;
            }
            Planned planned = Planned.of(seed);
            List<Row> rows = new ArrayList<>();
            for (int group = 0; group < amps.limits.length; group++) {
                for (double by : amps.limits[group]) {
                    for (int set = 1; set < 1 << planned.items.size; set++) {
                        amps(planned, amps, group, by, set, rows);
                    }
                }
            }
            planned.keepAll(rows);
            tried += planned.plans.isEmpty() ? 0 : rows.size();
        }
        assertThat(tried).isGreaterThan(200);
    }

    private static void amps(Planned planned, AmpsRounding amps, int group, double by, int set, List<Row> rows) {
        Site site = planned.site;
        List<Integer> drawing = IntStream.range(0, planned.items.size)
                .filter(k -> (set >> k & 1) == 1 && site.group[planned.items.sample[k]] == group)
                .boxed()
                .toList();
        double sum = drawing.stream()
                .mapToDouble(k -> planned.items.count[k] * site.draw[planned.items.sample[k]])
                .sum();
        if (sum % by > 1e-3) {
            for (int p = 0; p < site.spots.length; p++) {
                rows.add(amps.row(p, group, by, drawing));
            }
        }
    }

    private static List<Row> every(Site site, Items items) {
        List<Row> rows = new ArrayList<>();
        int controllers = site.controllers.length;
        for (int mask = 1; mask < 1 << site.spots.length; mask++) {
            boolean[] inside = bits(mask, site.spots.length);
            for (int k = 0; k < items.size; k++) {
                rows.add(Cut.connected(inside, controllers, k, items.count[k]));
            }
            for (int p = 0; p < inside.length; p++) {
                if (inside[p]) {
                    rows.add(Cut.reached(inside, controllers, p));
                }
            }
            for (int group = 0; group < site.groups; group++) {
                for (int set = 1; set < 1 << items.size; set++) {
                    wholeBoards(site, items, inside, bits(set, items.size), group, rows);
                }
            }
        }
        for (int k = 0; k < items.size; k++) {
            for (int p = 0; p < site.spots.length; p++) {
                rows.add(Cut.usedSpot(k, items.count[k], p));
                rows.add(Cut.suited(site, k, items.sample[k], items.count[k], p));
            }
        }
        return rows;
    }

    private static void wholeBoards(
            Site site, Items items, boolean[] inside, boolean[] leads, int group, List<Row> rows) {
        int strings = 0;
        int ports = 0;
        for (int m = 0; m < site.offers.length; m++) {
            ports = Math.max(ports, site.ports(m));
        }
        for (int k = 0; k < leads.length; k++) {
            if (leads[k] && site.group[items.sample[k]] != group) {
                return;
            }
            strings += leads[k] ? items.count[k] : 0;
        }
        // any divisor holds, not only the numbers of ports there are
        for (int by = 2; by <= ports + 1; by++) {
            if (strings % by != 0) {
                rows.add(Cut.wholeBoards(inside, leads, strings, site, group, by));
            }
        }
    }

    private static boolean[] bits(int mask, int size) {
        boolean[] bits = new boolean[size];
        for (int i = 0; i < size; i++) {
            bits[i] = (mask >> i & 1) == 1;
        }
        return bits;
    }

    /** The point of a plan that was laid by hand is one in which no cut sees anything amiss, and all strings are served. */
    @Test
    void pointsOfPlansBreakNoCut() {
        int tried = 0;
        for (long seed = 0; seed < YARDS; seed++) {
            Yard yard = AnyYard.of(seed, 3, 7);
            Site site = new Site(yard, GroundPaths.of(yard));
            Items items = new Items(site);
            Draft draft = new Draft(site);
            new FirstFit(draft).run();
            if (!draft.complete()) {
                continue;
            }
            Point point = Point.of(site, items, Snapshot.of(draft));
            Separation separation = new Separation(site, items);
            assertThat(separation.broken(point)).as("any %d", seed).isEmpty();
            assertThat(separation.rounded(point)).as("any %d", seed).isEmpty();
            for (int k = 0; k < items.size; k++) {
                assertThat(Arrays.stream(point.served()[k]).sum())
                        .as("any %d", seed)
                        .isEqualTo(items.count[k]);
            }
            tried++;
        }
        assertThat(tried).isGreaterThan(20);
    }

    /** Nothing is cut off a plan; what is cut off a point between plans was wrong there, and keeps all plans. */
    @Test
    void cutsComeOffInvalidPointsAlone() {
        SplittableRandom random = new SplittableRandom(1);
        int found = 0;
        int streams = 0;
        for (long seed = 0; seed < YARDS; seed++) {
            Planned planned = Planned.of(seed);
            if (planned.plans.isEmpty()) {
                continue;
            }
            Separation separation = new Separation(planned.site, planned.items);
            for (Weights plan : planned.plans.subList(0, Math.min(POINTS, planned.plans.size()))) {
                assertThat(separation.broken(plan.point()))
                        .as("any %d: %s", seed, plan)
                        .isEmpty();
                assertThat(separation.rounded(plan.point()))
                        .as("any %d: %s", seed, plan)
                        .isEmpty();
            }
            for (int i = 0; i < POINTS; i++) {
                Weights point = Weights.amid(planned.site, planned.items, planned.plans, random);
                List<Row> rows = new ArrayList<>(separation.broken(point.point()));
                rows.addAll(separation.rounded(point.point()));
                for (Row row : rows) {
                    assertThat(point.broken(row)).as("any %d: %s", seed, point).isGreaterThan(ROUNDING);
                    streams += row.onlyItem() == Row.ALL ? 1 : 0;
                }
                planned.keepAll(rows);
                found += rows.size();
            }
        }
        assertThat(found).isGreaterThan(500);
        assertThat(streams).isGreaterThan(20);
    }

    /** Every string at one spot, on as many boards as their ports go into: part of a board is cut off, a whole one is not. */
    @Test
    void partOfABoardIsCutOff() {
        int tried = 0;
        for (long seed = 0; seed < YARDS; seed++) {
            Yard yard = AnyYard.of(seed, 3, 7);
            Site site = new Site(yard, GroundPaths.of(yard));
            Items items = new Items(site);
            int ports = site.ports(0);
            if (site.offers.length > 1 || site.strings.length % ports == 0) {
                continue;
            }
            Separation separation = new Separation(site, items);
            for (int spot = 0; spot < site.spots.length; spot++) {
                Point point = Point.nowhere(site, items);
                for (int k = 0; k < items.size; k++) {
                    point.led()[k][spot] = items.count[k];
                    point.served()[k][spot] = items.count[k];
                }
                point.used()[spot] = 1;
                double boards = site.strings.length / (double) ports;
                point.board()[spot][0] = boards;
                List<Row> rows =
                        separation.rounded(point).stream().filter(Row::hasHeads).toList();
                assertThat(rows).as("any %d", seed).isNotEmpty();
                for (Row row : rows) {
                    double sum = row.board(spot, 0) * boards;
                    for (int k = 0; k < items.size; k++) {
                        sum += row.head(k, spot) * items.count[k];
                    }
                    assertThat(sum).as("any %d", seed).isLessThan(row.low() - ROUNDING);
                    double whole = sum + row.board(spot, 0) * (Math.ceil(boards) - boards);
                    assertThat(whole).as("any %d", seed).isGreaterThanOrEqualTo(row.low() - ROUNDING);
                }
                point.board()[spot][0] = Math.ceil(boards);
                assertThat(separation.rounded(point)).as("any %d", seed).noneMatch(Row::hasHeads);
                tried++;
            }
        }
        assertThat(tried).isGreaterThan(20);
    }
}
