package streamwright.solve;

import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPVariable;
import java.util.Arrays;

/** The variables that a relaxation has from the first, before any arc or strand. */
final class Standing {
    private static final double INF = Double.POSITIVE_INFINITY;

    private final MasterLimits limits;

    /** Of each offer: boards that must be paid for. */
    final MPVariable[] paid;

    /** Strings of an item left out, at a price above that of serving any: so that a solution always exists. */
    final MPVariable[] shortage;

    final MPVariable[] used;

    /** Of each sort of cables, spot and offer. */
    final MPVariable[][][] board;

    /** Of each sort and offer, whether none are on such cables. */
    private final boolean[][] out;

    /** @param sorts of cables that are told apart */
    Standing(Site site, Items items, MasterLimits limits, Programme programme, Master.Kind kind, int sorts) {
        this.limits = limits;
        paid = new MPVariable[site.offers.length];
        double loops = site.loops() * site.trunkPrice;
        for (int m = 0; m < paid.length; m++) {
            boolean owned = site.offers[m].have() > 0;
            paid[m] = programme.free(owned ? INF : 0, site.offers[m].price());
        }
        shortage = new MPVariable[items.size];
        for (int k = 0; k < items.size; k++) {
            shortage[k] = programme.free(kind.whole() ? 0 : INF, kind.whole() ? 0 : kind.missing()[k]);
        }
        used = new MPVariable[site.spots.length];
        board = new MPVariable[sorts][used.length][paid.length];
        out = new boolean[sorts][paid.length];
        for (int p = 0; p < used.length; p++) {
            used[p] = programme.counted(1, site.spots[p].price());
            for (MPVariable[][] ofSort : board) {
                for (int m = 0; m < paid.length; m++) {
                    double price = site.offers[m].have() > 0 ? 0 : site.offers[m].price();
                    ofSort[p][m] = programme.counted(limits.boardsMost(p, m), loops + price);
                }
            }
        }
    }

    /** Puts all but boards into a row. */
    void join(Row row, MPConstraint constraint) {
        for (int k = 0; k < shortage.length; k++) {
            set(constraint, shortage[k], row.missing(k));
        }
        for (int p = 0; p < used.length; p++) {
            set(constraint, used[p], row.used(p));
        }
        for (int m = 0; m < paid.length; m++) {
            set(constraint, paid[m], row.paid(m));
        }
    }

    /** Puts the boards of a sort into a row. */
    void join(int sort, Row row, MPConstraint constraint) {
        for (int p = 0; p < used.length; p++) {
            for (int m = 0; m < paid.length; m++) {
                set(constraint, board[sort][p][m], row.board(p, m));
            }
        }
    }

    static void set(MPConstraint constraint, MPVariable variable, double coefficient) {
        if (coefficient != 0) {
            constraint.setCoefficient(variable, coefficient);
        }
    }

    /** Leaves only solutions in which these spots are empty or used. */
    void choose(Chosen chosen) {
        for (int p = 0; p < used.length; p++) {
            boolean empty = chosen.empty().get(p);
            used[p].setBounds(chosen.used().get(p) ? 1 : 0, empty ? 0 : 1);
            for (int s = 0; s < board.length; s++) {
                for (int m = 0; m < paid.length; m++) {
                    board[s][p][m].setUb(empty || out[s][m] ? 0 : limits.boardsMost(p, m));
                }
            }
        }
    }

    /** Leaves only solutions without such boards on a sort of cables, once it is chosen which spots are used. */
    void without(int sort, int model) {
        out[sort][model] = true;
    }

    static double[] values(MPVariable[] variables) {
        return Arrays.stream(variables).mapToDouble(MPVariable::solutionValue).toArray();
    }
}
