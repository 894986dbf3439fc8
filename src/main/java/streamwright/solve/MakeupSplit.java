package streamwright.solve;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import streamwright.yard.Drives;

/** How to tell make-ups apart: cables of a sort with no more than so many streams of a kind from those with more. */
record MakeupSplit(int sort, int kind, int upTo) {
    /** How much the part that changes more counts beside the one that changes less. */
    private static final double MORE = 0.1;

    /**
     * The split whose parts both break the solution most; null where all is told apart.
     *
     * @param points what the solution has of each sort; empty before there is one
     */
    static @Nullable MakeupSplit of(Site site, Items items, Makeups makeups, List<Point> points) {
        MakeupSplit best = null;
        double most = -1;
        for (int s = 0; s < makeups.sorts().size(); s++) {
            Makeup makeup = makeups.sorts().get(s);
            for (int k = 0; k < site.kinds.length && !makeup.isKnown(makeups.streams()); k++) {
                for (int upTo = makeup.least()[k]; upTo < makeup.most()[k]; upTo++) {
                    MakeupSplit split = new MakeupSplit(s, k, upTo);
                    double score = points.isEmpty() ? 0 : split.score(site, items, makeups, points.get(s));
                    if (score > most) {
                        most = score;
                        best = split;
                    }
                }
            }
        }
        return best;
    }

    private double score(Site site, Items items, Makeups makeups, Point point) {
        Makeup makeup = makeups.sorts().get(sort);
        Broken broken = new Broken(site, items, point, makeups.cables().get(sort), makeups.streams());
        boolean[] others = broken.all();
        others[kind] = false;
        double few = broken.by(broken.alone(kind), makeup.upTo(kind, upTo));
        Makeup above = makeup.above(kind, upTo, makeups.streams());
        double many = broken.by(others, above);
        for (int k = 0; k < others.length; k++) {
            many = Math.max(many, others[k] ? broken.by(broken.alone(k), above) : 0);
        }
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
