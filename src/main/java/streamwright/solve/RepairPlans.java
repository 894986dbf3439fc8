package streamwright.solve;

import java.util.List;
import org.jspecify.annotations.Nullable;
import streamwright.plan.Board;
import streamwright.plan.Cable;
import streamwright.plan.Outputs;
import streamwright.plan.PanelUse;
import streamwright.plan.Plan;
import streamwright.plan.PortUse;

/** Plans with parts of them replaced. */
final class RepairPlans {
    private RepairPlans() {}

    static Plan with(Plan plan, List<Cable> cables, List<Board> boards) {
        return new Plan(
                plan.format(),
                plan.yard(),
                plan.status(),
                plan.cost(),
                plan.bound(),
                plan.gap(),
                plan.seconds(),
                plan.seed(),
                plan.totals(),
                cables,
                boards,
                plan.supplies(),
                plan.reasons(),
                plan.changes(),
                plan.work(),
                plan.workBound());
    }

    static Board with(Board board, List<PortUse> ports) {
        return with(board, ports, board.outputs(), board.panels());
    }

    static Board with(Board board, List<PortUse> ports, @Nullable Outputs outputs, List<PanelUse> panels) {
        return new Board(
                board.id(),
                board.model(),
                board.spot(),
                board.at(),
                board.controller(),
                board.jack(),
                board.boardId(),
                board.switches(),
                board.terminator(),
                ports,
                outputs,
                panels);
    }
}
