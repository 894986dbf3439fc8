package streamwright.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

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

    /** Of each item: the jumpers, those first that win most by the item alone, so that most others raise nothing. */
    private final int[][] order;

    private Arrivals come;
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
        come = new Arrivals(next, steps, most);
        order = Arrays.stream(next)
                .map(jumpers -> IntStream.range(0, jumpers.length).toArray())
                .toArray(int[][]::new);
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
     * @param newCome where chains come: how they go on from elsewhere is not known then
     */
    void price(double[] newWorth, double[] newInjection, Arrivals newCome) {
        come = newCome;
        worth = newWorth;
        injection = newInjection;
        for (int item = 0; item < next.length; item++) {
            sort(item);
        }
        for (int taken = most; taken > 0; taken--) {
            for (int item = 0; item < known.length; item++) {
                for (int memory = 0; memory < known[item].length && come.at(item, taken); memory++) {
                    fill(item, memory, taken);
                }
            }
        }
    }

    /** By insertion: the order was nearly the same before. */
    private void sort(int item) {
        int[] sorted = order[item];
        for (int i = 1; i < sorted.length; i++) {
            int jumper = sorted[i];
            double win = alone(item, jumper);
            int at = i;
            while (at > 0 && alone(item, sorted[at - 1]) < win) {
                sorted[at] = sorted[at - 1];
                at--;
            }
            sorted[at] = jumper;
        }
    }

    /** What a jumper and the item behind it win. */
    private double alone(int item, int jumper) {
        Next to = next[item][jumper];
        return worth[to.item] - to.cost;
    }

    /** All steps behind an injection at once: what comes later is known. */
    private void fill(int item, int memory, int taken) {
        double[] into = known[item][memory];
        int row = taken * width;
        Arrays.fill(into, row, row + width, 0);
        for (int n : order[item]) {
            int after = memories.after(item, n, memory);
            int to = next[item][n].item;
            int longer = taken + steps[to];
            if (longer <= most && after != Memories.FORBIDDEN && come.at(to, longer)) {
                power.best(to, alone(item, n), injection[to], known[to][after], longer * width, into, row);
            }
        }
    }

    /** The most that a chain can still win; at least 0, and 0 where none comes. */
    double most(int item, int memory, int taken, int since) {
        return come.at(item, taken) ? known[item][memory][taken * width + since] : 0;
    }

    /** The same, whatever it remembers and however near its power is. */
    double most(int item, int taken) {
        double best = 0;
        for (int memory = 0; memory < known[item].length; memory++) {
            best = Math.max(best, most(item, memory, taken, 0));
        }
        return best;
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
            if (longer > most || after == Memories.FORBIDDEN || !come.at(to, longer)) {
                continue;
            }
            double alone = alone(from.item, n);
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
