package streamwright.report.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import streamwright.report.Cautions;
import streamwright.report.walk.BoardStop;
import streamwright.report.walk.PortStop;
import streamwright.report.walk.Walk;

/** One row a board, in walking order. */
final class Boards {
    private Boards() {}

    static Sheet of(Walk walk) {
        List<String> columns = List.of(
                "board",
                "model",
                "place",
                "x",
                "y",
                "z",
                "controller",
                "jack",
                "on cable",
                "of",
                "from",
                "hop " + walk.unit(),
                "ID",
                "switches",
                "switches up",
                "terminator",
                "ports used",
                "carries",
                "caution",
                "volts",
                "amps at show",
                "amps at full white");
        List<List<Object>> rows = new ArrayList<>();
        for (BoardStop stop : walk.boards()) {
            rows.add(row(stop, rows.isEmpty()));
        }
        return new Sheet("boards", columns, rows);
    }

    private static List<Object> row(BoardStop stop, boolean first) {
        var board = stop.board();
        return List.of(
                stop.id(),
                board.model(),
                stop.where(),
                Cells.figure(board.at().x(), 3),
                Cells.figure(board.at().y(), 3),
                Cells.figure(board.at().z(), 3),
                board.controller(),
                board.jack(),
                stop.place(),
                stop.of(),
                stop.from(),
                Cells.figure(stop.hop(), 3),
                board.boardId() == null ? "" : board.boardId(),
                board.switches() == null ? "" : board.switches(),
                up(stop),
                board.terminator() ? "on" : "off",
                stop.ports().size(),
                carries(stop),
                first ? Cautions.line() : "",
                stop.volts(),
                amps(stop, stop.ampsShow()),
                amps(stop, stop.ampsFull()));
    }

    /** The plan knows what strings draw, and nothing of panels and mains loads. */
    private static Object amps(BoardStop stop, double amps) {
        return stop.ports().isEmpty() ? "" : Cells.figure(amps, 3);
    }

    /** Which switches are up, for those who would rather count than read bits; a spreadsheet drops leading noughts. */
    private static String up(BoardStop stop) {
        String switches = stop.board().switches();
        if (switches == null || stop.rotary()) {
            return "";
        }
        String up = Settings.up(switches).stream().map(Object::toString).collect(Collectors.joining(" "));
        return up.isEmpty() ? "none" : up;
    }

    private static String carries(BoardStop stop) {
        List<String> parts = new ArrayList<>();
        for (PortStop port : stop.ports()) {
            parts.add("port " + port.use().port() + ": " + port.props());
        }
        var outputs = stop.board().outputs();
        if (outputs != null) {
            outputs.lines()
                    .forEach(line -> parts.add("output " + line.output() + ": " + line.prop() + " " + line.number()));
        }
        stop.board().panels().forEach(panel -> parts.add("panel " + panel.panel() + ": " + panel.prop()));
        return String.join("; ", parts);
    }
}
