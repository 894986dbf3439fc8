package streamwright.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The strands met so far, each once. */
final class Strands {
    private record Key(int head, List<Integer> items) {}

    private final List<Strand> all = new ArrayList<>();
    private final Map<Key, Integer> known = new HashMap<>();

    synchronized Strand get(int index) {
        return all.get(index);
    }

    /** The index of the strand with the items and the head of an order; new if need be. */
    synchronized int index(int[] order) {
        int[] items = order.clone();
        Arrays.sort(items);
        Key key = new Key(order[0], Arrays.stream(items).boxed().toList());
        return known.computeIfAbsent(key, k -> {
            all.add(new Strand(items, order[0]));
            return all.size() - 1;
        });
    }
}
