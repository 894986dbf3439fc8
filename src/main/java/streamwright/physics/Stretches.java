package streamwright.physics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Cheapest cut of a port's pixels into stretches that hold, by dynamic programming over the starts of stretches from
 * the last pixel to the first. How far a stretch may go from its start is monotone, so the best next start is a minimum
 * over a window, kept as a stack of the records: O(n log n) for n pixels, O(n) where the reach moves evenly.
 */
final class Stretches {
    private final Power power;
    private final int[] pixels;
    private final double[] wires;
    private final int count;
    private final int all;

    /** Ohms of all wires between pixels 0..k, and the same with each wire weighed by the index of the pixel after it. */
    private final double[] ohms;

    private final double[] weighed;

    /** Cost from a start at pixel k to the end, its injections, and the start after it. */
    private final double[] best;

    private final int[] injections;
    private final int[] next;

    /** Starts worth going on to, the farthest and cheapest first. */
    private final int[] records;

    private int held;

    Stretches(Power power, int[] pixels, double[] jumpers, double[] wires, int count, int all) {
        this.power = power;
        this.pixels = pixels;
        this.wires = wires;
        this.count = count;
        this.all = all;
        ohms = new double[all];
        weighed = new double[all];
        best = new double[all + 1];
        injections = new int[all + 1];
        next = new int[all + 1];
        records = new int[all + 1];
        int k = 0;
        for (int s = 0; s < count; s++) {
            for (int p = 0; p < pixels[s]; p++, k++) {
                if (k > 0) {
                    double step = p > 0 ? power.pitchOhms : power.leadOhms(jumpers[s]);
                    ohms[k] = ohms[k - 1] + step;
                    weighed[k] = weighed[k - 1] + k * step;
                }
            }
        }
    }

    Optional<Feed> cheapest(double lead) {
        Arrays.fill(best, Double.POSITIVE_INFINITY);
        best[all] = 0;
        records[held++] = all;
        int start = all - 1;
        int reach = all - 1;
        for (int s = count - 1; s >= 0; s--) {
            for (int p = pixels[s]; p >= 1 && start > 0; p--, start--) {
                reach = reach(start, power.injectionOhms(wires[s], p), reach);
                settle(start, reach, power.injectionCost(wires[s], p), 1);
            }
        }
        settle(0, reach(0, power.leadOhms(lead), reach), 0, 0);
        return best[0] < Double.POSITIVE_INFINITY ? Optional.of(feed(lead)) : Optional.empty();
    }

    /** Last pixel up to which a stretch from this start holds, below the start if none; {@code guess} is near it. */
    private int reach(int start, double feedOhms, int guess) {
        int end = Math.max(start, guess);
        while (end >= start && !holds(start, end, feedOhms)) {
            end--;
        }
        while (end + 1 < all && holds(start, end + 1, feedOhms)) {
            end++;
        }
        return end;
    }

    private boolean holds(int start, int end, double feedOhms) {
        return power.holds(end - start + 1, load(start, end, feedOhms));
    }

    private double load(int start, int end, double feedOhms) {
        return (end - start + 1) * feedOhms + (end + 1) * (ohms[end] - ohms[start]) - (weighed[end] - weighed[start]);
    }

    private void settle(int start, int reach, double cost, int more) {
        int after = record(reach + 1);
        if (after <= start) {
            return;
        }
        best[start] = cost + best[after];
        injections[start] = more + injections[after];
        next[start] = after;
        while (held > 0 && !better(records[held - 1], start)) {
            held--;
        }
        records[held++] = start;
    }

    private boolean better(int a, int b) {
        return best[a] < best[b] || (best[a] == best[b] && injections[a] < injections[b]);
    }

    /** The best start at or before {@code last}; -1 if there is none. */
    private int record(int last) {
        int low = 0;
        int high = held;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (records[middle] <= last) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low < held ? records[low] : -1;
    }

    private Feed feed(double lead) {
        List<Feed.Place> places = new ArrayList<>();
        double load = load(0, next[0] - 1, power.leadOhms(lead));
        int s = 0;
        int before = 0;
        for (int start = next[0]; start < all; start = next[start]) {
            while (start - before >= pixels[s]) {
                before += pixels[s++];
            }
            int pixel = start - before + 1;
            places.add(new Feed.Place(s, pixel));
            load = Math.max(load, load(start, next[start] - 1, power.injectionOhms(wires[s], pixel)));
        }
        return new Feed(power.amps(next[0]), power.amps(all), power.volts(load), places, best[0]);
    }
}
