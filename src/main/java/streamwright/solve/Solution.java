package streamwright.solve;

import com.google.ortools.linearsolver.MPVariable;
import java.util.ArrayList;
import java.util.List;

/**
 * What a solution of {@link Master} holds.
 *
 * @param point values of what cuts weigh
 * @param missed of each item, strings left out
 * @param paid of each offer, boards beyond those that are owned
 * @param carrying columns that are not 0
 * @param travelled arcs that are not 0
 */
record Solution(Point point, double[] missed, double[] paid, List<Master.Column> carrying, List<int[]> travelled) {
    /** A value that is nothing but rounding. */
    private static final double NOTHING = 1e-9;

    /** Before there is any. */
    static Solution none(Site site, Items items) {
        return new Solution(
                Point.nowhere(site, items),
                new double[items.size],
                new double[site.offers.length],
                List.of(),
                List.of());
    }

    /** The last one; must be read before rows are added. */
    static Solution of(Master master) {
        Solution read = new Solution(
                Point.nowhere(master.site, master.items),
                Standing.values(master.standing.shortage),
                Standing.values(master.standing.paid),
                new ArrayList<>(),
                new ArrayList<>());
        read.arcs(master);
        Standing standing = master.standing;
        System.arraycopy(Standing.values(standing.used), 0, read.point.used(), 0, standing.used.length);
        for (int p = 0; p < standing.used.length; p++) {
            read.point.board()[p] = Standing.values(standing.board[0][p]);
        }
        read.columns(master);
        return read;
    }

    private void arcs(Master master) {
        for (int from = 0; from < master.arc.length; from++) {
            for (int to = 0; to < master.standing.used.length; to++) {
                MPVariable variable = master.arc[from][to];
                point.arc()[from][to] = variable == null ? 0 : variable.solutionValue();
                if (point.arc()[from][to] > NOTHING) {
                    travelled.add(new int[] {from, to});
                }
            }
        }
    }

    private void columns(Master master) {
        for (Master.Column column : master.columns) {
            column.value = column.variable.solutionValue();
            if (column.value > NOTHING) {
                carrying.add(column);
                Strand strand = master.strands.get(column.strand);
                point.led()[strand.head()][column.spot] += column.value;
                for (int item : strand.items()) {
                    point.served()[item][column.spot] += column.value;
                }
            }
        }
    }

    /** By how much it breaks a row; 0 where it keeps it. */
    double broken(Row row, Strands all) {
        double sum = 0;
        boolean strands = row.hasStarts() || row.hasHeads() || row.onlyItem() != -1;
        for (int c = 0; c < carrying.size() && strands; c++) {
            Master.Column column = carrying.get(c);
            sum += column.coefficient(row, all) * column.value;
        }
        for (int a = 0; a < travelled.size() && row.hasArcs(); a++) {
            int[] between = travelled.get(a);
            sum += row.arc(between[0], between[1]) * point.arc()[between[0]][between[1]];
        }
        for (int p = 0; p < point.used().length; p++) {
            sum += row.used(p) * point.used()[p];
            for (int m = 0; m < paid.length; m++) {
                sum += row.board(p, m) * point.board()[p][m];
            }
        }
        for (int m = 0; m < paid.length; m++) {
            sum += row.paid(m) * paid[m];
        }
        for (int k = 0; k < missed.length; k++) {
            sum += row.missing(k) * missed[k];
        }
        return Math.max(0, Math.max(row.low() - sum, sum - row.high()));
    }
}
