package streamwright.solve;

import java.util.ArrayList;
import java.util.List;

/** How many cables and boards a plan has, each at least and at most. */
record Counts(int leastCables, int mostCables, int leastBoards, int mostBoards) {
    /** A part of a number that is nothing but rounding. */
    private static final double WHOLE = 1e-6;

    /**
     * Told apart where a relaxation has a part of a cable or a board, which no plan has: so many less, so many more.
     *
     * @param cables of its solution
     * @param boards of its solution
     * @param fix whether to tell apart where it has whole numbers too: as many, fewer, more
     * @return all that plans may have; nothing where that is no less than this
     */
    List<Counts> apart(double cables, double boards, boolean fix) {
        List<Counts> parts = new ArrayList<>();
        for (int[] range : ranges(leastCables, mostCables, cables, fix)) {
            parts.add(new Counts(range[0], range[1], leastBoards, mostBoards));
        }
        if (parts.isEmpty()) {
            for (int[] range : ranges(leastBoards, mostBoards, boards, fix)) {
                parts.add(new Counts(leastCables, mostCables, range[0], range[1]));
            }
        }
        return parts;
    }

    /** As few cables as may be, and more. */
    List<Counts> byCables() {
        return List.of(
                new Counts(leastCables, leastCables, leastBoards, mostBoards),
                new Counts(leastCables + 1, mostCables, leastBoards, mostBoards));
    }

    private static List<int[]> ranges(int least, int most, double solved, boolean fix) {
        // a solution may be off its limits by rounding
        double value = Math.max(least, Math.min(most, solved));
        int below = (int) Math.floor(value + WHOLE);
        boolean broken = value - below > WHOLE;
        if (least == most || !(broken || fix)) {
            return List.of();
        }
        List<int[]> ranges = new ArrayList<>();
        if (broken) {
            ranges.add(new int[] {least, below});
        } else {
            ranges.add(new int[] {least, below - 1});
            ranges.add(new int[] {below, below});
        }
        ranges.add(new int[] {below + 1, most});
        ranges.removeIf(range -> range[0] > range[1]);
        return ranges;
    }
}
