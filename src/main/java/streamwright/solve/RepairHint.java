package streamwright.solve;

import com.google.ortools.sat.BoolVar;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Shows the solver the old plan as a place to begin. */
final class RepairHint {
    private final RepairModel model;
    private final Set<Integer> hinted = new HashSet<>();

    RepairHint(RepairModel model) {
        this.model = model;
    }

    void add() {
        Installed installed = model.installed;
        for (int b = 0; b < installed.boards.size(); b++) {
            BoolVar stays = model.stays(b);
            if (stays != null) {
                hint(stays, true);
            }
        }
        int nodes = model.nodes();
        for (Installed.Hop hop : installed.hops) {
            int from = hop.from() < 0 ? -1 - hop.from() : model.jacks + hop.from();
            BoolVar arc = model.arcs.get(from * nodes + model.jacks + hop.to());
            if (arc != null) {
                hint(arc, true);
            }
        }
        for (int i = 0; i < installed.seats.size(); i++) {
            List<Installed.Seat> seats = installed.seats.get(i);
            if (seats.isEmpty()) {
                continue;
            }
            Installed.Seat seat = seats.get(0);
            BoolVar[] on = model.on[i][seat.board()];
            if (on != null && seat.port() < on.length) {
                hint(on[seat.port()], true);
            }
        }
    }

    private void hint(BoolVar literal, boolean value) {
        if (hinted.add(literal.getIndex())) {
            model.cp.addHint(literal, value);
        }
    }
}
