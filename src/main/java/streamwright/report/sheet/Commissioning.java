package streamwright.report.sheet;

import java.util.ArrayList;
import java.util.List;
import streamwright.report.Cautions;
import streamwright.report.walk.BoardStop;
import streamwright.report.walk.Walk;

/** One row a step of putting the yard to work, in walking order, with room for what was found. */
final class Commissioning {
    private static final List<String> COLUMNS = List.of(
            "cable",
            "on cable",
            "board",
            "step",
            "send at full",
            "to see",
            "pixels",
            "caution",
            "amps at show",
            "done",
            "date",
            "initials",
            "firmware number",
            "built otherwise");

    private Commissioning() {}

    static Sheet of(Walk walk) {
        List<List<Object>> rows = new ArrayList<>();
        for (BoardStop board : walk.boards()) {
            rows.add(row(board, Settings.of(board), "", "", "", "", rows.isEmpty() ? Cautions.line() : ""));
            for (Step step : Step.of(board)) {
                for (Step.Look look : step.looks()) {
                    rows.add(row(
                            board,
                            step.what(),
                            look.send(),
                            look.see(),
                            step.pixels() > 0 ? step.pixels() : "",
                            Cells.figure(step.amps(), 3),
                            ""));
                }
            }
        }
        return new Sheet("commissioning", COLUMNS, rows);
    }

    private static List<Object> row(
            BoardStop board, String step, String send, String see, Object pixels, Object amps, String caution) {
        return List.of(
                board.cable(), board.place(), board.id(), step, send, see, pixels, caution, amps, "", "", "", "", "");
    }
}
