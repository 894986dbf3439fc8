package streamwright.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/**
 * A number by which plans of the same make-ups are told apart: how many boards of a model, boards at a spot or strings of
 * an item are on the cables of a sort. Some have no more than so many, the others more.
 *
 * @param model whose boards are counted; -1 for none
 * @param spot at which boards are counted; -1 for none
 * @param item whose strings are counted; -1 for none
 */
record Tally(int sort, int model, int spot, int item, int upTo) {
    private static final int NONE = -1;

    /** What is this near to a whole number is as good as whole. */
    private static final double WHOLE = 0.02;

    /** Numbers of each kind that are looked at. */
    private static final int LOOKED_AT = 4;

    private record Broken(Tally tally, double by) {}

    /**
     * The numbers that are far from whole in a solution.
     *
     * @param points what it has of each sort of cables
     */
    static List<Tally> undecided(Site site, List<Point> points) {
        List<Broken> models = new ArrayList<>();
        List<Broken> spots = new ArrayList<>();
        List<Broken> items = new ArrayList<>();
        for (int s = 0; s < points.size(); s++) {
            double[][] board = points.get(s).board();
            double[][] served = points.get(s).served();
            for (int m = 0; m < site.offers.length; m++) {
                int model = m;
                double boards =
                        Arrays.stream(board).mapToDouble(here -> here[model]).sum();
                // the dearer a board, the more a part of one hides
                models.add(broken(s, m, NONE, NONE, boards, site.offers[m].price()));
            }
            for (int p = 0; p < board.length; p++) {
                spots.add(broken(s, NONE, p, NONE, DoubleStream.of(board[p]).sum(), 1));
            }
            for (int k = 0; k < served.length; k++) {
                items.add(broken(s, NONE, NONE, k, DoubleStream.of(served[k]).sum(), 1));
            }
        }
        return Stream.of(models, spots, items).flatMap(Tally::most).toList();
    }

    private static Broken broken(int sort, int model, int spot, int item, double number, double weight) {
        int whole = (int) Math.floor(number + WHOLE);
        double by = Math.min(number - whole, whole + 1 - number);
        return new Broken(new Tally(sort, model, spot, item, whole), by > WHOLE ? by * weight : 0);
    }

    private static Stream<Tally> most(List<Broken> all) {
        return all.stream()
                .filter(broken -> broken.by > 0)
                .sorted(Comparator.comparingDouble(broken -> -broken.by))
                .limit(LOOKED_AT)
                .map(Broken::tally);
    }

    /** No more than so many. */
    MakeupMaster.Of few() {
        return row(0, upTo);
    }

    /** More. */
    MakeupMaster.Of many() {
        return row(upTo + 1, Double.POSITIVE_INFINITY);
    }

    private MakeupMaster.Of row(double low, double high) {
        return new MakeupMaster.Of(sort, new Row() {
            @Override
            public double low() {
                return low;
            }

            @Override
            public double high() {
                return high;
            }

            @Override
            public double item(int k, int p) {
                return k == item ? 1 : 0;
            }

            @Override
            public int onlyItem() {
                return item;
            }

            @Override
            public double board(int p, int m) {
                return m == model || p == spot ? 1 : 0;
            }
        });
    }
}
