package streamwright.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Every set of items that one port can carry, found by growing chains along allowed jumpers; of chains with the same
 * items, head and last only the cheapest grows on, as in Held and Karp (1962). What follows depends on the past only
 * through these three, because lengths of jumpers add up.
 */
final class Strands {
    /** Beyond this the sets are too many to list. */
    static final int MOST = 400_000;

    private record Key(int head, int last, long hash, int[] items) {
        @Override
        public boolean equals(Object other) {
            return other instanceof Key key
                    && key.head == head
                    && key.last == last
                    && key.hash == hash
                    && Arrays.equals(key.items, items);
        }

        @Override
        public int hashCode() {
            return (int) (hash ^ (hash >>> 32)) * 31 + head * 7919 + last;
        }
    }

    private static final class Growing {
        int[] items;
        int[] order;
        double cost;
        int nulls;
        int pixels;

        Growing(int[] items, int[] order, double cost, int nulls, int pixels) {
            this.items = items;
            this.order = order;
            this.cost = cost;
            this.nulls = nulls;
            this.pixels = pixels;
        }
    }

    final List<Strand> all = new ArrayList<>();

    /** Whether the list is complete. */
    final boolean complete;

    Strands(Site site, Items items) {
        int[] most = pixelsMost(site);
        Map<Key, Growing> layer = new HashMap<>();
        for (int k = 0; k < items.size; k++) {
            int[] alone = {k};
            int pixels = site.pixels[items.sample[k]];
            layer.put(key(alone, alone), new Growing(alone, alone, 0, 0, pixels));
        }
        boolean whole = true;
        while (!layer.isEmpty() && whole) {
            collect(layer);
            layer = grow(site, items, layer, most);
            whole = all.size() + layer.size() <= MOST;
        }
        complete = whole;
    }

    private static int[] pixelsMost(Site site) {
        int port = 0;
        for (var offer : site.offers) {
            port = Math.max(port, offer.model().portMost());
        }
        int[] most = new int[site.kinds.length];
        for (int k = 0; k < most.length; k++) {
            for (int[] limit : site.limit) {
                most[k] = Math.max(most[k], Math.min(port, limit[k]));
            }
        }
        return most;
    }

    private static Key key(int[] items, int[] order) {
        long hash = 1125899906842597L;
        for (int item : items) {
            hash = hash * 6364136223846793005L + item + 1442695040888963407L;
        }
        return new Key(order[0], order[order.length - 1], hash, items);
    }

    private Map<Key, Growing> grow(Site site, Items items, Map<Key, Growing> layer, int[] most) {
        Map<Key, Growing> longer = new HashMap<>();
        for (Growing chain : layer.values()) {
            int last = items.sample[chain.order[chain.order.length - 1]];
            boolean[] seen = new boolean[items.size];
            for (Site.Wire wire : site.after[last]) {
                int next = items.of[wire.to()];
                if (seen[next] || uses(chain.items, next) >= items.count[next]) {
                    continue;
                }
                seen[next] = true;
                int pixels = chain.pixels + site.pixels[wire.to()];
                int nulls = chain.nulls + wire.nulls();
                if (pixels + nulls > most[site.kind[last]]) {
                    continue;
                }
                int[] set = insert(chain.items, next);
                int[] order = Arrays.copyOf(chain.order, set.length);
                order[set.length - 1] = next;
                double cost = chain.cost + wire.cost();
                Key key = key(set, order);
                Growing known = longer.get(key);
                if (known == null) {
                    if (longer.size() > MOST) {
                        return longer;
                    }
                    longer.put(key, new Growing(set, order, cost, nulls, pixels));
                } else {
                    known.nulls = Math.min(known.nulls, nulls);
                    if (cost < known.cost) {
                        known.cost = cost;
                        known.order = order;
                    }
                }
            }
        }
        return longer;
    }

    private static int uses(int[] items, int item) {
        int uses = 0;
        for (int other : items) {
            uses += other == item ? 1 : 0;
        }
        return uses;
    }

    private static int[] insert(int[] sorted, int item) {
        int at = 0;
        while (at < sorted.length && sorted[at] < item) {
            at++;
        }
        int[] longer = new int[sorted.length + 1];
        System.arraycopy(sorted, 0, longer, 0, at);
        longer[at] = item;
        System.arraycopy(sorted, at, longer, at + 1, sorted.length - at);
        return longer;
    }

    /** Of chains that differ only in their last string, one strand. */
    private void collect(Map<Key, Growing> layer) {
        Map<Key, Growing> merged = new HashMap<>();
        for (var entry : layer.entrySet()) {
            Growing chain = entry.getValue();
            Key key = new Key(entry.getKey().head, -1, entry.getKey().hash, chain.items);
            Growing known = merged.get(key);
            if (known == null) {
                merged.put(key, new Growing(chain.items, chain.order, chain.cost, chain.nulls, chain.pixels));
            } else {
                known.nulls = Math.min(known.nulls, chain.nulls);
                if (chain.cost < known.cost
                        || (chain.cost == known.cost && Arrays.compare(chain.order, known.order) < 0)) {
                    known.cost = chain.cost;
                    known.order = chain.order;
                }
            }
        }
        merged.values().stream()
                .sorted((a, b) -> {
                    int byItems = Arrays.compare(a.items, b.items);
                    return byItems != 0 ? byItems : Integer.compare(a.order[0], b.order[0]);
                })
                .forEach(g -> all.add(new Strand(g.items, g.order, g.cost, g.pixels + g.nulls)));
    }
}
