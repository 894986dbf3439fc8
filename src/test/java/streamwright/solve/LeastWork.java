package streamwright.solve;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import streamwright.check.Audit;
import streamwright.check.Finding;
import streamwright.check.Findings;
import streamwright.layout.Assembly;
import streamwright.layout.Layout;
import streamwright.physics.Ground;
import streamwright.plan.Board;
import streamwright.plan.Plan;
import streamwright.yard.Yard;

/** The least work of all plans shown to it, each under every way of giving its boards the old ones' names. */
final class LeastWork {
    double minutes = Double.POSITIVE_INFINITY;
    double structure = Double.POSITIVE_INFINITY;

    /** Under each thing to keep. */
    private final Map<Keep, Double> keeping = new EnumMap<>(Keep.class);

    double keeping(Keep keep) {
        return keeping.getOrDefault(keep, Double.POSITIVE_INFINITY);
    }

    static Repaired repaired(Yard yard, Ground ground, Plan old, Set<String> dead, Set<Keep> keep) {
        return Repair.of(
                yard, ground, old, dead, keep, plan -> judge(yard, plan), new Budget(60, 0, 1, 1, () -> false));
    }

    /** A dead board that is gone or elsewhere is counted as such; one in its place is work too. */
    static double replaced(Yard yard, Plan old, Plan plan, Set<String> dead) {
        long there = plan.boards().stream()
                .filter(board -> dead.contains(board.id()))
                .filter(board -> old.boards().stream()
                        .anyMatch(was -> was.id().equals(board.id())
                                && was.model().equals(board.model())
                                && was.at().equals(board.at())))
                .count();
        return there * yard.work().board();
    }

    static Repaired.Verdict judge(Yard yard, Plan plan) {
        Findings findings = Audit.of(yard, plan);
        return new Repaired.Verdict(findings.list().stream().map(Finding::rule).toList(), findings.restated());
    }

    /** A layout under every way of giving it the old boards' names, numbered anew. */
    static void consider(Yard yard, Ground ground, Plan old, Set<String> dead, Layout layout, LeastWork least) {
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
            LeastWork least) {
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
    private static void keeping(Set<Keep> each, Yard yard, Plan old, Set<String> dead, Plan fresh, LeastWork least) {
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
                hung.add(board.named(
                        was == null ? "new " + at : was.id(), was == null || !keepIds ? null : was.boardId()));
            }
            runs.add(new Layout.Run(run.controller(), run.jack(), hung));
        }
        return new Layout(runs);
    }
}
