package streamwright.solve;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.List;
import streamwright.yard.BoardModel;

/**
 * What follows from the clauses of the repair model and says it in sums, so that a linear relaxation feels it: a string
 * is on the cable of its board, and on a stream that its port hears.
 */
final class RepairTight {
    private final RepairModel model;
    private final Site site;

    RepairTight(RepairModel model) {
        this.model = model;
        site = model.site;
    }

    void build() {
        for (int i = 0; i < site.strings.length; i++) {
            if (model.pixels(i)) {
                onCables(i);
                onStreams(i);
            }
        }
    }

    /** On a board, the string is on a cable if and only if the board is. */
    private void onCables(int string) {
        for (int j = 0; j < model.jacks; j++) {
            BoolVar[] streams = model.stream[string][j];
            for (int b = 0; b < model.boards.size(); b++) {
                BoolVar[] on = model.on[string][b];
                if (on == null) {
                    continue;
                }
                LinearExprBuilder more = LinearExpr.newBuilder();
                LinearExprBuilder less = LinearExpr.newBuilder();
                if (streams != null) {
                    more.add(LinearExpr.sum(streams));
                    less.add(LinearExpr.sum(streams));
                }
                more.addTerm(model.cableOf[b][j], -1).addSum(on);
                less.addTerm(model.cableOf[b][j], -1);
                for (BoolVar each : on) {
                    less.addTerm(each, -1);
                }
                model.cp.addLessOrEqual(more, 1);
                model.cp.addGreaterOrEqual(less, -1);
            }
        }
    }

    /** A string is as often on stream k of any cable as on a port that hears stream k. */
    private void onStreams(int string) {
        int most = 0;
        for (int j = 0; j < model.jacks; j++) {
            most = Math.max(most, model.streams(j));
        }
        for (int k = 0; k < most; k++) {
            LinearExprBuilder heard = LinearExpr.newBuilder();
            for (int j = 0; j < model.jacks; j++) {
                BoolVar[] streams = model.stream[string][j];
                if (streams != null && k < streams.length) {
                    heard.addTerm(streams[k], -1);
                }
            }
            for (int b = 0; b < model.boards.size(); b++) {
                BoolVar[] on = model.on[string][b];
                List<Integer> ports = model.modelOf(b).ports();
                for (int p = 0; on != null && p < on.length; p++) {
                    if (ports.get(p) == BoardModel.ANY) {
                        return;
                    }
                    if (ports.get(p) == k + 1) {
                        heard.add(on[p]);
                    }
                }
            }
            model.cp.addEquality(heard, 0);
        }
    }
}
