package streamwright.solve;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CircuitConstraint;
import com.google.ortools.sat.LinearExpr;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import streamwright.solve.RepairModel.Candidate;

/** Cables of the repair model: which board follows which, and which cable each hangs on. */
final class RepairTrunk {
    private final RepairModel model;
    private final int surplus;

    /** What follows what on the trunk that is given. */
    private final Map<Integer, Integer> next = new HashMap<>();

    RepairTrunk(RepairModel model) {
        this.model = model;
        surplus = model.installed.surplus(model.site.yard.boardCount());
        model.trunk.forEach(hop -> next.put(hop.from(), hop.to()));
    }

    void build() {
        cables();
        if (model.trunkGiven()) {
            stayOnCables();
        }
    }

    private void arc(CircuitConstraint circuit, int from, int to) {
        BoolVar arc = model.bool();
        circuit.addArc(from, to, arc);
        model.arcs.put(from * model.nodes() + to, arc);
    }

    /** One circuit through all jacks: each jack's cable, and then on to the next jack. */
    private void cables() {
        CircuitConstraint circuit = model.cp.addCircuit();
        for (int j = 0; j < model.jacks; j++) {
            if (model.jacks > 1) {
                arc(circuit, j, (j + 1) % model.jacks);
            } else {
                BoolVar empty = model.bool();
                circuit.addArc(j, j, empty);
                model.arcs.put(j * model.nodes() + j, empty);
            }
        }
        for (int b = 0; b < model.boards.size(); b++) {
            Candidate board = model.boards.get(b);
            int node = model.jacks + b;
            circuit.addArc(node, node, board.used().not());
            for (int j = 0; j < model.jacks; j++) {
                if (board.installed() < 0 || !model.trunkGiven() || mayBegin(j, b)) {
                    arc(circuit, j, node);
                }
                arc(circuit, node, j);
                model.cableOf[b][j] = model.bool();
            }
            model.cp.addEquality(LinearExpr.sum(model.cableOf[b]), board.used());
            for (int other = 0; other < model.boards.size(); other++) {
                if (other != b && model.addressed(b) && model.addressed(other) && mayFollow(b, other)) {
                    arc(circuit, node, model.jacks + other);
                }
            }
        }
        for (Map.Entry<Integer, BoolVar> arc : model.arcs.entrySet()) {
            int from = arc.getKey() / model.nodes();
            int to = arc.getKey() % model.nodes();
            if (from < model.jacks && to >= model.jacks) {
                model.cp.addImplication(arc.getValue(), model.cableOf[to - model.jacks][from]);
            } else if (from >= model.jacks && to < model.jacks) {
                model.cp.addImplication(
                        arc.getValue(), model.cableOf[from - model.jacks][(to + model.jacks - 1) % model.jacks]);
            } else if (from >= model.jacks) {
                for (int j = 0; j < model.jacks; j++) {
                    model.same(
                            arc.getValue(), model.cableOf[from - model.jacks][j], model.cableOf[to - model.jacks][j]);
                }
            }
        }
    }

    private boolean mayFollow(int board, int next) {
        boolean old = model.boards.get(board).installed() >= 0
                && model.boards.get(next).installed() >= 0;
        return !model.trunkGiven() || !old || passes(board, next);
    }

    /** Whether a cable may begin with an installed board: as it does, or where the one before it is gone. */
    private boolean mayBegin(int jack, int board) {
        return passes(-1 - jack, board);
    }

    /** Whether the trunk leads from one to the other, passing no more boards than are too many. */
    private boolean passes(int from, int to) {
        Integer at = from;
        for (int passed = 0; passed <= surplus && at != null; passed++) {
            at = next.get(at);
            if (at != null && at == to) {
                return true;
            }
        }
        return false;
    }

    /** Where the trunk is given, so is each installed board's cable. */
    private void stayOnCables() {
        for (int j = 0; j < model.jacks; j++) {
            Set<Integer> passed = new HashSet<>();
            for (Integer b = next.get(-1 - j); b != null && passed.add(b); b = next.get(b)) {
                for (int other = 0; other < model.jacks; other++) {
                    if (other != j) {
                        model.cp.addEquality(model.cableOf[b][other], 0);
                        model.mayHang[b][other] = false;
                    }
                }
            }
        }
    }
}
