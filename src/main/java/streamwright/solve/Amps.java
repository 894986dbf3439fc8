package streamwright.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import streamwright.yard.Drives;

/** The rows of amps: what hangs at a spot draws no more than its boards, and the spot's own supply, can give. */
final class Amps {
    /** Sums of many products: a plan just at its limit must not fall over it by the last bits. */
    static final double ROUNDING = 1e-6;

    private Amps() {}

    /** Only those that may bind. */
    static List<Row> of(Site site, Items items) {
        List<Row> rows = new ArrayList<>();
        double[] most = most(site);
        boolean[] limited = new boolean[site.groups];
        double[][] ofGroup = new double[site.groups][];
        for (int g = 0; g < limited.length; g++) {
            int group = g;
            ofGroup[g] = draw(site, items, i -> site.group[i] == group);
        }
        double[] all = draw(site, items, i -> true);
        for (int m = 0; m < most.length; m++) {
            limited[site.groupOf[m]] |= isLimited(site, m, most[m]);
        }
        for (int p = 0; p < site.spots.length; p++) {
            for (int g = 0; g < limited.length; g++) {
                int group = g;
                if (limited[g]) {
                    rows.add(row(p, ofGroup[g], m -> site.groupOf[m] == group ? most[m] : 0, 0));
                }
            }
            if (site.spots[p].ampsMost() < Double.POSITIVE_INFINITY) {
                rows.add(row(p, all, m -> 0, site.spots[p].ampsMost()));
            }
        }
        return rows;
    }

    /** Of each model: the amps that one board can give to what it can carry. */
    static double[] most(Site site) {
        return IntStream.range(0, site.offers.length)
                .mapToDouble(m -> Math.min(site.model(m).ampsMost(), carried(site, m)))
                .toArray();
    }

    /** Whether a board of pixels gives fewer amps than what it can carry could draw. */
    static boolean isLimited(Site site, int model, double most) {
        return site.drives(model, Drives.PIXELS) && most < carried(site, model);
    }

    /** Amps of all that one board could carry, whatever its own limit: full ports, or all strings. */
    private static double carried(Site site, int model) {
        double all = 0;
        double pixel = 0;
        for (int i = 0; i < site.strings.length; i++) {
            if (site.suits(model, i) && site.sort[i] == Drives.PIXELS) {
                all += site.draw[i];
                pixel = Math.max(pixel, site.draw[i] / site.pixels[i]);
            }
        }
        return Math.min(all, (double) site.ports(model) * site.model(model).portMost() * pixel);
    }

    /** Of each item: amps of one of its strings, if they are drawn from there. */
    private static double[] draw(Site site, Items items, IntPredicate drawing) {
        return Arrays.stream(items.sample)
                .mapToDouble(i -> site.sort[i] == Drives.PIXELS && drawing.test(i) ? site.draw[i] : 0)
                .toArray();
    }

    /** What hangs at a spot draws no more than its boards, or the spot itself, can give. */
    private static Row row(int at, double[] draw, IntToDoubleFunction ofBoard, double ofSpot) {
        return new Row() {
            @Override
            public double low() {
                return -ROUNDING;
            }

            @Override
            public double item(int item, int spot) {
                return spot == at ? -draw[item] : 0;
            }

            @Override
            public int onlyItem() {
                return ALL;
            }

            @Override
            public double board(int spot, int model) {
                return spot == at ? ofBoard.applyAsDouble(model) : 0;
            }

            @Override
            public double used(int spot) {
                return spot == at ? ofSpot : 0;
            }
        };
    }
}
