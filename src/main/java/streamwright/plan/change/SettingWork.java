package streamwright.plan.change;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import streamwright.plan.Board;
import streamwright.plan.PortUse;
import streamwright.plan.StreamUse;
import streamwright.plan.change.Piece.Phase;

/** IDs, start pixels and windows of streams that differ. */
final class SettingWork {
    private final Compared all;

    private SettingWork(Compared all) {
        this.all = all;
    }

    static void collect(Compared all) {
        SettingWork found = new SettingWork(all);
        found.boardSettings();
        found.portSettings();
        found.streamSettings();
    }

    private void boardSettings() {
        all.after.boards.forEach((key, now) -> {
            Board was = all.before.boards.get(key);
            if (was == null) {
                return;
            }
            boolean newId = !Objects.equals(was.boardId(), now.boardId());
            boolean moved = !Compared.samePlace(was, now);
            if (!moved && (newId || !Objects.equals(was.switches(), now.switches()))) {
                Set<StringId> lit = all.on(all.after, key);
                all.add(
                        Phase.SET,
                        "setting",
                        Piece.map("board", key.id()),
                        id(was),
                        id(now),
                        newId ? all.work.setting() : 0,
                        "Set board %s to ID %s, switches %s.".formatted(key.id(), now.boardId(), now.switches()),
                        lit,
                        lit,
                        List.of(key.id(), now.controller() + " jack " + now.jack()));
            }
            if (was.terminator() != now.terminator()) {
                all.add(
                        Phase.SET,
                        "setting",
                        Piece.map("board", key.id()),
                        Piece.map("terminator", was.terminator()),
                        Piece.map("terminator", now.terminator()),
                        0,
                        now.terminator()
                                ? "Switch the terminator of board %s on: it is the last of its cable."
                                        .formatted(key.id())
                                : "Switch the terminator of board %s off.".formatted(key.id()),
                        Set.of(),
                        Set.of(),
                        List.of(key.id()));
            }
        });
    }

    private static Map<String, Object> id(Board board) {
        return board.boardId() == null
                ? Piece.map()
                : Piece.map("boardId", board.boardId(), "switches", String.valueOf(board.switches()));
    }

    private void portSettings() {
        all.after.ports.forEach((key, now) -> {
            PortUse was = all.before.ports.get(key);
            Board board = all.before.boards.get(key.board());
            if (was == null || board == null || !Wiring.strings(was).equals(Wiring.strings(now))) {
                return;
            }
            boolean differs = was.startPixel() != now.startPixel() || was.stream() != now.stream();
            if (differs && Compared.samePlace(board, Objects.requireNonNull(all.after.boards.get(key.board())))) {
                Set<StringId> lit = new LinkedHashSet<>(Wiring.strings(now));
                String jack = board.controller() + " jack " + board.jack();
                all.add(
                        Phase.SET,
                        "setting",
                        Piece.map("board", key.board().id(), "port", key.port()),
                        Piece.map("stream", was.stream(), "startPixel", was.startPixel()),
                        Piece.map("stream", now.stream(), "startPixel", now.startPixel()),
                        all.work.setting(),
                        "Set port %d of %s to start at pixel %d of stream %d (it was pixel %d%s)."
                                .formatted(
                                        key.port(),
                                        key.board().id(),
                                        now.startPixel(),
                                        now.stream(),
                                        was.startPixel(),
                                        was.stream() == now.stream() ? "" : " of stream " + was.stream()),
                        lit,
                        lit,
                        List.of(key.board().id() + " port " + key.port(), jack + " stream " + was.stream()));
            }
        });
    }

    private void streamSettings() {
        all.after.streams.forEach((key, now) -> {
            StreamUse was = all.before.streams.get(key);
            boolean same = was != null && was.startChannel() == now.startChannel() && was.pixels() == now.pixels();
            if (same) {
                return;
            }
            Set<StringId> lit = all.after.carried(key);
            boolean charged = was != null && all.before.carried(key).equals(lit);
            String label = key.controller() + " jack " + key.jack() + " stream " + key.stream();
            all.add(
                    Phase.SET,
                    "setting",
                    Piece.map("controller", key.controller(), "jack", key.jack(), "stream", key.stream()),
                    was == null ? null : window(was),
                    window(now),
                    charged ? all.work.setting() : 0,
                    "In %s let stream %d of jack %d start at channel %d (universe %d, slot %d), with %s."
                            .formatted(
                                    key.controller(),
                                    key.stream(),
                                    key.jack(),
                                    now.startChannel(),
                                    now.universe(),
                                    now.slot(),
                                    Spell.count(now.pixels(), "pixel")),
                    was != null && was.startChannel() != now.startChannel() ? new TreeSet<>(lit) : Set.of(),
                    new TreeSet<>(lit),
                    List.of(label));
        });
    }

    private static Map<String, Object> window(StreamUse stream) {
        return Piece.map("startChannel", stream.startChannel(), "pixels", stream.pixels());
    }
}
