package streamwright.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * How much a chain can still win at most by growing on from its last item, in the pixels that a port takes. A dynamic
 * programme over the last item and a memory of those met nearby (ng-paths, Baldacci, Mingozzi and Roberti 2011): items
 * that were met farther off may come again, so the figure is never too low.
 */
final class Continuations {
    /** Items that each item remembers. */
    private static final int MEMORY = 8;

    /** A jumper between items. */
    record Next(int item, double cost, int nulls) {}

    private final Next[][] next;
    private final int[] steps;
    private final int most;
    private final int[][] near;

    /** {@code carry[i][n][memory]}: what remains of item i's memory on the way to its n-th next. */
    private final int[][][] carry;

    private final int[][] seen;
    private final double[][][] known;
    private double[] worth = new double[0];
    private double[] charge = new double[0];

    /**
     * @param steps pixels of each item in whole steps
     * @param count strings of each item; only items of one string are remembered
     * @param most steps that a port takes
     */
    Continuations(Next[][] next, int[] steps, int[] count, int most) {
        this.next = next;
        this.steps = steps;
        this.most = most;
        int n = next.length;
        near = new int[n][];
        for (int i = 0; i < n; i++) {
            near[i] = near(next, count, i);
        }
        carry = new int[n][][];
        seen = new int[n][];
        for (int i = 0; i < n; i++) {
            carry[i] = new int[next[i].length][1 << near[i].length];
            seen[i] = new int[next[i].length];
            for (int to = 0; to < next[i].length; to++) {
                int item = next[i][to].item;
                seen[i][to] = 1 << position(near[i], item) & ~(1 << MEMORY);
                for (int memory = 0; memory < carry[i][to].length; memory++) {
                    carry[i][to][memory] = carried(near[i], memory, item);
                }
            }
        }
        known = new double[n][][];
        for (int i = 0; i < n; i++) {
            known[i] = new double[1 << near[i].length][most + 1];
        }
    }

    private static int[] near(Next[][] next, int[] count, int item) {
        IntStream linked = IntStream.concat(
                IntStream.of(item),
                Arrays.stream(next[item])
                        .sorted(Comparator.comparingDouble(Next::cost))
                        .mapToInt(Next::item));
        return linked.filter(i -> count[i] == 1).distinct().limit(MEMORY).toArray();
    }

    /** Where an item stands in a memory; {@link #MEMORY} where it does not. */
    private static int position(int[] list, int item) {
        for (int i = 0; i < list.length; i++) {
            if (list[i] == item) {
                return i;
            }
        }
        return MEMORY;
    }

    private int carried(int[] from, int memory, int to) {
        int carried = 1 << position(near[to], to);
        for (int bit = 0; bit < from.length; bit++) {
            if ((memory & 1 << bit) != 0) {
                carried |= 1 << position(near[to], from[bit]);
            }
        }
        return carried & ~(1 << MEMORY);
    }

    /**
     * Begins anew.
     *
     * @param newWorth of each item
     * @param newCharge of a chain of so many steps, beside its wires; never falls
     */
    void price(double[] newWorth, double[] newCharge) {
        worth = newWorth;
        charge = newCharge;
        for (double[][] ofItem : known) {
            for (double[] ofMemory : ofItem) {
                Arrays.fill(ofMemory, Double.NaN);
            }
        }
    }

    /** The memory of a chain that begins with an item. */
    int begin(int item) {
        return carried(new int[0], 0, item);
    }

    /** The memory after going on from an item to its n-th next. */
    int after(int item, int n, int memory) {
        return carry[item][n][memory];
    }

    /** The most that a chain of so many steps can still win; at least 0. */
    double most(int item, int memory, int taken) {
        double[] ofMemory = known[item][memory];
        if (!Double.isNaN(ofMemory[taken])) {
            return ofMemory[taken];
        }
        double best = 0;
        for (int n = 0; n < next[item].length; n++) {
            best = Math.max(best, win(item, n, memory, taken));
        }
        ofMemory[taken] = best;
        return best;
    }

    /** What going on to the n-th next and from there wins; negative infinity where that is not possible. */
    private double win(int item, int n, int memory, int taken) {
        Next to = next[item][n];
        int longer = taken + steps[to.item];
        if (longer > most || (memory & seen[item][n]) != 0) {
            return Double.NEGATIVE_INFINITY;
        }
        double alone = worth[to.item] - to.cost - (charge[longer] - charge[taken]);
        return alone + most(to.item, carry[item][n][memory], longer);
    }

    /** The chain from a head that wins the most; its items may repeat. */
    List<Integer> best(int head) {
        List<Integer> chain = new ArrayList<>(List.of(head));
        int item = head;
        int memory = begin(head);
        int taken = steps[head];
        while (most(item, memory, taken) > 0) {
            int best = 0;
            for (int n = 1; n < next[item].length; n++) {
                if (win(item, n, memory, taken) > win(item, best, memory, taken)) {
                    best = n;
                }
            }
            memory = carry[item][best][memory];
            item = next[item][best].item;
            taken += steps[item];
            chain.add(item);
        }
        return chain;
    }
}
