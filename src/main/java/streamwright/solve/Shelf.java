package streamwright.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Things on a line that must not overlap, of which as many as possible stay where they were. Tries to let all stay, then
 * all but one, all but two ...; with each set the rest goes into the gaps by a search that backtracks.
 */
final class Shelf {
    /** Where a thing was is none of the line's places. */
    static final long NOWHERE = Long.MIN_VALUE;

    private static final int SETS_MOST = 400;
    private static final int STEPS_MOST = 3_000;

    /**
     * @param length at least 1
     * @param was where it began, or {@link #NOWHERE}
     * @param counts whether moving it is work
     * @param fixed whether it must not move
     */
    record Thing(long length, long was, boolean counts, boolean fixed) {}

    /**
     * @param at where each thing begins
     * @param moved how many of those that count are elsewhere than they were
     * @param exact whether fewer is proved impossible
     */
    record Placed(long[] at, int moved, boolean exact) {}

    private final List<Thing> things;
    private final long from;
    private final long to;
    private int sets;
    private boolean complete = true;

    private Shelf(List<Thing> things, long from, long to) {
        this.things = things;
        this.from = from;
        this.to = to;
    }

    /** Places things on positions {@code from} to {@code to}, both inclusive; null where no way was found. */
    static @Nullable Placed place(List<Thing> things, long from, long to) {
        return new Shelf(things, from, to).place();
    }

    private @Nullable Placed place() {
        List<Integer> counting = new ArrayList<>();
        List<Integer> wishing = new ArrayList<>();
        List<Integer> fixed = new ArrayList<>();
        int lost = 0;
        for (int i = 0; i < things.size(); i++) {
            Thing thing = things.get(i);
            boolean possible = thing.was >= from && thing.was <= to - thing.length + 1;
            if (thing.fixed) {
                if (!possible) {
                    return null;
                }
                fixed.add(i);
            } else if (thing.counts) {
                lost += possible ? 0 : 1;
                if (possible) {
                    counting.add(i);
                }
            } else if (possible) {
                wishing.add(i);
            }
        }
        for (int dropped = 0; dropped <= counting.size(); dropped++) {
            long[] at = dropping(counting, dropped, 0, new boolean[things.size()], fixed, wishing);
            if (at != null) {
                return new Placed(at, lost + dropped, complete);
            }
        }
        return null;
    }

    /** Every choice of so many of the counting things to move. */
    private long @Nullable [] dropping(
            List<Integer> counting, int left, int next, boolean[] drop, List<Integer> fixed, List<Integer> wishing) {
        if (left == 0) {
            if (sets++ > SETS_MOST && next < counting.size()) {
                complete = false;
                return null;
            }
            List<Integer> stay = new ArrayList<>(fixed);
            counting.stream().filter(i -> !drop[i]).forEach(stay::add);
            return fit(stay, wishing);
        }
        for (int i = next; i <= counting.size() - left; i++) {
            drop[counting.get(i)] = true;
            long[] at = dropping(counting, left - 1, i + 1, drop, fixed, wishing);
            if (at != null) {
                return at;
            }
            drop[counting.get(i)] = false;
        }
        return null;
    }

    private long @Nullable [] fit(List<Integer> stay, List<Integer> wishing) {
        long[] at = new long[things.size()];
        Arrays.fill(at, NOWHERE);
        for (int i : stay) {
            if (!free(at, things.get(i).was, things.get(i).length)) {
                return null;
            }
            at[i] = things.get(i).was;
        }
        long[] wished = at.clone();
        for (int i : wishing) {
            if (free(wished, things.get(i).was, things.get(i).length)) {
                wished[i] = things.get(i).was;
            }
        }
        long[] found = gaps(wished);
        return found != null ? found : gaps(at);
    }

    private boolean free(long[] at, long begin, long length) {
        for (int i = 0; i < at.length; i++) {
            if (at[i] != NOWHERE && begin < at[i] + things.get(i).length && at[i] < begin + length) {
                return false;
            }
        }
        return true;
    }

    private int steps;

    /** The longest first, each into every gap in turn; equal gaps once. */
    private long @Nullable [] gaps(long[] placed) {
        List<Integer> open = new ArrayList<>();
        List<Integer> set = new ArrayList<>();
        for (int i = 0; i < placed.length; i++) {
            (placed[i] == NOWHERE ? open : set).add(i);
        }
        open.sort(Comparator.comparingLong(i -> -things.get(i).length));
        set.sort(Comparator.comparingLong(i -> placed[i]));
        List<long[]> gaps = new ArrayList<>();
        long begin = from;
        for (int i : set) {
            if (placed[i] > begin) {
                gaps.add(new long[] {begin, placed[i] - begin});
            }
            begin = placed[i] + things.get(i).length;
        }
        if (to >= begin) {
            gaps.add(new long[] {begin, to - begin + 1});
        }
        long[] at = placed.clone();
        steps = 0;
        return into(gaps, open, 0, at) ? at : null;
    }

    private boolean into(List<long[]> gaps, List<Integer> open, int next, long[] at) {
        if (next == open.size()) {
            return true;
        }
        if (steps++ > STEPS_MOST) {
            complete = false;
            return false;
        }
        int thing = open.get(next);
        long length = things.get(thing).length;
        for (int g = 0; g < gaps.size(); g++) {
            long[] gap = gaps.get(g);
            if (gap[1] < length || seenBefore(gaps, g)) {
                continue;
            }
            at[thing] = gap[0];
            gap[0] += length;
            gap[1] -= length;
            if (into(gaps, open, next + 1, at)) {
                return true;
            }
            gap[0] -= length;
            gap[1] += length;
            at[thing] = NOWHERE;
        }
        return false;
    }

    private static boolean seenBefore(List<long[]> gaps, int g) {
        for (int before = 0; before < g; before++) {
            if (gaps.get(before)[1] == gaps.get(g)[1]) {
                return true;
            }
        }
        return false;
    }
}
