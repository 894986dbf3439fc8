package streamwright.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import streamwright.yard.Drives;

/** The rows that every plan obeys, before any cut. */
final class Rows {
    private static final double INF = Double.POSITIVE_INFINITY;

    private Rows() {}

    static List<Row> of(Site site, Items items) {
        return rows(site, items, true, true);
    }

    /** Those of all cables together; the rows of items are the first. */
    static List<Row> ofAllCables(Site site, Items items) {
        return rows(site, items, true, false);
    }

    /** Those that any of the cables of a plan obey, and what hangs on them. */
    static List<Row> ofSomeCables(Site site, Items items) {
        return rows(site, items, false, true);
    }

    private static List<Row> rows(Site site, Items items, boolean ofAll, boolean ofSome) {
        List<Row> rows = new ArrayList<>();
        for (int k = 0; k < items.size && ofAll; k++) {
            rows.add(served(k, items.count[k]));
        }
        for (int p = 0; p < site.spots.length; p++) {
            if (ofSome) {
                hanging(site, items, p, rows);
            }
            if (ofAll) {
                rows.add(reached(p));
            }
            if (ofSome) {
                rows.add(passed(site, p));
                rows.add(arrivals(p));
            }
            if (ofAll) {
                mounted(site, p, rows);
            }
        }
        if (ofAll) {
            counted(site, rows);
            rows.add(pixels(site, items));
        }
        if (ofSome) {
            rows.add(cableBoards(site));
        }
        if (ofAll) {
            rows.add(cableLength(site));
            rows.addAll(Groups.boards(site));
            rows.addAll(Amps.of(site, items));
        }
        return rows;
    }

    /** What hangs on the boards of a spot. */
    private static void hanging(Site site, Items items, int p, List<Row> rows) {
        if (site.groups == 1 && site.sort[0] == Drives.PIXELS) {
            rows.add(ports(site, p));
        } else {
            for (int group = 0; group < site.groups; group++) {
                rows.add(Groups.sockets(site, items, p, group));
            }
        }
        if (Groups.someAlone(site)) {
            rows.add(Groups.alone(site, p));
        }
    }

    /** The boards that a spot holds. */
    private static void mounted(Site site, int p, List<Row> rows) {
        rows.add(hung(p));
        if (site.spots[p].most() < Integer.MAX_VALUE) {
            rows.add(fits(p, site.spots[p].most()));
        }
        if (site.spots[p].price() > 0) {
            rows.add(boxed(site, p));
        }
    }

    /** Numbers of boards and cables. */
    private static void counted(Site site, List<Row> rows) {
        for (int m = 0; m < site.offers.length; m++) {
            if (site.stock[m] == m && site.offers[m].have() > 0) {
                rows.add(owned(site, m, site.offers[m].have()));
            }
            if (site.stock[m] == m && site.offers[m].most() < Integer.MAX_VALUE) {
                rows.add(most(site, m, site.offers[m].most()));
            }
        }
        for (int c = 0; c < site.controllers.length; c++) {
            rows.add(jacks(c, site.controllers[c].model().jacks()));
        }
        rows.add(boards(site.yard.boardCount().least(), site.yard.boardCount().most()));
    }

    private record Simple(
            double low, double high, ArcTerm arcTerm, int onlyItem, Start startTerm, Used usedTerm, Boards boardTerm)
            implements Row {
        @Override
        public double arc(int from, int to) {
            return arcTerm.at(from, to);
        }

        @Override
        public boolean hasArcs() {
            return arcTerm != NO_ARC;
        }

        @Override
        public double item(int item, int spot) {
            return item == onlyItem ? 1 : 0;
        }

        @Override
        public double start(int spot) {
            return startTerm.at(spot);
        }

        @Override
        public boolean hasStarts() {
            return startTerm != NO_START;
        }

        @Override
        public double used(int spot) {
            return usedTerm.at(spot);
        }

        @Override
        public double board(int spot, int model) {
            return boardTerm.at(spot, model);
        }
    }

    private interface ArcTerm {
        double at(int from, int to);
    }

    private interface Start {
        double at(int spot);
    }

    private interface Used {
        double at(int spot);
    }

    private interface Boards {
        double at(int spot, int model);
    }

    private static final ArcTerm NO_ARC = (from, to) -> 0;
    private static final Start NO_START = spot -> 0;
    private static final Used NO_USE = spot -> 0;
    private static final Boards NO_BOARD = (spot, model) -> 0;

    /** Every string is served once. */
    private static Row served(int item, int count) {
        return new Row() {
            @Override
            public double low() {
                return count;
            }

            @Override
            public double high() {
                return count;
            }

            @Override
            public double item(int k, int spot) {
                return k == item ? 1 : 0;
            }

            @Override
            public int onlyItem() {
                return item;
            }

            @Override
            public double missing(int k) {
                return k == item ? 1 : 0;
            }
        };
    }

    /** A spot's boards have a port for each strand that starts there. */
    private static Row ports(Site site, int p) {
        return new Simple(
                0, INF, NO_ARC, -1, spot -> spot == p ? -1 : 0, NO_USE, (spot, m) -> spot == p ? site.ports(m) : 0);
    }

