package streamwright.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import streamwright.yard.Drives;

/** Rows that the cables of one make-up obey, and what hangs on them. */
final class MakeupRows {
    private static final double ROUNDING = 1e-9;

    private final Site site;
    private final Items items;
    private final Makeup makeup;
    private final int streams;

    MakeupRows(Site site, Items items, Makeup makeup, int streams) {
        this.site = site;
        this.items = items;
        this.makeup = makeup;
        this.streams = streams;
    }

    /** Those that count ports. */
    List<Row> ports() {
        List<Row> rows = new ArrayList<>();
        for (int group = 0; group < site.groups; group++) {
            for (boolean[] kinds : sets(group)) {
                int most = makeup.most(kinds, streams);
                if (most < streams) {
                    for (int p = 0; p < site.spots.length; p++) {
                        rows.add(ports(p, group, kinds, most));
                    }
                }
            }
        }
        return rows;
    }

    /** Those that count pixels, on so many cables. */
    List<Row> pixels(int cables) {
        List<Row> rows = new ArrayList<>();
        for (boolean[] kinds : sets(-1)) {
            rows.add(pixels(kinds, cables * makeup.most(kinds, streams)));
        }
        return rows;
    }

    /** Those that count streams in windows of kept channels, on so many cables. */
    List<Row> windows(int cables, WindowRows windows) {
        return sets(-1).stream()
                .map(kinds -> windows.streams(kinds, cables * makeup.most(kinds, streams)))
                .toList();
    }

    /** Each kind alone, and all but one of them. */
    private List<boolean[]> sets(int group) {
        boolean[] all = new boolean[site.kinds.length];
        for (int i = 0; i < site.strings.length; i++) {
            boolean of = site.sort[i] == Drives.PIXELS && (group < 0 || site.group[i] == group);
            all[site.kind[i]] |= of;
        }
        List<boolean[]> sets = new ArrayList<>();
        sets.add(all);
        for (int k = 0; k < all.length; k++) {
            if (all[k]) {
                boolean[] alone = new boolean[all.length];
                alone[k] = true;
                boolean[] others = all.clone();
                others[k] = false;
                sets.add(alone);
                sets.add(others);
            }
        }
        return sets;
    }

    /** Strands of some kinds hang on ports that hear streams of those kinds. */
    private Row ports(int at, int group, boolean[] kinds, int most) {
        int[] room = IntStream.range(0, site.offers.length)
                .map(m -> site.groupOf[m] == group && site.drives(m, Drives.PIXELS) ? site.sockets.hearing(m, most) : 0)
                .toArray();
        return new Row() {
            @Override
            public double head(int item, int spot) {
                return spot == at && site.group[items.sample[item]] == group && isOf(kinds, item) ? -1 : 0;
            }

            @Override
            public boolean hasHeads() {
                return true;
            }

            @Override
            public double board(int spot, int model) {
                return spot == at ? room[model] : 0;
            }
        };
    }

    /** Their pixels are within so many streams, each counted as a share of what its kind allows at most. */
    private Row pixels(boolean[] kinds, int most) {
        double[] share = IntStream.range(0, items.size)
                .mapToDouble(k -> isOf(kinds, k)
                        ? site.pixelsAtLeast[items.sample[k]]
                                / (double) Math.max(1, site.limitMost(site.kind[items.sample[k]]))
                        : 0)
                .toArray();
        return new Row() {
            @Override
            public double low() {
                return -most - ROUNDING;
            }

            @Override
            public double item(int k, int spot) {
                return -share[k];
            }

            @Override
            public int onlyItem() {
                return ALL;
            }
        };
    }

    private boolean isOf(boolean[] kinds, int item) {
        int string = items.sample[item];
        return site.sort[string] == Drives.PIXELS && kinds[site.kind[string]];
    }

    /** Whether these cables may go on from a controller or a spot. */
    boolean goes(int from) {
        return makeup.lone() != Makeup.Lone.EACH || from < site.controllers.length;
    }

    /** Whether a string may hang on these cables. */
    boolean carries(int string) {
        int most = makeup.most()[site.kind[string]];
        return switch (site.sort[string]) {
            case PIXELS -> most > 0;
            case PANEL ->
                IntStream.range(0, site.offers.length)
                        .anyMatch(m -> site.drives(m, Drives.PANEL) && site.sockets.cut[m].length <= most);
            case OUTPUTS -> true;
        };
    }
}
