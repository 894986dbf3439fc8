package streamwright.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static streamwright.solve.Changed.with;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import streamwright.check.Audit;
import streamwright.layout.Assembly;
import streamwright.physics.Ground;
import streamwright.physics.GroundPaths;
import streamwright.plan.Board;
import streamwright.plan.Plan;
import streamwright.plan.change.Difference;
import streamwright.yard.Prop;
import streamwright.yard.Yard;

/** Repairs of tiny yards with outputs, panels, copies, several kinds and kept channels against every plan of them. */
class RepairMixedTest {
    private static final int YARDS = Integer.getInteger("mixedRepairs", 150);

    /** A yard with boards of two voltages, each of which can be bought for either. */
    private static final long BOTH_VOLTAGES = 576;

    private static final int LAYOUTS_MOST = 3_000;
    private static final double ROUNDING = 1e-6;

    private int mended;
    private int worked;
    private int least;
    private int proved;
    private int fixtures;

    @Test
    void theLeastWorkIsFoundAndTheBoundHolds() {
        for (long seed = 1; seed <= YARDS; seed++) {
            yard(seed);
        }
        yard(BOTH_VOLTAGES);
        System.out.printf(
                "%d tiny mixed repairs, %d of them with outputs or panels, %d with work, %d of least work, %d proved least%n",
                mended, fixtures, worked, least, proved);
        assertThat(fixtures).isGreaterThan(mended / 3);
        assertThat(worked).isGreaterThan(mended / 3);
    }

    private void yard(long seed) {
        Yard yard = MixedYards.of(seed);
        Random random = new Random(seed * 31 + 7);
        Yard after = with(yard, "frameRate", yard.frameRate() * new int[] {1, 4, 7, 8, 9, 10, 12}[random.nextInt(7)]);
        List<Prop> fewer = new ArrayList<>(yard.props());
        if (fewer.size() > 1 && random.nextInt(3) > 0) {
            fewer.remove(fewer.size() - 1);
        }
        Yard before = with(yard, "props", fewer);
        if (!(Planner.plan(before, GroundPaths.of(before), Budget.effort(1), Outcome.SILENT)
                instanceof Outcome.Found found)) {
            return;
        }
        Ground ground = GroundPaths.of(after);
        Plan old = hurt(Assembly.plan(before, ground, found.layout()), random);
        Set<String> dead = random.nextInt(3) == 0 && !old.boards().isEmpty()
                ? Set.of(old.boards().get(random.nextInt(old.boards().size())).id())
                : Set.of();
        LeastWork work = new LeastWork();
        EveryMixedPlan every = new EveryMixedPlan(after, ground);
        every.visit(LAYOUTS_MOST, layout -> LeastWork.consider(after, ground, old, dead, layout, work));
        if (!every.tooMany()) {
            holds(after, ground, old, dead, work, "mixed yard " + seed);
        }
    }

    private void holds(Yard yard, Ground ground, Plan old, Set<String> dead, LeastWork work, String as) {
        Repaired repaired = LeastWork.repaired(yard, ground, old, dead, Set.of());
        if (!(repaired instanceof Repaired.Mended repair)) {
            assertThat(work.minutes).as(as + " " + repaired).isInfinite();
            return;
        }
        mended++;
        fixtures += yard.props().stream().anyMatch(prop -> prop.strings().isEmpty()) ? 1 : 0;
        assertThat(Audit.of(yard, repair.plan()).list()).as(as).isEmpty();
        double counted =
                Recount.of(yard, old, repair.plan()).minutes() + LeastWork.replaced(yard, old, repair.plan(), dead);
        assertThat(repair.work()).as("work of " + as).isBetween(counted - ROUNDING, counted + ROUNDING);
        assertThat(Difference.minutes(yard, old, repair.plan(), dead))
                .as(as)
                .isBetween(counted - ROUNDING, counted + ROUNDING);
        assertThat(repair.work()).as("work of " + as).isGreaterThanOrEqualTo(work.structure - ROUNDING);
        assertThat(repair.workBound()).as("bound of " + as).isLessThanOrEqualTo(repair.work() + ROUNDING);
        assertThat(repair.workBound()).as("bound of " + as).isLessThanOrEqualTo(work.minutes + ROUNDING);
        // that a copy plugged anew may come to lie on its original's pixels is known to the bound alone
        if (yard.props().stream().allMatch(prop -> prop.copyOf() == null)) {
            assertThat(repair.work()).as("work of " + as).isLessThanOrEqualTo(work.minutes + ROUNDING);
        }
        worked += repair.work() > 0 ? 1 : 0;
        least += repair.work() <= work.minutes + ROUNDING ? 1 : 0;
        proved += repair.workBound() > repair.work() - ROUNDING ? 1 : 0;
    }

    /** Now and then a board is missing. */
    private static Plan hurt(Plan plan, Random random) {
        List<Board> boards = new ArrayList<>(plan.boards());
        int at = random.nextInt(boards.size());
        if (random.nextInt(4) == 0) {
            boards.remove(at);
        }
        return RepairPlans.with(plan, plan.cables(), boards);
    }
}
