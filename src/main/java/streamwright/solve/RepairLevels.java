package streamwright.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import streamwright.yard.Work;

/**
 * All repairs, cut into parts by the work on boards and cables. Each part is proved by itself: where little such work is
 * allowed strings have to move, and where more is spent that is work already. A relaxation of all of them at once would
 * take a tenth of a new cable for a tenth of its work.
 */
final class RepairLevels {
    /** @param least minutes of work on boards and cables, at least; {@code most} likewise, at most */
    record Level(double least, double most) {}

    private RepairLevels() {}

    /**
     * Levels without gaps, upwards: nothing but strings and boards that move or go; a board more; two hops; and more.
     *
     * @param gone minutes that boards take which cannot stay
     * @param unit of which all work is a multiple, in minutes
     * @param below only repairs are asked for whose work on boards and cables is less than this
     */
    static List<Level> of(Work work, double gone, double unit, double below) {
        double more = work.board() + work.hop();
        TreeSet<Double> starts = new TreeSet<>(Set.of(gone));
        for (double start : new double[] {more, 2 * work.hop(), more + work.hop(), more + 2 * work.hop()}) {
            if (gone + start < below - unit / 2) {
                starts.add(gone + start);
            }
        }
        List<Level> levels = new ArrayList<>();
        for (double start : starts) {
            Double next = starts.higher(start);
            levels.add(new Level(start, next == null ? below : next - unit));
        }
        return levels;
    }
}
