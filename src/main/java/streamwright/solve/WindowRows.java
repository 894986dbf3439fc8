package streamwright.solve;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import streamwright.yard.Drives;

/** Rows that tie what cables serve to the windows of kept channels in which their streams lie. */
final class WindowRows {
    private static final double BROKEN = 0.02;
    private static final double THERE = 1e-9;

    private final Site site;
    private final Items items;
    private final MasterLimits limits;
    private final List<Windows.Window> windows;

    WindowRows(Site site, Items items, MasterLimits limits, Windows windows) {
        this.site = site;
        this.items = items;
        this.limits = limits;
        this.windows = windows.all;
    }

    /** Streams of some kinds are no more than so many. */
    Row streams(boolean[] kinds, int most) {
        return new Row() {
            @Override
            public double low() {
                return -most;
            }

            @Override
            public double window(int window) {
                return kinds[windows.get(window).kind()] ? -1 : 0;
            }
        };
    }

    /**
     * Those that are broken; none where channels are numbered anew.
     *
     * @param point what a sort of cables does
     * @param streams of it in each window
     * @param rows to which they go
     */
    void broken(Point point, double[] streams, List<Row> rows) {
        if (windows.isEmpty()) {
            return;
        }
        for (int k = 0; k < items.size; k++) {
            double served = Arrays.stream(point.served()[k]).sum();
            boolean[] item = new boolean[items.size];
            item[k] = true;
            if (kept(k) && served > items.count[k] * holding(streams, item) + BROKEN) {
                rows.add(served(k, item));
            }
        }
        for (int p = 0; p < site.spots.length; p++) {
            for (int group = 0; group < site.groups; group++) {
                int most = portsMost(p, group);
                for (int kind = 0; kind < site.kinds.length; kind++) {
                    boolean[] crowd = crowd(point, streams, p, along(point, p, group, kind), most);
                    if (crowd.length > 0) {
                        rows.add(heard(p, crowd, most));
                    }
                }
            }
        }
    }

    private boolean kept(int item) {
        return site.sort[items.sample[item]] == Drives.PIXELS;
    }

    private double holding(double[] streams, boolean[] any) {
        return IntStream.range(0, streams.length)
                .filter(w -> streams[w] > 0 && windows.get(w).holdsAny(any))
                .mapToDouble(w -> streams[w])
                .sum();
    }

    /** Ports of a spot's boards that hear one stream, at most. */
    private int portsMost(int spot, int group) {
        int boards = 0;
        int ports = 0;
        for (int m = 0; m < site.offers.length; m++) {
            if (site.groupOf[m] == group && site.drives(m, Drives.PIXELS)) {
                boards += limits.boardsMost(spot, m);
                ports = Math.max(ports, site.sockets.hearing(m, 1));
            }
        }
        return ports * Math.min(boards, site.spots[spot].most());
    }

    /** Items of a kind and group that lead strands at a spot, by channel. */
    private int[] along(Point point, int spot, int group, int kind) {
        return IntStream.range(0, items.size)
                .filter(k -> kept(k)
                        && site.kind[items.sample[k]] == kind
                        && site.group[items.sample[k]] == group
                        && point.led()[k][spot] > THERE)
                .boxed()
                .sorted(Comparator.comparingLong(k -> site.kept.channel[items.sample[k]]))
                .mapToInt(Integer::intValue)
                .toArray();
    }

    /** Neighbours among them whose strands are too many for the streams that hold any; none where they are not. */
    private boolean[] crowd(Point point, double[] streams, int spot, int[] along, int most) {
        double worst = BROKEN;
        boolean[] crowd = new boolean[0];
        for (int from = 0; from < along.length; from++) {
            boolean[] set = new boolean[items.size];
            double strands = 0;
            for (int to = from; to < along.length; to++) {
                set[along[to]] = true;
                strands += point.led()[along[to]][spot];
                double broken = strands - most * holding(streams, set);
                if (broken > worst) {
                    worst = broken;
                    crowd = set.clone();
                }
            }
        }
        return crowd;
    }

    /** A string is served where a stream's window holds it. */
    private Row served(int item, boolean[] set) {
        return new Row() {
            @Override
            public double item(int k, int spot) {
                return k == item ? -1 : 0;
            }

            @Override
            public int onlyItem() {
                return item;
            }

            @Override
            public double window(int window) {
                return windows.get(window).holdsAny(set) ? items.count[item] : 0;
            }
        };
    }

    /** Strands at a spot hear streams that hold their heads, each on so many ports at most. */
    private Row heard(int at, boolean[] heads, int most) {
        return new Row() {
            @Override
            public boolean hasHeads() {
                return true;
            }

            @Override
            public double head(int item, int spot) {
                return spot == at && heads[item] ? -1 : 0;
            }

            @Override
            public double window(int window) {
                return windows.get(window).holdsAny(heads) ? most : 0;
            }
        };
    }
}
