package streamwright.plan.change;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import streamwright.plan.Board;
import streamwright.plan.Outputs;
import streamwright.plan.PanelUse;
import streamwright.plan.change.Piece.Phase;
import streamwright.plan.change.Wiring.BoardKey;
import streamwright.yard.Prop;

/**
 * Outputs and panels that differ. A prop's outputs, and a panel, count like a string: on another board or new is a lead,
 * at other outputs of their board a replug; a block or a part of a panel that begins elsewhere is a setting.
 */
final class FixtureWork {
    /** Where a prop's outputs or its panel are: the board's outputs, 1-based and upwards; none for a panel. */
    private record Fitting(BoardKey board, List<Integer> outputs) {}

    private final Compared all;

    private FixtureWork(Compared all) {
        this.all = all;
    }

    static void collect(Compared all) {
        FixtureWork found = new FixtureWork(all);
        Map<StringId, List<Fitting>> before = fittings(all.before);
        Map<StringId, List<Fitting>> after = fittings(all.after);
        after.forEach((prop, fittings) -> {
            List<Fitting> were = new ArrayList<>(before.getOrDefault(prop, List.of()));
            for (Fitting now : fittings) {
                @Nullable Fitting was = nearest(were, now);
                were.remove(was);
                found.fit(prop, was, now);
            }
            were.forEach(was -> found.unfit(prop, was, "it is wired elsewhere"));
        });
        Set<String> known = all.yard.props().stream().map(Prop::id).collect(Collectors.toSet());
        before.forEach((prop, fittings) -> {
            if (!after.containsKey(prop)) {
                String why = known.contains(prop.prop()) ? "the plan has it nowhere" : "the yard no longer has it";
                fittings.forEach(was -> found.unfit(prop, was, why));
            }
        });
        found.settings();
    }

    /** Several of a prop in a plan that breaks rules. */
    private static Map<StringId, List<Fitting>> fittings(Wiring wiring) {
        Map<StringId, List<Fitting>> fittings = new LinkedHashMap<>();
        wiring.boards.forEach((key, board) -> {
            for (StringId prop : Wiring.fixtures(board)) {
                List<Integer> outputs = board.outputs() == null
                        ? List.of()
                        : board.outputs().lines().stream()
                                .filter(line -> line.prop().equals(prop.prop()))
                                .map(Outputs.Line::output)
                                .sorted()
                                .toList();
                fittings.computeIfAbsent(prop, p -> new ArrayList<>()).add(new Fitting(key, outputs));
            }
        });
        return fittings;
    }

    private static @Nullable Fitting nearest(List<Fitting> were, Fitting now) {
        return were.stream()
                .min(Comparator.comparing((Fitting was) -> !was.board.equals(now.board))
                        .thenComparing(was -> !was.equals(now)))
                .orElse(null);
    }

    /** What is wired there no longer, and nowhere instead. */
    private void unfit(StringId prop, Fitting was, String why) {
        all.add(
                Phase.TAKE_DOWN,
                "lead",
                Piece.map("prop", prop.prop()),
                map(was),
                null,
                0,
                "Unplug %s from %s: %s.".formatted(prop.prop(), say(was), why),
                Set.of(),
                Set.of(),
                List.of(prop.prop(), was.board.id()));
    }

    private void fit(StringId prop, @Nullable Fitting was, Fitting now) {
        boolean elsewhere = was == null || !was.board.equals(now.board);
        if (was != null && was.equals(now)) {
            return;
        }
        String from = was == null ? ", new" : ", from " + say(was);
        all.add(
                Phase.PLUG,
                elsewhere ? "lead" : "replug",
                Piece.map("prop", prop.prop()),
                was == null ? null : map(was),
                map(now),
                elsewhere ? all.work.lead() : all.work.replug(),
                (now.outputs.isEmpty() ? "Plug panel %s into %s%s." : "Wire %s to %s%s.")
                        .formatted(prop.prop(), say(now), from),
                was == null ? Set.of() : Set.of(prop),
                Set.of(prop),
                List.of(prop.prop(), now.board.id()));
    }

    private static String say(Fitting at) {
        return switch (at.outputs.size()) {
            case 0 -> at.board.id();
            case 1 -> "output %d of %s".formatted(at.outputs.get(0), at.board.id());
            default -> "outputs %s of %s".formatted(Spell.runs(new TreeSet<>(at.outputs)), at.board.id());
        };
    }

    private static Map<String, Object> map(Fitting at) {
        return at.outputs.isEmpty()
                ? Piece.map("board", at.board.id())
                : Piece.map("board", at.board.id(), "output", at.outputs.get(0), "outputs", at.outputs.size());
    }

    private void settings() {
        all.after.boards.forEach((key, now) -> {
            Board was = all.before.boards.get(key);
            if (was == null || !Compared.samePlace(was, now)) {
                return;
            }
            Outputs block = was.outputs();
            Outputs after = now.outputs();
            boolean sameProps = Wiring.fixtures(was).equals(Wiring.fixtures(now));
            if (block != null && after != null && sameProps) {
                set(key, now, "the outputs", block.stream(), block.startPixel(), after.stream(), after.startPixel());
            }
            for (PanelUse panel : now.panels()) {
                was.panels().stream()
                        .filter(each -> each.prop().equals(panel.prop()))
                        .forEach(each -> parts(key, now, each.parts(), panel.parts()));
            }
        });
    }

    private void parts(BoardKey key, Board now, List<PanelUse.Part> were, List<PanelUse.Part> parts) {
        for (int i = 0; i < Math.min(were.size(), parts.size()); i++) {
            PanelUse.Part was = were.get(i);
            PanelUse.Part is = parts.get(i);
            String what = "part " + (i + 1) + " of the panel";
            set(key, now, what, was.stream(), was.startPixel(), is.stream(), is.startPixel());
        }
    }

    private void set(BoardKey key, Board now, String what, int stream, int start, int newStream, int newStart) {
        if (stream == newStream && start == newStart) {
            return;
        }
        Set<StringId> lit = new TreeSet<>(Wiring.fixtures(Objects.requireNonNull(all.after.boards.get(key))));
        String jack = now.controller() + " jack " + now.jack();
        all.add(
                Phase.SET,
                "setting",
                Piece.map("board", key.id()),
                Piece.map("stream", stream, "startPixel", start),
                Piece.map("stream", newStream, "startPixel", newStart),
                all.work.setting(),
                "Set %s of %s to start at pixel %d of stream %d (it was pixel %d%s)."
                        .formatted(
                                what,
                                key.id(),
                                newStart,
                                newStream,
                                start,
                                stream == newStream ? "" : " of stream " + stream),
                lit,
                lit,
                List.of(key.id(), jack + " stream " + stream));
    }
}
