package streamwright.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import streamwright.yard.Spot;

/** Spots shared out by where they are: halves of equal weight across the longer side, until little weight is left. */
final class Halves {
    private final Spot[] spots;
    private final double[] weight;
    private final double most;
    private final List<int[]> shares = new ArrayList<>();

    private Halves(Spot[] spots, double[] weight, double most) {
        this.spots = spots;
        this.weight = weight;
        this.most = most;
    }

    /**
     * The shares, each at least one spot.
     *
     * @param most weight to a share, unless one spot has more
     */
    static List<int[]> of(Spot[] spots, double[] weight, double most) {
        Halves halves = new Halves(spots, weight, most);
        halves.split(IntStream.range(0, spots.length).toArray());
        return halves.shares;
    }

    private void split(int[] share) {
        double all = Arrays.stream(share).mapToDouble(p -> weight[p]).sum();
        if (all <= most || share.length == 1) {
            shares.add(share);
            return;
        }
        boolean wide = spread(share, p -> p.at().x()) >= spread(share, p -> p.at().y());
        ToDoubleFunction<Spot> along = wide ? p -> p.at().x() : p -> p.at().y();
        int[] sorted = Arrays.stream(share)
                .boxed()
                .sorted(Comparator.comparingDouble((Integer p) -> along.applyAsDouble(spots[p]))
                        .thenComparing(p -> p))
                .mapToInt(Integer::intValue)
                .toArray();
        double seen = 0;
        int cut = 0;
        while (cut < sorted.length - 1 && (cut == 0 || seen + weight[sorted[cut]] <= all / 2)) {
            seen += weight[sorted[cut++]];
        }
        split(Arrays.copyOfRange(sorted, 0, cut));
        split(Arrays.copyOfRange(sorted, cut, sorted.length));
    }

    private double spread(int[] share, ToDoubleFunction<Spot> along) {
        var range = Arrays.stream(share)
                .mapToDouble(p -> along.applyAsDouble(spots[p]))
                .summaryStatistics();
        return range.getMax() - range.getMin();
    }
}
