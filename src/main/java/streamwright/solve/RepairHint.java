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
        for (BoolVar arc : model.arcs.values()) {
            hint(arc, false);
        }
        for (int i = 0; i < installed.seats.size(); i++) {
            List<Installed.Seat> seats = installed.seats.get(i);
            for (int b = 0; b < model.boards.size() && !seats.isEmpty(); b++) {
                place(i, b, seats.get(0));
            }
        }
        int n = model.site.strings.length;
        model.behind.forEach((key, follows) -> {
            List<Installed.Seat> seats = installed.seats.get(key % n);
            if (!seats.isEmpty()) {
                hint(follows, seats.get(0).behind() == key / n);
            }
        });
    }

    private void place(int string, int board, Installed.Seat seat) {
        BoolVar[] on = model.on[string][board];
        BoolVar[] heads = model.head[string][board];
        for (int p = 0; on != null && p < on.length; p++) {
            boolean here = seat.board() == board && seat.port() == p;
            hint(on[p], here);
            if (heads != null) {
                hint(heads[p], here && seat.behind() == Installed.FIRST);
            }
        }
    }

    private void hint(BoolVar literal, boolean value) {
        if (hinted.add(literal.getIndex())) {
            model.cp.addHint(literal, value);
        }
    }
}
