package streamwright.plan.change;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import streamwright.plan.Board;
import streamwright.plan.Outputs;
import streamwright.plan.PanelUse;
import streamwright.plan.change.Piece.Phase;
import streamwright.plan.change.Wiring.BoardKey;

/**
 * Outputs and panels that differ. A prop's outputs, and a panel, count like a string: on another board or new is a lead,
 * at other outputs of their board a replug; a block or a part of a panel that begins elsewhere is a setting.
 */
final class FixtureWork {
    /** Where a prop's outputs or its panel are. {@code first} of the board's outputs is 1-based, 0 for a panel. */
    private record Fitting(BoardKey board, int first, int outputs) {}

    private final Compared all;

    private FixtureWork(Compared all) {
        this.all = all;
    }

    static void collect(Compared all) {
        FixtureWork found = new FixtureWork(all);
        Map<StringId, Fitting> before = fittings(all.before);
        fittings(all.after).forEach((prop, now) -> found.fit(prop, before.get(prop), now));
        found.settings();
    }

    private static Map<StringId, Fitting> fittings(Wiring wiring) {
        Map<StringId, Fitting> fittings = new LinkedHashMap<>();
        wiring.boards.forEach((key, board) -> {
            for (StringId prop : Wiring.fixtures(board)) {
                List<Outputs.Line> lines = board.outputs() == null
                        ? List.of()
                        : board.outputs().lines().stream()
                                .filter(line -> line.prop().equals(prop.prop()))
                                .sorted(Comparator.comparingInt(Outputs.Line::output))
                                .toList();
                int first = lines.isEmpty() ? 0 : lines.get(0).output();
                fittings.putIfAbsent(prop, new Fitting(key, first, lines.size()));
            }
        });
        return fittings;
    }

    private void fit(StringId prop, @Nullable Fitting was, Fitting now) {
        boolean elsewhere = was == null || !was.board.equals(now.board);
        if (was != null && !elsewhere && was.first == now.first) {
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
                (now.first == 0 ? "Plug panel %s into %s%s." : "Wire %s to %s%s.")
                        .formatted(prop.prop(), say(now), from),
                was == null ? Set.of() : Set.of(prop),
                Set.of(prop),
                List.of(prop.prop(), now.board.id()));
    }

    private static String say(Fitting at) {
        if (at.first == 0) {
            return at.board.id();
        }
        return at.outputs == 1
                ? "output %d of %s".formatted(at.first, at.board.id())
                : "outputs %d-%d of %s".formatted(at.first, at.first + at.outputs - 1, at.board.id());
    }

    private static Map<String, Object> map(Fitting at) {
        return at.first == 0
                ? Piece.map("board", at.board.id())
                : Piece.map("board", at.board.id(), "output", at.first, "outputs", at.outputs);
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
