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
    private final List<Windows.Window> windows;

    WindowRows(Site site, Items items, Windows windows) {
        this.site = site;
        this.items = items;
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
     * @param makeup of a sort of cables
     * @param point what the sort does
     * @param streams of it in each window
     * @param rows to which they go
     */
    void broken(Makeup makeup, Point point, double[] streams, List<Row> rows) {
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
                int surest = surest(point, p, group);
                for (int kind = 0; kind < site.kinds.length && surest >= 0; kind++) {
                    Hearing hearing = new Hearing(p, group, surest, ports(group, 1), ports(group, makeup.most()[kind]));
                    boolean[] crowd = crowd(point, streams, hearing, along(point, p, group, kind));
                    if (crowd.length > 0) {
                        rows.add(heard(hearing, crowd));
                    }
                }
            }
        }
    }

    /**
     * Boards of a group at a spot.
     *
     * @param surest an item of the group: where a string of it is served, there is a board
     * @param one ports of a board that hear one stream, at most
     * @param all ports that hear any stream of the kind in hand, at most
     */
    private record Hearing(int spot, int group, int surest, int one, int all) {}

    /** The item of a group that is most wholly served from a spot; -1 where none is. */
    private int surest(Point point, int spot, int group) {
        return IntStream.range(0, items.size)
                .filter(k -> kept(k) && site.group[items.sample[k]] == group && point.served()[k][spot] > THERE)
                .boxed()
                .max(Comparator.comparingDouble(k -> point.served()[k][spot] / items.count[k]))
                .orElse(-1);
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

    private boolean hears(int model, int group) {
        return site.groupOf[model] == group && site.drives(model, Drives.PIXELS);
    }

    /** Ports of a board of a group that hear some of so many streams, at most. */
    private int ports(int group, int streams) {
        return IntStream.range(0, site.offers.length)
                .filter(m -> hears(m, group))
                .map(m -> site.sockets.hearing(m, streams))
                .max()
                .orElse(0);
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
    private boolean[] crowd(Point point, double[] streams, Hearing hearing, int[] along) {
        int spot = hearing.spot;
        double more = -point.served()[hearing.surest][spot] / items.count[hearing.surest];
        for (int m = 0; m < site.offers.length; m++) {
            more += hears(m, hearing.group) ? point.board()[spot][m] : 0;
        }
        double worst = BROKEN;
        boolean[] crowd = new boolean[0];
        for (int from = 0; from < along.length; from++) {
            boolean[] set = new boolean[items.size];
            double strands = 0;
            for (int to = from; to < along.length; to++) {
                set[along[to]] = true;
                strands += point.led()[along[to]][spot];
                double broken = strands - hearing.one * holding(streams, set) - hearing.all * more;
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

    /**
     * Strands at a spot hear streams that hold their heads: those of one board on so many ports for each such stream, those of
     * any board more on as many as hear their kind. Where there is no board nothing is served, so the surest item tells how
     * far there is a first one.
     */
    private Row heard(Hearing hearing, boolean[] heads) {
        return new Row() {
            @Override
            public boolean hasHeads() {
                return true;
            }

            @Override
            public double head(int item, int spot) {
                return spot == hearing.spot && heads[item] ? -1 : 0;
            }

            @Override
            public double window(int window) {
                return windows.get(window).holdsAny(heads) ? hearing.one : 0;
            }

            @Override
            public double board(int spot, int model) {
                return spot == hearing.spot && hears(model, hearing.group) ? hearing.all : 0;
            }

            @Override
            public int onlyItem() {
                return hearing.surest;
            }

            @Override
            public double item(int item, int spot) {
                return spot == hearing.spot && item == hearing.surest ? -hearing.all / (double) items.count[item] : 0;
            }
        };
    }
}
