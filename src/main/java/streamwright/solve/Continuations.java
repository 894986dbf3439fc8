package streamwright.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * How much a chain can still win at most by growing on from its last item, in the pixels that a port takes: a dynamic
 * programme over the last item, what the chain remembers ({@link Memories}), the steps taken and those behind the last
 * injection ({@link PowerSteps}). Since items that were met farther off may come again, the figure is never too low.
 */
final class Continuations {
    /** A jumper between items. */
    record Next(int item, double cost, int nulls) {}

    /** A chain in hand, told by its last item, what it remembers, and its steps: all, and behind the last injection. */
    private record At(int item, int memory, int taken, int since) {}

    private final Next[][] next;
    private final Memories memories;
    private final int[] steps;
    private final int most;
    private final PowerSteps power;
    private final int width;
    private final double[][][] known;
    private double[] worth = new double[0];
    private double[] injection = new double[0];

    /**
     * @param steps pixels of each item in whole steps
     * @param most steps that a port takes
     */
    Continuations(Next[][] next, Memories memories, int[] steps, int most, PowerSteps power) {
        this.next = next;
        this.memories = memories;
        this.steps = steps;
        this.most = most;
        this.power = power;
        width = power.longest + 1;
        known = new double[next.length][][];
        for (int i = 0; i < known.length; i++) {
            known[i] = new double[memories.size(i)][(most + 1) * width];
        }
    }

    /**
     * Begins anew.
     *
     * @param newWorth of each item
     * @param newInjection of each item: what an injection on it costs at least
     * @param least of each item: steps that a chain has taken at least when it has come there; only such chains are known
     */
    void price(double[] newWorth, double[] newInjection, int[] least) {
        worth = newWorth;
        injection = newInjection;
        for (int taken = most; taken > 0; taken--) {
            for (int item = 0; item < known.length; item++) {
                for (int memory = 0; memory < known[item].length && taken >= least[item]; memory++) {
                    fill(item, memory, taken);
                }
            }
        }
    }

    /** All steps behind an injection at once: what comes later is known. */
    private void fill(int item, int memory, int taken) {
        double[] into = known[item][memory];
        int row = taken * width;
        Arrays.fill(into, row, row + width, 0);
        for (int n = 0; n < next[item].length; n++) {
            int after = memories.after(item, n, memory);
            int to = next[item][n].item;
            int longer = taken + steps[to];
            if (longer <= most && after != Memories.FORBIDDEN) {
                power.best(
                        to, worth[to] - next[item][n].cost, injection[to], known[to][after], longer * width, into, row);
            }
        }
    }

    /** The most that a chain can still win; at least 0. */
    double most(int item, int memory, int taken, int since) {
        return known[item][memory][taken * width + since];
    }

    /** The chain on from a head that wins the most, the head first; its items may repeat. */
    List<Integer> best(int head, int since) {
        List<Integer> chain = new ArrayList<>(List.of(head));
        At at = new At(head, memories.begin(head), steps[head], since);
        while (most(at.item, at.memory, at.taken, at.since) > 0) {
            at = step(at);
            chain.add(at.item);
        }
        return chain;
    }

    /** One item on, the best way. */
    private At step(At from) {
        At best = from;
        double bestWin = Double.NEGATIVE_INFINITY;
        for (int n = 0; n < next[from.item].length; n++) {
            int after = memories.after(from.item, n, from.memory);
            int to = next[from.item][n].item;
            int longer = from.taken + steps[to];
            if (longer > most || after == Memories.FORBIDDEN) {
                continue;
            }
            double alone = worth[to] - next[from.item][n].cost;
            int injectionsMost = power.most(to, from.since);
            for (int injections = power.least(to, from.since); injections <= injectionsMost; injections++) {
                int behind = power.after(to, from.since, injections);
                double win = alone - injections * injection[to] + most(to, after, longer, behind);
                if (win > bestWin) {
                    bestWin = win;
                    best = new At(to, after, longer, behind);
                }
            }
        }
        return best;
    }
}
