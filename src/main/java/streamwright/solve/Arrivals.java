package streamwright.solve;

import java.util.Arrays;
import streamwright.solve.Continuations.Next;

/**
 * Where chains come that may still end below a bar, told by their last item and the steps taken: a dynamic programme from
 * the heads on that forgets injections and how often an item was met, so that no chain costs less than it says. Where
 * even the most that any chain wins from there on leaves it above the bar, no chain goes on.
 */
final class Arrivals {
    private static final double NEVER = Double.POSITIVE_INFINITY;

    private final Next[][] next;
    private final int[] steps;
    private final int most;

    /** Of each item and number of steps: the least value of a chain that comes there. */
    private final double[][] least;

    /**
     * @param steps of each item
     * @param most steps that a port takes
     */
    Arrivals(Next[][] next, int[] steps, int most) {
        this.next = next;
        this.steps = steps;
        this.most = most;
        least = new double[next.length][most + 1];
        clear();
    }

    /** No chain comes anywhere. */
    void clear() {
        for (double[] row : least) {
            Arrays.fill(row, NEVER);
        }
    }

    /** Chains begin with a head. */
    void begin(int head, double value) {
        if (steps[head] <= most) {
            least[head][steps[head]] = Math.min(least[head][steps[head]], value);
        }
    }

    /**
     * Lets them grow.
     *
     * @param worth of each item
     * @param win of each item and number of steps: more than any chain wins from there on
     */
    void grow(double[] worth, double[][] win, double bar) {
        for (int taken = 1; taken <= most; taken++) {
            for (int item = 0; item < next.length; item++) {
                double value = least[item][taken];
                if (value == NEVER) {
                    continue;
                }
                if (value - win[item][taken] >= bar) {
                    least[item][taken] = NEVER;
                    continue;
                }
                for (Next to : next[item]) {
                    int longer = taken + steps[to.item()];
                    if (longer <= most) {
                        double[] there = least[to.item()];
                        there[longer] = Math.min(there[longer], value + to.cost() - worth[to.item()]);
                    }
                }
            }
        }
    }

    /** Whether a chain that may end below the bar comes there. */
    boolean at(int item, int taken) {
        return least[item][taken] < NEVER;
    }
}
