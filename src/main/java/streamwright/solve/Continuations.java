package streamwright.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * How much a chain can still win at most by growing on from its last item, in the pixels that a port takes: a dynamic
 * programme over the last item and what the chain remembers ({@link Memories}). Since items that were met farther off
 * may come again, the figure is never too low.
 */
final class Continuations {
    /** A jumper between items. */
    record Next(int item, double cost, int nulls) {}

    private final Next[][] next;
    private final Memories memories;
    private final int[] steps;
    private final int most;
    private final double[][][] known;
    private double[] worth = new double[0];
    private double[] charge = new double[0];

    /**
     * @param steps pixels of each item in whole steps
     * @param most steps that a port takes
     */
    Continuations(Next[][] next, Memories memories, int[] steps, int most) {
        this.next = next;
        this.memories = memories;
        this.steps = steps;
        this.most = most;
        known = new double[next.length][][];
        for (int i = 0; i < known.length; i++) {
            known[i] = new double[memories.size(i)][most + 1];
        }
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
        int after = memories.after(item, n, memory);
        if (longer > most || after == Memories.FORBIDDEN) {
            return Double.NEGATIVE_INFINITY;
        }
        double alone = worth[to.item] - to.cost - (charge[longer] - charge[taken]);
        return alone + most(to.item, after, longer);
    }

    /** The chain from a head that wins the most; its items may repeat. */
    List<Integer> best(int head) {
        List<Integer> chain = new ArrayList<>(List.of(head));
        int item = head;
        int memory = memories.begin(head);
        int taken = steps[head];
        while (most(item, memory, taken) > 0) {
            int best = 0;
            for (int n = 1; n < next[item].length; n++) {
                if (win(item, n, memory, taken) > win(item, best, memory, taken)) {
                    best = n;
                }
            }
            memory = memories.after(item, best, memory);
            item = next[item][best].item;
            taken += steps[item];
            chain.add(item);
        }
        return chain;
    }
}
