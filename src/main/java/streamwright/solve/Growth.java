package streamwright.solve;

import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;
import streamwright.solve.Continuations.Next;
import streamwright.yard.Drives;

/** How chains of items grow: the jumpers, what a port takes, and the whole steps in which a dynamic programme counts. */
final class Growth {
    /** Steps to a whole port, about: more are nearer the truth and slower, with many items too slow. */
    private static final int FINENESS = 64;

    private static final int FINENESS_OF_MANY = 24;

    /** Memories of one item at most, likewise. */
    private static final int MEMORIES = 8;

    private static final int MEMORIES_OF_MANY = 4;

    private static final int MANY = 250;

    /** Longest table of the dynamic programme. */
    private static final int STEPS_MOST = 5000;

    /** Of each item: the jumpers to others, cheapest first. */
    final Next[][] next;

    /** Of each item: pixels of one of its strings, and the whole steps in them. */
    final int[] pixels;

    final int[] whole;

    /** Of each kind: pixels that a port takes at most. */
    final int[] most;

    /** Pixels to a step, at most those of any string. */
    final int step;

    /** Steps that a port takes, and so many of them as are looked at. */
    final int steps;

    final int table;

    final Memories memories;

    Growth(Site site, Items items) {
        int port = Arrays.stream(site.offers)
                .filter(offer -> offer.model().drives() == Drives.PIXELS)
                .mapToInt(offer -> offer.model().portMost())
                .max()
                .orElse(0);
        most = new int[site.kinds.length];
        for (int k = 0; k < most.length; k++) {
            most[k] = Math.min(port, site.limitMost(k));
        }
        next = new Next[items.size][];
        for (int k = 0; k < items.size; k++) {
            next[k] = jumpers(site, items, k);
        }
        pixels = Arrays.stream(items.sample).map(string -> site.pixels[string]).toArray();
        int least = Arrays.stream(pixels).filter(p -> p > 0).min().orElse(1);
        int longest = Arrays.stream(most).max().orElse(0);
        step = Math.max(1, Math.min(least, longest / (isMany(items) ? FINENESS_OF_MANY : FINENESS)));
        steps = longest / step;
        whole = Arrays.stream(pixels).map(p -> p / step).toArray();
        table = Math.min(steps, STEPS_MOST);
        boolean[] scarce = new boolean[items.size];
        for (int k = 0; k < items.size; k++) {
            scarce[k] = items.count[k] * (long) whole[k] < table;
        }
        memories = new Memories(next, items.count, scarce, isMany(items) ? MEMORIES_OF_MANY : MEMORIES);
    }

    private static Next[] jumpers(Site site, Items items, int item) {
        Map<Integer, Next> cheapest = new HashMap<>();
        for (Site.Wire wire : site.after[items.sample[item]]) {
            cheapest.putIfAbsent(items.of[wire.to()], new Next(items.of[wire.to()], wire.cost(), wire.nulls()));
        }
        return cheapest.values().stream()
                .sorted(Comparator.comparingDouble(Next::cost).thenComparingInt(Next::item))
                .toArray(Next[]::new);
    }

    /** Whether there are so many items that each look at them must be short. */
    static boolean isMany(Items items) {
        return items.size > MANY;
    }

    /** Whether all of a port is looked at. */
    boolean isSeen() {
        return steps <= STEPS_MOST;
    }
}
