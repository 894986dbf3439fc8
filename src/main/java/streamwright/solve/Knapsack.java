package streamwright.solve;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The most valuable things for one room: so many pieces of each thing at most, so many pieces in all. Lists of
 * undominated loads (Nemhauser and Ullmann 1969), less those that could not come above a known value even if what
 * follows could be cut to fill the rest. Whole numbers throughout, so what it says of the most is exact.
 */
final class Knapsack {
    /** Lists of any length. */
    static final int EXACT = Integer.MAX_VALUE;

    private static final int KEPT = 8;

    private final int[] size;
    private final long[] value;
    private final int room;

    /** Things by falling value for their size, in chunks of 1, 2, 4, ... pieces. */
    private final int[] thing;

    private final int[] pieces;

    /** Nodes of the tree of choices: each says which chunk was added to which earlier load. */
    private int[] chunkOf = new int[1024];

    private int[] parentOf = new int[1024];
    private int nodes = 1;

    /** Loads of so many pieces, by rising size and value; all in the first list where pieces never run out. */
    private final Loads[] lists;

    private final int width;
    private long best;

    /** Loads that were the best so far when they were found, the last ones. */
    private final Deque<Integer> bests = new ArrayDeque<>();

    private static final class Loads {
        int[] size;
        long[] value;
        int[] node;
        int count;

        Loads(int most) {
            size = new int[most];
            value = new long[most];
            node = new int[most];
        }
    }

    private Knapsack(int[] size, int[] count, long[] value, int room, int most, long above, int width) {
        this.size = size;
        this.width = width;
        this.value = value;
        this.room = room;
        best = above;
        int[] order = IntStream.range(0, size.length)
                .filter(i -> value[i] > 0 && count[i] > 0 && size[i] <= room)
                .boxed()
                .sorted(byWorth(size, value))
                .mapToInt(Integer::intValue)
                .toArray();
        int smallest = Arrays.stream(order).map(i -> size[i]).min().orElse(1);
        boolean free = (long) smallest * most >= room;
        IntStream.Builder things = IntStream.builder();
        IntStream.Builder chunks = IntStream.builder();
        for (int i : order) {
            int left = Math.min(count[i], Math.min(most, room / size[i]));
            for (int chunk = 1; left > 0; chunk = Math.min(2 * chunk, left)) {
                things.add(i);
                chunks.add(chunk);
                left -= chunk;
            }
        }
        thing = things.build().toArray();
        pieces = chunks.build().toArray();
        lists = new Loads[free ? 1 : most + 1];
        for (int c = 0; c < lists.length; c++) {
            lists[c] = new Loads(c == 0 ? 1 : 0);
        }
        lists[0].count = 1;
    }

    /** By falling value for the size, without rounding: what is promised relies on it. */
    private static Comparator<Integer> byWorth(int[] size, long[] value) {
        return (i, j) -> Long.compare(value[j] * size[i], value[i] * size[j]);
    }

    /**
     * Pieces of each thing worth the most together.
     *
     * @param size of a piece of each thing, at least 1
     * @param count pieces there are of each
     * @param value of a piece of each, below 2^31
     * @param most pieces in all
     * @param above only what is worth more counts
     * @param width loads that each list keeps; the answer is exact where that is {@link #EXACT}
     * @return the best last, before it some that are good; empty where nothing was found worth more
     */
    static List<int[]> best(int[] size, int[] count, long[] value, int room, int most, long above, int width) {
        return new Knapsack(size, count, value, room, most, above, width).run();
    }

    private List<int[]> run() {
        for (int chunk = 0; chunk < thing.length; chunk++) {
            if (lists.length == 1) {
                lists[0] = merged(lists[0], lists[0], chunk);
                continue;
            }
            for (int c = lists.length - 1; c >= pieces[chunk]; c--) {
                lists[c] = merged(lists[c], lists[c - pieces[chunk]], chunk);
            }
        }
        List<int[]> all = new ArrayList<>();
        for (int found : bests) {
            int[] taken = new int[size.length];
            for (int node = found; node > 0; node = parentOf[node]) {
                taken[thing[chunkOf[node]]] += pieces[chunkOf[node]];
            }
            all.add(taken);
        }
        return all;
    }

    /** The undominated of loads without a chunk and of loads with it. */
    private Loads merged(Loads without, Loads with, int chunk) {
        int more = size[thing[chunk]] * pieces[chunk];
        long worth = value[thing[chunk]] * pieces[chunk];
        Loads all = new Loads(without.count + with.count);
        int a = 0;
        int b = 0;
        while (a < without.count || b < with.count) {
            boolean first = b == with.count
                    || (a < without.count
                            && (without.size[a] < with.size[b] + more
                                    || (without.size[a] == with.size[b] + more
                                            && without.value[a] >= with.value[b] + worth)));
            if (first) {
                add(all, without.size[a], without.value[a], without.node[a], chunk, -1);
                a++;
            } else {
                if (with.size[b] + more > room) {
                    b = with.count;
                    continue;
                }
                add(all, with.size[b] + more, with.value[b] + worth, with.node[b], chunk, chunk);
                b++;
            }
        }
        if (all.count > width) {
            thin(all, chunk + 1);
        }
        return all;
    }

    /** Of so many neighbours each, the one that promises most. */
    private void thin(Loads all, int next) {
        int group = (all.count + width - 1) / width;
        int kept = 0;
        for (int from = 0; from < all.count; from += group) {
            int at = from;
            for (int k = from + 1; k < Math.min(all.count, from + group); k++) {
                at = promise(all.size[k], all.value[k], next) > promise(all.size[at], all.value[at], next) ? k : at;
            }
            all.size[kept] = all.size[at];
            all.value[kept] = all.value[at];
            all.node[kept++] = all.node[at];
        }
        all.count = kept;
    }

    private void add(Loads all, int load, long worth, int node, int chunk, int added) {
        if (all.count > 0 && all.value[all.count - 1] >= worth) {
            return;
        }
        boolean promising = promise(load, worth, chunk + 1) > best;
        if (!promising && worth <= best) {
            return;
        }
        int kept = added < 0 ? node : node(node, added);
        if (promising) {
            all.size[all.count] = load;
            all.value[all.count] = worth;
            all.node[all.count++] = kept;
        }
        if (worth > best) {
            best = worth;
            bests.add(kept);
            if (bests.size() > KEPT) {
                bests.remove();
            }
        }
    }

    /** What a load is worth at most in the end, were the next chunk to fill all that is left. */
    private long promise(int load, long worth, int next) {
        if (next == thing.length) {
            return worth;
        }
        int at = thing[next];
        return worth + (room - load) * value[at] / size[at];
    }

    private int node(int parent, int chunk) {
        if (nodes == chunkOf.length) {
            chunkOf = Arrays.copyOf(chunkOf, 2 * nodes);
            parentOf = Arrays.copyOf(parentOf, 2 * nodes);
        }
        chunkOf[nodes] = chunk;
        parentOf[nodes] = parent;
        return nodes++;
    }
}
