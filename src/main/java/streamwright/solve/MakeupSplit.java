package streamwright.solve;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import streamwright.yard.Drives;

/**
 * How to tell the cables of a sort apart: those with no more than so many streams of a kind from those with more, or those
 * without a board that is alone there from those with one.
 */
record MakeupSplit(int sort, Makeup few, Makeup many) {
    /** How much the part that changes more counts beside the one that changes less. */
    private static final double MORE = 0.1;

    /** So many boards without address are told apart first: each takes a whole cable, and a part of it only its part. */
    private static final double LONE = 0.05;

    /**
     * By boards without address where there is enough of them, else by streams; null where all is told apart.
     *
     * @param points what the solution has of each sort; empty before there is one
     */
    static @Nullable MakeupSplit of(Site site, Items items, Makeups makeups, List<Point> points) {
        MakeupSplit lone = lone(site, makeups, points);
        return lone != null ? lone : streams(site, items, makeups, points);
    }

    /** The split by streams whose parts both break the solution most. */
    private static @Nullable MakeupSplit streams(Site site, Items items, Makeups makeups, List<Point> points) {
        MakeupSplit best = null;
        double most = -1;
        for (int s = 0; s < makeups.sorts().size(); s++) {
            Makeup makeup = makeups.sorts().get(s);
            for (int k = 0; k < site.kinds.length && !makeup.isKnown(makeups.streams()); k++) {
                for (int upTo = makeup.least()[k]; upTo < makeup.most()[k]; upTo++) {
                    MakeupSplit split = byStreams(s, makeup, k, upTo, makeups.streams());
                    double score = points.isEmpty() ? 0 : split.score(site, items, makeups, points.get(s), k);
                    if (score > most) {
                        most = score;
                        best = split;
                    }
                }
            }
        }
        return best;
    }

    /** Cables with no more than so many streams of a kind, and those with more, of so many in all. */
    static MakeupSplit byStreams(int sort, Makeup makeup, int kind, int upTo, int streams) {
        return new MakeupSplit(sort, makeup.upTo(kind, upTo), makeup.above(kind, upTo, streams));
    }

    /** Cables with a board that is alone there, and those without. */
    static MakeupSplit byLone(int sort, Makeup makeup) {
        return new MakeupSplit(sort, makeup.with(Makeup.Lone.EACH), makeup.with(Makeup.Lone.NONE));
    }

    private static @Nullable MakeupSplit lone(Site site, Makeups makeups, List<Point> points) {
        MakeupSplit best = null;
        double most = LONE;
        for (int s = 0; s < points.size(); s++) {
            Makeup makeup = makeups.sorts().get(s);
            double boards = points.get(s).lone(site);
            if (makeup.lone() == Makeup.Lone.SOME && boards > most) {
                most = boards;
                best = byLone(s, makeup);
            }
        }
        return best;
    }

    private double score(Site site, Items items, Makeups makeups, Point point, int kind) {
        Broken broken = new Broken(site, items, point, makeups.cables().get(sort), makeups.streams());
        boolean[] others = broken.all();
        others[kind] = false;
        double less = broken.by(broken.alone(kind), few);
        double more = broken.by(others, many);
        for (int k = 0; k < others.length; k++) {
            more = Math.max(more, others[k] ? broken.by(broken.alone(k), many) : 0);
        }
        return score(less, more);
    }

    /** How good it is to tell two parts apart, of which so much can be expected. */
    static double score(double few, double many) {
        return Math.min(few, many) + MORE * Math.max(few, many);
    }

    /**
     * By how much a solution breaks rows of ports and pixels.
     *
     * @param point what it has of some cables
     * @param streams of a cable
     */
    record Broken(Site site, Items items, Point point, int cables, int streams) {
        boolean[] all() {
            boolean[] kinds = new boolean[site.kinds.length];
            Arrays.fill(kinds, true);
            return kinds;
        }

        boolean[] alone(int kind) {
            boolean[] kinds = new boolean[site.kinds.length];
            kinds[kind] = true;
            return kinds;
        }

        /** Ports and streams too few for some kinds, were this what the cables may carry. */
        double by(boolean[] kinds, Makeup makeup) {
            int most = makeup.most(kinds, streams);
            double missing = -most * cables;
            double sum = 0;
            for (int p = 0; p < site.spots.length; p++) {
                double[] strands = new double[site.groups];
                for (int k = 0; k < items.size; k++) {
                    int string = items.sample[k];
                    if (site.sort[string] == Drives.PIXELS && kinds[site.kind[string]]) {
                        strands[site.group[string]] += point.led()[k][p];
                        missing += point.served()[k][p]
                                * site.pixelsAtLeast[string]
                                / Math.max(1, site.limitMost(site.kind[string]));
                    }
                }
                for (int group = 0; group < strands.length; group++) {
                    sum += Math.max(0, strands[group] - ports(p, group, most));
                }
            }
            return sum + Math.max(0, missing);
        }

        private double ports(int spot, int group, int most) {
            double sum = 0;
            for (int m = 0; m < site.offers.length; m++) {
                if (site.groupOf[m] == group && site.drives(m, Drives.PIXELS)) {
                    sum += point.board()[spot][m] * site.sockets.hearing(m, most);
                }
            }
            return sum;
        }
    }
}
