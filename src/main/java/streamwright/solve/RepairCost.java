package streamwright.solve;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.List;

/** What a repair costs, but for injections, in hundredths: to choose among repairs of the same work. */
final class RepairCost {
    private static final double HUNDRED = 100;

    private final RepairModel model;
    private final Site site;
    private final LinearExprBuilder cost = LinearExpr.newBuilder();

    private RepairCost(RepairModel model) {
        this.model = model;
        site = model.site;
    }

    static LinearExprBuilder of(RepairModel model) {
        RepairCost all = new RepairCost(model);
        all.leads();
        all.trunk();
        all.boards();
        return all.cost;
    }

    private static long scaled(double price) {
        return Math.round(price * HUNDRED);
    }

    private IntVar amount(double most) {
        return model.cp.newIntVar(0, Math.max(0, scaled(most)), "");
    }

    private void leads() {
        int n = site.strings.length;
        for (int i = 0; i < n; i++) {
            double most = 0;
            for (Site.Wire lead : site.leads[i]) {
                most = Math.max(most, lead.cost());
            }
            IntVar price = amount(most);
            cost.add(price);
            for (int b = 0; b < model.boards.size(); b++) {
                BoolVar[] heads = model.head[i][b];
                RepairModel.Candidate board = model.boards.get(b);
                for (int s = 0; heads != null && s < board.spots().length; s++) {
                    Site.Wire lead = site.lead(board.spots()[s], i);
                    for (BoolVar head : heads) {
                        if (lead != null) {
                            model.cp
                                    .addGreaterOrEqual(price, scaled(lead.cost()))
                                    .onlyEnforceIf(new Literal[] {head, board.at()[s]});
                        }
                    }
                }
            }
        }
        model.behind.forEach((key, follows) -> cost.addTerm(follows, scaled(site.jumperCost(key / n, key % n))));
    }

    private void trunk() {
        int nodes = model.nodes();
        model.arcs.forEach((key, arc) -> {
            int from = key / nodes;
            int to = key % nodes - model.jacks;
            if (to < 0) {
                return;
            }
            RepairModel.Candidate next = model.boards.get(to);
            if (from < model.jacks) {
                cost.addTerm(arc, scaled(site.cablePrice));
            }
            int[] froms = from < model.jacks
                    ? new int[] {-1}
                    : model.boards.get(from - model.jacks).spots();
            if (froms.length == 1 && next.spots().length == 1) {
                cost.addTerm(arc, scaled(site.trunkPrice * hop(from, froms[0], next.spots()[0])));
                return;
            }
            double most = 0;
            for (int a : froms) {
                for (int b : next.spots()) {
                    most = Math.max(most, hop(from, a, b));
                }
            }
            IntVar price = amount(site.trunkPrice * most);
            cost.add(price);
            for (int a = 0; a < froms.length; a++) {
                for (int b = 0; b < next.spots().length; b++) {
                    List<Literal> when = new ArrayList<>(List.of(arc, next.at()[b]));
                    if (from >= model.jacks) {
                        when.add(model.boards.get(from - model.jacks).at()[a]);
                    }
                    model.cp
                            .addGreaterOrEqual(price, scaled(site.trunkPrice * hop(from, froms[a], next.spots()[b])))
                            .onlyEnforceIf(when.toArray(new Literal[0]));
                }
            }
        });
    }

    private double hop(int from, int spot, int to) {
        return from < model.jacks ? site.hopFrom(model.jackController[from], to) : site.hop(spot, to);
    }

    private void boards() {
        for (int m = 0; m < site.offers.length; m++) {
            LinearExprBuilder bought = LinearExpr.newBuilder();
            int count = 0;
            for (RepairModel.Candidate board : model.boards) {
                if (board.model() == m) {
                    bought.add(board.used());
                    count++;
                }
            }
            bought.add(-Math.min(site.offers[m].have(), 1_000_000));
            IntVar paid = model.cp.newIntVar(0, count, "");
            model.cp.addGreaterOrEqual(paid, bought);
            cost.addTerm(paid, scaled(site.offers[m].price()));
        }
        for (int s = 0; s < site.spots.length; s++) {
            if (site.spots[s].price() > 0) {
                BoolVar used = model.bool();
                for (RepairModel.Candidate board : model.boards) {
                    for (int p = 0; p < board.spots().length; p++) {
                        if (board.spots()[p] == s) {
                            model.cp.addImplication(board.at()[p], used);
                        }
                    }
                }
                cost.addTerm(used, scaled(site.spots[s].price()));
            }
        }
    }
}
