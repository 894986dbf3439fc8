package streamwright.solve;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.Literal;
import com.google.ortools.sat.MultipleCircuitConstraint;
import java.util.ArrayList;
import java.util.List;
import streamwright.solve.RepairModel.Scope;
import streamwright.yard.Drives;

/** Strings of the repair model: each on one port, first there or behind one other. */
final class RepairStrings {
    /** Spots with boards to which a string may go before everything is allowed. */
    private static final int NEAR = 5;

    private final RepairModel model;

    RepairStrings(RepairModel model) {
        this.model = model;
    }

    /** Whether a string may be plugged into a board. */
    private boolean mayPlug(int string, int board) {
        if (model.modelOf(board).drives() != model.site.sort[string]) {
            return false;
        }
        List<Installed.Seat> seats = model.installed.seats.get(string);
        boolean still = !seats.isEmpty() && seats.stream().allMatch(seat -> model.frozen[seat.board()]);
        if (board < model.frozen.length && model.frozen[board] && !seats.isEmpty() && !still) {
            return false;
        }
        boolean own = seats.isEmpty() || seats.stream().anyMatch(seat -> seat.board() == board);
        return model.scope == Scope.ALL || own || (model.scope == Scope.STRINGS && !still && near(string, board));
    }

    private boolean mayPlug(int string, int board, int port) {
        return board >= model.frozen.length
                || !model.frozen[board]
                || model.installed.seats.get(string).isEmpty()
                || model.installed.seats.get(string).stream()
                        .anyMatch(seat -> seat.board() == board && seat.port() == port);
    }

    /** Whether a board may be, or is, at one of the spots with the shortest leads that have boards. */
    private boolean near(int string, int board) {
        int rank = 0;
        for (Site.Wire lead : model.site.leads[string]) {
            boolean any = false;
            for (int b = 0; b < model.installed.boards.size(); b++) {
                any |= model.installed.boards.get(b).spot() == lead.to();
            }
            for (int spot : model.boards.get(board).spots()) {
                if (spot == lead.to() && (any || rank == 0)) {
                    return true;
                }
            }
            rank += any ? 1 : 0;
            if (rank == NEAR) {
                return false;
            }
        }
        return false;
    }

    /** Whether one string may follow another. */
    private boolean mayFollowString(int before, int next) {
        return model.scope == Scope.ALL
                || model.installed.seats.get(before).isEmpty()
                || model.installed.seats.get(next).isEmpty()
                || model.installed.seats.get(next).stream().anyMatch(seat -> seat.behind() == before);
    }

    private boolean[][] reached() {
        int n = model.site.strings.length;
        boolean[][] reached = new boolean[n][model.boards.size()];
        for (int b = 0; b < model.boards.size(); b++) {
            for (int s : model.boards.get(b).spots()) {
                for (Site.Wire wire : model.site.reach[s]) {
                    reached[wire.to()][b] = mayPlug(wire.to(), b);
                }
            }
        }
        return reached;
    }

    void build() {
        int n = model.site.strings.length;
        boolean[][] lead = reached();
        boolean[][] some = new boolean[n][];
        for (int i = 0; i < n; i++) {
            some[i] = lead[i].clone();
        }
        for (boolean more = true; more; ) {
            more = false;
            for (int i = 0; i < n; i++) {
                for (Site.Wire before : model.site.before[i]) {
                    if (!mayFollowString(before.to(), i)) {
                        continue;
                    }
                    for (int b = 0; b < model.boards.size(); b++) {
                        if (some[before.to()][b] && !some[i][b] && mayPlug(i, b)) {
                            some[i][b] = true;
                            more = true;
                        }
                    }
                }
            }
        }
        MultipleCircuitConstraint chains = model.cp.addMultipleCircuit();
        for (int i = 0; i < n; i++) {
            BoolVar first = model.bool();
            model.last[i] = model.bool();
            chains.addArc(0, i + 1, first);
            chains.addArc(i + 1, 0, model.last[i]);
            List<Literal> heads = new ArrayList<>();
            List<Literal> all = new ArrayList<>();
            for (int b = 0; b < model.boards.size(); b++) {
                int ports = model.ports(b);
                if (lead[i][b]) {
                    model.head[i][b] = new BoolVar[ports];
                }
                if (some[i][b]) {
                    model.on[i][b] = new BoolVar[ports];
                    for (int p = 0; p < ports; p++) {
                        model.on[i][b][p] = model.bool();
                        if (!mayPlug(i, b, p)) {
                            model.cp.addEquality(model.on[i][b][p], 0);
                        }
                        all.add(model.on[i][b][p]);
                        model.cp.addImplication(
                                model.on[i][b][p], model.boards.get(b).used());
                        if (lead[i][b]) {
                            model.head[i][b][p] = model.bool();
                            heads.add(model.head[i][b][p]);
                            model.cp.addImplication(model.head[i][b][p], model.on[i][b][p]);
                        }
                    }
                }
            }
            model.cp.addExactlyOne(all);
            model.cp.addEquality(LinearExpr.sum(heads.toArray(new Literal[0])), first);
        }
        for (int i = 0; i < n; i++) {
            for (Site.Wire wire : model.site.after[i]) {
                int j = wire.to();
                if (!mayFollowString(i, j)) {
                    continue;
                }
                BoolVar follows = model.bool();
                model.behind.put(i * n + j, follows);
                chains.addArc(i + 1, j + 1, follows);
                for (int b = 0; b < model.boards.size(); b++) {
                    for (int p = 0; p < model.ports(b); p++) {
                        if (model.on[i][b] != null && model.on[j][b] != null) {
                            model.same(follows, model.on[i][b][p], model.on[j][b][p]);
                        }
                    }
                }
            }
        }
        for (int b = 0; b < model.boards.size(); b++) {
            List<Literal> any = new ArrayList<>();
            for (int p = 0; p < model.ports(b); p++) {
                List<Literal> heads = new ArrayList<>();
                for (int i = 0; i < n; i++) {
                    if (model.head[i][b] != null) {
                        heads.add(model.head[i][b][p]);
                    }
                }
                if (model.modelOf(b).drives() != Drives.OUTPUTS) {
                    model.cp.addAtMostOne(heads);
                }
                any.addAll(heads);
            }
            any.add(model.boards.get(b).used().not());
            model.cp.addBoolOr(any);
        }
    }
}
