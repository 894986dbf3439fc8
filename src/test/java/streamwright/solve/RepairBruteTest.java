package streamwright.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import streamwright.check.Audit;
import streamwright.check.Finding;
import streamwright.check.Findings;
import streamwright.layout.Assembly;
import streamwright.layout.Layout;
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

    private static final class Least {
        private double minutes = Double.POSITIVE_INFINITY;
        private double structure = Double.POSITIVE_INFINITY;

        /** Under each thing to keep. */
        private final Map<Keep, Double> keeping = new EnumMap<>(Keep.class);

        private double keeping(Keep keep) {
            return keeping.getOrDefault(keep, Double.POSITIVE_INFINITY);
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
            Least least = new Least();
            if (!EveryLayout.visit(yard, ground, layout -> consider(yard, ground, old, dead, layout, least))) {
                continue;
            }
            String as = "tiny yard " + seed;
            for (Keep keep : Keep.values()) {
                kept += holdsKeeping(keep, yard, ground, old, dead, least.keeping(keep), as + " keeps " + keep.word());
            }
            Repaired repaired = repaired(yard, ground, old, dead, Set.of());
            if (repaired instanceof Repaired.Mended repair) {
                mended++;
                assertThat(Audit.of(yard, repair.plan()).list()).as(as).isEmpty();
                double counted =
                        Recount.of(yard, old, repair.plan()).minutes() + replaced(yard, old, repair.plan(), dead);
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

    private static Repaired repaired(Yard yard, Ground ground, Plan old, Set<String> dead, Set<Keep> keep) {
        return Repair.of(
                yard, ground, old, dead, keep, plan -> judge(yard, plan), new Budget(60, 0, 1, 1, () -> false));
    }

    /** A repair is found where there is one, keeps what it should, and takes no more work than any of the plans tried. */
    private static int holdsKeeping(
            Keep keep, Yard yard, Ground ground, Plan old, Set<String> dead, double least, String as) {
        if (!(repaired(yard, ground, old, dead, Set.of(keep)) instanceof Repaired.Mended repair)) {
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

    /** A dead board that is gone or elsewhere is counted as such; one in its place is work too. */
    private static double replaced(Yard yard, Plan old, Plan plan, Set<String> dead) {
        long there = plan.boards().stream()
                .filter(board -> dead.contains(board.id()))
                .filter(board -> old.boards().stream()
                        .anyMatch(was -> was.id().equals(board.id())
                                && was.model().equals(board.model())
                                && was.at().equals(board.at())))
                .count();
        return there * yard.work().board();
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

    private static Repaired.Verdict judge(Yard yard, Plan plan) {
        Findings findings = Audit.of(yard, plan);
        return new Repaired.Verdict(findings.list().stream().map(Finding::rule).toList(), findings.restated());
    }

    /** A layout under every way of giving it the old boards' names, numbered anew. */
    private static void consider(Yard yard, Ground ground, Plan old, Set<String> dead, Layout layout, Least least) {
        if (!Audit.of(yard, Assembly.plan(yard, ground, layout)).clean()) {
            return;
        }
        int boards =
                layout.cables().stream().mapToInt(run -> run.boards().size()).sum();
        name(yard, ground, old, dead, layout, new ArrayList<>(), boards, least);
    }

    private static void name(
            Yard yard,
            Ground ground,
            Plan old,
            Set<String> dead,
            Layout layout,
            List<Integer> names,
            int boards,
            Least least) {
        if (names.size() == boards) {
            for (boolean keepIds : new boolean[] {true, false}) {
                Plan plan = Assembly.plan(yard, ground, named(layout, old, names, keepIds));
                if (Audit.of(yard, plan).clean()) {
                    Recount work = Recount.of(yard, old, plan);
                    double more = replaced(yard, old, plan, dead);
                    least.minutes = Math.min(least.minutes, work.minutes() + more);
                    least.structure = Math.min(least.structure, work.structure() + more);
                }
                keeping(EnumSet.complementOf(EnumSet.of(Keep.CHANNELS)), yard, old, dead, plan, least);
                keeping(EnumSet.of(Keep.CHANNELS), yard, old, dead, plan, least);
            }
            return;
        }
        for (int b = -1; b < old.boards().size(); b++) {
            if (b < 0
                    || (!names.contains(b)
                            && model(layout, names.size())
                                    .equals(old.boards().get(b).model()))) {
                names.add(b);
                name(yard, ground, old, dead, layout, names, boards, least);
                names.remove(names.size() - 1);
            }
        }
    }

    /** With numbers as they were, and the windows of channels where these are to be kept. */
    private static void keeping(Set<Keep> each, Yard yard, Plan old, Set<String> dead, Plan fresh, Least least) {
        Numbering.Numbered numbered = Numbering.of(yard, fresh, old, each.contains(Keep.CHANNELS));
        if (numbered == null) {
            return;
        }
        double work = Recount.of(yard, old, numbered.plan()).minutes() + replaced(yard, old, numbered.plan(), dead);
        List<Keep> better =
                each.stream().filter(keep -> work < least.keeping(keep)).toList();
        if (better.isEmpty()) {
            return;
        }
        Plan plan = judge(yard, numbered.plan()).restated();
        if (judge(yard, plan).broken().isEmpty()) {
            better.stream()
                    .filter(keep -> KeepHolds.of(yard, old, plan, Set.of(keep)))
                    .forEach(keep -> least.keeping.put(keep, work));
        }
    }

    private static String model(Layout layout, int index) {
        return layout.cables().stream()
                .flatMap(run -> run.boards().stream())
                .skip(index)
                .findFirst()
                .orElseThrow()
                .model()
                .name();
    }

    private static Layout named(Layout layout, Plan old, List<Integer> names, boolean keepIds) {
        int at = 0;
        List<Layout.Run> runs = new ArrayList<>();
        for (Layout.Run run : layout.cables()) {
            List<Layout.Hung> hung = new ArrayList<>();
            for (Layout.Hung board : run.boards()) {
                int name = names.get(at++);
                Board was = name < 0 ? null : old.boards().get(name);
                hung.add(new Layout.Hung(
                        was == null ? "new " + at : was.id(),
                        was == null || !keepIds ? null : was.boardId(),
                        board.model(),
                        board.spot(),
                        board.ports()));
            }
            runs.add(new Layout.Run(run.controller(), run.jack(), hung));
        }
        return new Layout(runs);
    }
}
