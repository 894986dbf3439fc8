package streamwright.solve;

import static org.assertj.core.api.Assertions.assertThat;

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
import streamwright.plan.PortUse;
import streamwright.plan.change.Difference;
import streamwright.yard.Prop;
import streamwright.yard.Yard;

/** Repairs of tiny yards against every plan of them: the least work, its bound, and a count by other code. */
class RepairBruteTest {
    private static final int YARDS = Integer.getInteger("tinyRepairs", 60);
    private static final double ROUNDING = 1e-6;

    /** A yard that changes after its plan is installed: faster, or short of a string while it is planned. */
    private record Season(Yard before, Yard after) {
        static Season of(long seed) {
            Random random = new Random(seed * 31 + 7);
            Yard yard = SeasonYards.of(seed);
            Yard faster =
                    with(yard, yard.props(), yard.frameRate() * new int[] {1, 4, 7, 8, 9, 10, 12}[random.nextInt(7)]);
            List<Prop> fewer = yard.props();
            if (fewer.size() > 1 && random.nextInt(3) > 0) {
                fewer = fewer.subList(0, fewer.size() - 1);
            }
            return new Season(with(yard, fewer, yard.frameRate()), faster);
        }

        private static Yard with(Yard yard, List<Prop> props, double frameRate) {
            return new Yard(
                    yard.name(),
                    yard.units(),
                    frameRate,
                    yard.spare(),
                    yard.brightness(),
                    yard.keepChannels(),
                    yard.controllers(),
                    yard.boards(),
                    yard.boardCount(),
                    yard.spots(),
                    props,
                    yard.obstacles(),
                    yard.rules(),
                    yard.costs(),
                    yard.work());
        }
    }

    @Test
    void theLeastWorkIsFoundAndTheBoundHolds() {
        int mended = 0;
        int worked = 0;
        int proved = 0;
        int impossible = 0;
        int kept = 0;
        for (long seed = 1; seed <= YARDS; seed++) {
            Season season = Season.of(seed);
            Yard yard = season.after;
            Ground ground = GroundPaths.of(yard);
            Outcome outcome = Planner.plan(season.before, ground, Budget.effort(1), Outcome.SILENT);
            if (!(outcome instanceof Outcome.Found found) || yard.strings().size() > 3) {
                continue;
            }
            Plan old = hurt(Assembly.plan(season.before, ground, found.layout()), seed);
            Set<String> dead = dead(old, seed);
            LeastWork least = new LeastWork();
            if (!EveryLayout.visit(
                    yard, ground, layout -> LeastWork.consider(yard, ground, old, dead, layout, least))) {
                continue;
            }
            String as = "tiny yard " + seed;
            for (Keep keep : Keep.values()) {
                kept += holdsKeeping(keep, yard, ground, old, dead, least.keeping(keep), as + " keeps " + keep.word());
            }
            Repaired repaired = LeastWork.repaired(yard, ground, old, dead, Set.of());
            if (repaired instanceof Repaired.Mended repair) {
                mended++;
                assertThat(Audit.of(yard, repair.plan()).list()).as(as).isEmpty();
                double counted = Recount.of(yard, old, repair.plan()).minutes()
                        + LeastWork.replaced(yard, old, repair.plan(), dead);
                assertThat(repair.work()).as("work of " + as).isCloseTo(counted, within());
                assertThat(Difference.minutes(yard, old, repair.plan(), dead))
                        .as(as)
                        .isCloseTo(counted, within());
                assertThat(repair.work()).as("work of " + as).isLessThanOrEqualTo(least.minutes + ROUNDING);
                assertThat(repair.workBound()).as("bound of " + as).isLessThanOrEqualTo(repair.work() + ROUNDING);
                assertThat(repair.workBound()).as("bound of " + as).isLessThanOrEqualTo(least.minutes + ROUNDING);
                assertThat(repair.work()).as("work of " + as).isGreaterThanOrEqualTo(least.structure - ROUNDING);
                worked += repair.work() > 0 ? 1 : 0;
                proved += repair.workBound() > repair.work() - ROUNDING ? 1 : 0;
            } else if (repaired instanceof Repaired.Impossible) {
                impossible++;
                assertThat(least.minutes).as(as).isInfinite();
            } else {
                assertThat(least.minutes).as(as + " " + repaired).isInfinite();
            }
        }
        assertThat(kept).as("repairs that keep something").isGreaterThan(40);
        System.out.printf(
                "%d tiny repairs, %d with work, %d proved least; %d proved impossible; %d that keep something%n",
                mended, worked, proved, impossible, kept);
        assertThat(worked).isGreaterThan(mended / 3);
        assertThat(proved).isGreaterThan(mended * 8 / 10);
    }

    /** A repair is found where there is one, keeps what it should, and takes no more work than any of the plans tried. */
    private static int holdsKeeping(
            Keep keep, Yard yard, Ground ground, Plan old, Set<String> dead, double least, String as) {
        if (!(LeastWork.repaired(yard, ground, old, dead, Set.of(keep)) instanceof Repaired.Mended repair)) {
            assertThat(least).as(as).isInfinite();
            return 0;
        }
        assertThat(Audit.of(yard, repair.plan()).list()).as(as).isEmpty();
        assertThat(KeepHolds.of(yard, old, repair.plan(), Set.of(keep))).as(as).isTrue();
        assertThat(repair.work()).as("work of " + as).isLessThanOrEqualTo(least + ROUNDING);
        assertThat(repair.workBound()).as("bound of " + as).isLessThanOrEqualTo(repair.work() + ROUNDING);
        return 1;
    }

    /** Now and then a board is dead, or a port's start pixel or a board's ID set wrongly. */
    private static Plan hurt(Plan plan, long seed) {
        Random random = new Random(seed * 17 + 3);
        List<Board> boards = new ArrayList<>(plan.boards());
        int at = random.nextInt(boards.size());
        Board board = boards.get(at);
        switch (random.nextInt(4)) {
            case 0 -> boards.remove(at);
            case 1 -> boards.set(at, board.carrying(ports(board, random.nextInt(30)), board.outputs(), board.panels()));
            default -> {}
        }
        return RepairPlans.with(plan, plan.cables(), boards);
    }

    /** Now and then a board no longer works. */
    private static Set<String> dead(Plan plan, long seed) {
        Random random = new Random(seed * 13 + 5);
        boolean none = plan.boards().isEmpty() || random.nextInt(3) > 0;
        return none
                ? Set.of()
                : Set.of(plan.boards().get(random.nextInt(plan.boards().size())).id());
    }

    private static List<PortUse> ports(Board board, int start) {
        return board.ports().stream()
                .map(port ->
                        new PortUse(port.port(), port.stream(), start, port.amps(), port.strings(), port.injections()))
                .toList();
    }

    private static org.assertj.core.data.Offset<Double> within() {
        return org.assertj.core.data.Offset.offset(ROUNDING);
    }
}
