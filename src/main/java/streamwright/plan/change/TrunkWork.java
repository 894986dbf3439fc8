package streamwright.plan.change;

import java.util.List;
import java.util.Map;
import java.util.Set;
import streamwright.plan.Board;
import streamwright.plan.change.Piece.Phase;
import streamwright.plan.change.Wiring.BoardKey;
import streamwright.plan.change.Wiring.End;
import streamwright.plan.change.Wiring.Hop;
import streamwright.yard.Controller;

/** Boards and hops that differ. */
final class TrunkWork {
    private final Compared all;

    private TrunkWork(Compared all) {
        this.all = all;
    }

    static void collect(Compared all) {
        TrunkWork found = new TrunkWork(all);
        found.boards();
        found.hops();
    }

    private void boards() {
        all.before.boards.forEach((key, board) -> {
            Board now = all.after.boards.get(key);
            if (now == null) {
                all.add(
                        Phase.TAKE_DOWN,
                        "board",
                        Piece.map("board", key.id()),
                        place(board),
                        null,
                        all.work.board(),
                        "Take down %sboard %s (%s) at %s."
                                .formatted(dead(key), key.id(), key.model(), Spell.place(board)),
                        all.through(all.before, key),
                        Set.of(),
                        List.of(key.id()));
            } else if (!Compared.samePlace(board, now)) {
                all.add(
                        Phase.HANG,
                        "board",
                        Piece.map("board", key.id()),
                        place(board),
                        place(now),
                        all.work.board(),
                        moved(key, board, now),
                        all.through(all.before, key),
                        all.through(all.after, key),
                        List.of(key.id()));
            } else if (all.dead.contains(key.id())) {
                all.add(
                        Phase.HANG,
                        "board",
                        Piece.map("board", key.id()),
                        place(board),
                        place(now),
                        all.work.board(),
                        "Take the dead board %s off at %s and hang a new %s board in its place, with the same leads and cables.%s"
                                .formatted(key.id(), Spell.place(board), key.model(), Spell.switches(now)),
                        all.through(all.before, key),
                        all.through(all.after, key),
                        List.of(key.id()));
            }
        });
        all.after.boards.forEach((key, board) -> {
            if (!all.before.boards.containsKey(key)) {
                all.add(
                        Phase.HANG,
                        "board",
                        Piece.map("board", key.id()),
                        null,
                        place(board),
                        all.work.board(),
                        "Hang a new %s board %s at %s.%s"
                                .formatted(key.model(), key.id(), Spell.place(board), Spell.switches(board)),
                        Set.of(),
                        all.through(all.after, key),
                        List.of());
            }
        });
    }

    private String dead(BoardKey key) {
        return all.dead.contains(key.id()) ? "the dead " : "";
    }

    private String moved(BoardKey key, Board was, Board now) {
        String from = Spell.place(was);
        String to = Spell.place(now);
        return (all.dead.contains(key.id())
                        ? "Take down the dead board %s at %s; hang a new %s board of that name at %s, with its leads."
                                .formatted(key.id(), from, key.model(), to)
                        : "Move board %s from %s to %s, with its leads.".formatted(key.id(), from, to))
                + Spell.switches(now);
    }

    private static Map<String, Object> place(Board board) {
        List<Double> at = board.at().z() == 0
                ? List.of(board.at().x(), board.at().y())
                : List.of(board.at().x(), board.at().y(), board.at().z());
        return board.spot() == null
                ? Piece.map("model", board.model(), "at", at)
                : Piece.map("model", board.model(), "at", at, "spot", board.spot());
    }

    private boolean there(End end) {
        if (end.board() != null) {
            return all.after.boards.containsKey(end.board());
        }
        for (Controller controller : all.yard.controllers()) {
            if (controller.id().equals(end.controller())) {
                return end.jack() <= controller.model().jacks();
            }
        }
        return false;
    }

    private void hops() {
        String unit = all.yard.units().symbol();
        all.before.hops.forEach((ends, hop) -> {
            if (!all.after.hops.containsKey(ends)) {
                boolean dead = !there(hop.from()) || !there(hop.to());
                all.add(
                        Phase.PULL_OUT,
                        "hop",
                        ends(hop),
                        Piece.map("length", hop.length()),
                        null,
                        dead ? 0 : all.work.hop(),
                        "Take off the cable between %s and %s%s."
                                .formatted(hop.from(), hop.to(), dead ? " (dead: it may stay where it lies)" : ""),
                        all.behind(all.before, hop),
                        Set.of(),
                        List.of(hop.to().toString(), hop.from().toString()));
            }
        });
        all.after.hops.forEach((ends, hop) -> {
            if (!all.before.hops.containsKey(ends)) {
                all.add(
                        Phase.PULL,
                        "hop",
                        ends(hop),
                        null,
                        Piece.map("length", hop.length()),
                        all.work.hop(),
                        "Pull %s %s of cable from %s to %s."
                                .formatted(Spell.figure(hop.length()), unit, hop.from(), hop.to()),
                        Set.of(),
                        all.behind(all.after, hop),
                        List.of(hop.to().toString(), hop.from().toString()));
            }
        });
    }

    private static Map<String, Object> ends(Hop hop) {
        return Piece.map("ends", List.of(hop.from().toString(), hop.to().toString()));
    }
}
