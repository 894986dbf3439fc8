package streamwright.solve;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import streamwright.layout.Layout;
import streamwright.layout.Unlay;
import streamwright.physics.Ground;
import streamwright.plan.Board;
import streamwright.plan.Plan;
import streamwright.yard.Yard;

/**
 * A first repair at once: what of the old plan keeps the rules stays, and the rest goes to its cheapest places. Boards
 * that stand where an old one stood take its name and ID.
 */
final class Patch {
    private final Yard yard;
    private final Plan old;
    private final Site site;

    Patch(Yard yard, Plan old, Site site) {
        this.yard = yard;
        this.old = old;
        this.site = site;
    }

    /** The layout, or null where not all finds a place beside what stays. */
    @Nullable
    Layout filled(long seed) {
        Draft draft = new Draft(site);
        new WarmStart(draft).take(Unlay.of(yard, old));
        new Search(draft, new Nearby(site), new SplittableRandom(seed)).fill();
        return draft.complete() ? named(Snapshot.of(draft).layout(site, new Draft(site))) : null;
    }

    /** A layout that begins with the old one, however much of it changes; null where none is found in the time given. */
    @Nullable
    Layout planned(Ground ground, Effort effort) {
        Budget budget = new Budget(effort.secondsLeft() / 4, 0, effort.seed(), effort.workers(), effort.interrupted());
        Layout planned = Planner.plan(yard, ground, budget, Outcome.SILENT, List.of(Unlay.of(yard, old)))
                .layoutOrNull();
        return planned == null ? null : named(planned);
    }

    private Layout named(Layout layout) {
        Set<String> taken = new HashSet<>();
        Set<String> names = new HashSet<>();
        old.boards().forEach(board -> names.add(board.id()));
        old.cables().forEach(cable -> names.addAll(cable.boards()));
        List<Layout.Run> runs = new ArrayList<>();
        for (Layout.Run run : layout.cables()) {
            Set<Integer> ids = new HashSet<>();
            List<Layout.Hung> boards = new ArrayList<>();
            for (Layout.Hung hung : run.boards()) {
                Board was = was(hung, taken);
                String name = was == null ? null : was.id();
                for (int number = 1; name == null; number++) {
                    name = names.add("B" + number) ? "B" + number : null;
                }
                taken.add(name);
                Integer id = was == null ? null : was.boardId();
                boolean fits =
                        id != null && id >= Ids.least(hung.model()) && id <= Ids.most(hung.model()) && ids.add(id);
                boards.add(hung.named(name, fits ? id : null));
            }
            runs.add(new Layout.Run(run.controller(), run.jack(), boards));
        }
        return new Layout(runs);
    }

    /** Of the old boards of the model at the place the one that shares the most strings. */
    private @Nullable Board was(Layout.Hung hung, Set<String> taken) {
        Board best = null;
        int most = -1;
        for (Board board : old.boards()) {
            boolean same = board.model().equals(hung.model().name())
                    && board.at().equals(hung.spot().at());
            if (same && !taken.contains(board.id()) && shared(board, hung) > most) {
                best = board;
                most = shared(board, hung);
            }
        }
        return best;
    }

    private static int shared(Board board, Layout.Hung hung) {
        Set<String> there = new HashSet<>();
        Lying.on(board, 0).forEach(each -> there.addAll(each.carries()));
        Stream<String> strings = hung.ports().stream()
                .flatMap(chain -> chain.strings().stream())
                .map(string -> Lying.name(string.prop(), string.number()));
        Stream<String> outputs = hung.block() == null
                ? Stream.empty()
                : hung.block().props().stream()
                        .map(lines -> Lying.name(lines.prop().id(), 1));
        Stream<String> panels = hung.panels().stream().map(panel -> Lying.name(panel.id(), 1));
        return (int) Stream.of(strings, outputs, panels)
                .flatMap(each -> each)
                .filter(there::contains)
                .count();
    }
}
