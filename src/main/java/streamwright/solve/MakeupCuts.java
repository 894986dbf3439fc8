package streamwright.solve;

import java.util.ArrayList;
import java.util.List;

/** Finds rows of one sort of cables, beside those that keep it together, that a solution breaks. */
final class MakeupCuts {
    private static final double BROKEN = 1e-3;
    private static final double UNSUITED = 1e-2;
    private static final int ROUNDED_MOST = 20;

    private final Site site;
    private final Items items;
    private final Makeup makeup;
    private final List<Row> ports;
    private final WindowRows windows;
    private final Rounding rounding;
    private final LengthCuts lengths;

    /** @param ports rows of ports, that come in where they are broken */
    MakeupCuts(Site site, Items items, Makeup makeup, List<Row> ports, WindowRows windows) {
        this.site = site;
        this.items = items;
        this.makeup = makeup;
        this.ports = ports;
        this.windows = windows;
        rounding = new Rounding(site, items, false);
        lengths = new LengthCuts(site);
    }

    /**
     * Rows that whole solutions may break.
     *
     * @param streams in each window of kept channels
     */
    List<Row> broken(Point point, double[] streams) {
        List<Row> found = new ArrayList<>();
        for (Row row : ports) {
            if (sum(row, point) < row.low() - BROKEN) {
                found.add(row);
            }
        }
        unsuited(point, found);
        windows.broken(makeup, point, streams, found);
        if (site.cableMost < Double.POSITIVE_INFINITY) {
            found.addAll(lengths.broken(point));
        }
        return found;
    }

    /** Rows that only count boards whole. */
    List<Row> rounded(Point point) {
        return rounding.broken(point, ROUNDED_MOST);
    }

    private double sum(Row row, Point point) {
        double sum = 0;
        for (int p = 0; p < site.spots.length; p++) {
            for (int k = 0; k < items.size; k++) {
                sum += point.led()[k][p] > 0 ? row.head(k, p) * point.led()[k][p] : 0;
            }
            for (int m = 0; m < site.offers.length; m++) {
                sum += row.board(p, m) * point.board()[p][m];
            }
        }
        return sum;
    }

    private void unsuited(Point point, List<Row> found) {
        for (int k = 0; k < items.size; k++) {
            for (int p = 0; p < site.spots.length; p++) {
                double served = point.served()[k][p] - UNSUITED;
                if (served > 0 && served > items.count[k] * point.suited(site, items.sample[k], p)) {
                    found.add(Cut.suited(site, k, items.sample[k], items.count[k], p));
                }
            }
        }
    }
}