    /** A used spot is reached by a hop. */
    private static Row reached(int p) {
        return new Simple(0, INF, (from, to) -> to == p ? 1 : 0, -1, NO_START, spot -> spot == p ? -1 : 0, NO_BOARD);
    }

    /** Cables do not branch: what leaves a spot came there; at a board without address, which is alone, a cable ends. */
    private static Row passed(Site site, int p) {
        int node = site.controllers.length + p;
        return new Simple(
                0,
                INF,
                (from, to) -> (to == p ? 1 : 0) - (from == node ? 1 : 0),
                -1,
                NO_START,
                NO_USE,
                (spot, m) -> spot == p && !site.sockets.addressed[m] ? -1 : 0);
    }

    /** A cable comes to a spot only for a board there. */
    private static Row arrivals(int p) {
        return new Simple(0, INF, (from, to) -> to == p ? -1 : 0, -1, NO_START, NO_USE, (spot, m) -> spot == p ? 1 : 0);
    }

    /** A used spot has a board. */
    private static Row hung(int p) {
        return new Simple(0, INF, NO_ARC, -1, NO_START, spot -> spot == p ? -1 : 0, (spot, m) -> spot == p ? 1 : 0);
    }

    /** A spot has room for so many boards, whatever their models. */
    private static Row fits(int p, int most) {
        return new Simple(0, most, NO_ARC, -1, NO_START, NO_USE, (spot, m) -> spot == p ? 1 : 0);
    }

    /** A spot with boards pays for its box. Each board there carries at least one string in reach. */
    private static Row boxed(Site site, int p) {
        double most = Math.min(site.spots[p].most(), Math.max(1, site.reach[p].length));
        return new Simple(0, INF, NO_ARC, -1, NO_START, spot -> spot == p ? most : 0, (spot, m) -> spot == p ? -1 : 0);
    }

    /** Boards beyond the owned ones are paid for. */
    private static Row owned(Site site, int model, int have) {
        return new Row() {
            @Override
            public double low() {
                return -have;
            }

            @Override
            public double board(int spot, int m) {
                return site.stock[m] == model ? -1 : 0;
            }

            @Override
            public double paid(int m) {
                return m == model ? 1 : 0;
            }
        };
    }

    /** Number of boards of a model. */
    private static Row most(Site site, int model, double most) {
        return new Simple(0, most, NO_ARC, -1, NO_START, NO_USE, (spot, m) -> site.stock[m] == model ? 1 : 0);
    }

    /** Number of boards in all. */
    static Row boards(double low, double high) {
        return new Simple(low, high >= Integer.MAX_VALUE ? INF : high, NO_ARC, -1, NO_START, NO_USE, (spot, m) -> 1);
    }

    /** Number of cables of one controller. */
    private static Row jacks(int controller, int most) {
        return new Simple(0, most, (from, to) -> from == controller ? 1 : 0, -1, NO_START, NO_USE, NO_BOARD);
    }

    /** Number of cables in all. */
    static Row cables(Site site, double low, double high) {
        return new Simple(
                low, high, (from, to) -> from < site.controllers.length ? 1 : 0, -1, NO_START, NO_USE, NO_BOARD);
    }

    /** Each cable has room for at most its boards, and for none beside one without address. */
    private static Row cableBoards(Site site) {
        int whole = Arrays.stream(site.controllers)
                .mapToInt(c -> c.model().boardsPerCable())
                .min()
                .orElse(1);
        return new Simple(
                0,
                INF,
                (from, to) -> from < site.controllers.length
                        ? site.controllers[from].model().boardsPerCable()
                        : 0,
                -1,
                NO_START,
                NO_USE,
                (spot, m) -> site.sockets.addressed[m] ? -1 : -whole);
    }

    /** All hops are within the length of all cables; a board that is not reached from elsewhere has a hop of loops. */
    private static Row cableLength(Site site) {
        double loops = site.loops();
        int controllers = site.controllers.length;
        return new Simple(
                0,
                INF,
                (from, to) -> (from < controllers ? site.cableMost : 0) - (site.arcLength(from, to) - loops),
                -1,
                NO_START,
                NO_USE,
                (spot, m) -> -loops);
    }

    /** All pixels are within all streams, each counted as a share of what its kind allows at most. */
    private static Row pixels(Site site, Items items) {
        double[] share = new double[items.size];
        double sum = 0;
        for (int k = 0; k < items.size; k++) {
            int string = items.sample[k];
            share[k] = site.pixelsAtLeast[string] / (double) site.limitMost(site.kind[string]);
            sum += items.count[k] * share[k];
        }
        double all = sum - 1e-9;
        return new Row() {
            @Override
            public double low() {
                return all;
            }

            @Override
            public boolean hasArcs() {
                return true;
            }

            @Override
            public double arc(int from, int to) {
                return from < site.controllers.length ? site.streams[from] : 0;
            }

            @Override
            public double missing(int item) {
                return share[item];
            }
        };
    }
}
