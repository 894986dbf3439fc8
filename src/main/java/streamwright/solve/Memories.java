package streamwright.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import streamwright.solve.Continuations.Next;

/**
 * What a chain remembers of the items on it while it grows: at each item the numbers of strings met of that item and of
 * a few that are linked to it (ng-paths, Baldacci, Mingozzi and Roberti 2011). What was met farther off is forgotten, so
 * that an item may come again; no chain that has no more of an item than there is of it is ever forbidden.
 *
 * <p>A memory is a number, one digit for each item remembered, each digit up to the strings of its item.
 */
final class Memories {
    static final int FORBIDDEN = -1;

    private final int most;
    private final int[] count;
    private final boolean[] scarce;
    private final int[][] near;
    private final int[] size;
    private final int[][][] after;

    /**
     * @param count strings of each item
     * @param scarce of each item: whether a port could take more strings of it than there are; only then is it remembered
     * @param most memories of one item
     */
    Memories(Next[][] next, int[] count, boolean[] scarce, int most) {
        this.most = most;
        this.count = count;
        this.scarce = scarce;
        int n = next.length;
        near = new int[n][];
        size = new int[n];
        after = new int[n][][];
        for (int i = 0; i < n; i++) {
            near[i] = near(next, i);
            size[i] = 1;
            for (int item : near[i]) {
                size[i] *= count[item] + 1;
            }
        }
        for (int i = 0; i < n; i++) {
            after[i] = new int[next[i].length][size[i]];
            for (int to = 0; to < next[i].length; to++) {
                carry(near[i], next[i][to].item(), after[i][to]);
            }
        }
    }

    private int[] near(Next[][] next, int item) {
        Set<Integer> linked = new LinkedHashSet<>(List.of(item));
        Arrays.stream(next[item]).sorted(Comparator.comparingDouble(Next::cost)).forEach(to -> linked.add(to.item()));
        List<Integer> kept = new ArrayList<>();
        int memories = 1;
        for (int other : linked) {
            if (scarce[other] && (long) memories * (count[other] + 1) <= most) {
                kept.add(other);
                memories *= count[other] + 1;
            }
        }
        return kept.stream().mapToInt(Integer::intValue).toArray();
    }

    /** Of each memory at one item: that after going on to another. */
    private void carry(int[] from, int to, int[] carried) {
        int[] place = new int[from.length];
        int[] into = near[to];
        for (int f = 0; f < from.length; f++) {
            place[f] = value(into, from[f]);
        }
        int one = value(into, to);
        for (int memory = 0; memory < carried.length; memory++) {
            int rest = memory;
            int next = 0;
            boolean allowed = true;
            boolean met = false;
            for (int f = 0; f < from.length; f++) {
                int strings = rest % (count[from[f]] + 1);
                rest /= count[from[f]] + 1;
                if (from[f] == to) {
                    met = true;
                    allowed = strings < count[to];
                    strings++;
                }
                next += strings * place[f];
            }
            carried[memory] = allowed ? next + (met ? 0 : one) : FORBIDDEN;
        }
    }

    /** What one string of an item adds to a memory with these digits; 0 where it has none. */
    private int value(int[] digits, int item) {
        int value = 1;
        for (int other : digits) {
            if (other == item) {
                return value;
            }
            value *= count[other] + 1;
        }
        return 0;
    }

    /** Memories of an item: from 0 up to this. */
    int size(int item) {
        return size[item];
    }

    /** The memory of a chain that begins with an item. */
    int begin(int item) {
        return value(near[item], item);
    }

    /** The memory after going on from an item to its n-th next, or {@link #FORBIDDEN}. */
    int after(int item, int n, int memory) {
        return after[item][n][memory];
    }
}
