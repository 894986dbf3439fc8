package streamwright.solve;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** Strings that nothing tells apart (one prop, equal pixels, feed and tail), taken together as one item with a count. */
final class Items {
    private record Likeness(int prop, int pixels, Object feed, Object tail, long channel) {}

    /** Of each string: its item. */
    final int[] of;

    /** Of each item: one of its strings, and how many there are. */
    final int[] sample;

    final int[] count;

    /** Of each item: its strings. */
    final int[][] members;

    final int size;

    Items(Site site) {
        of = new int[site.strings.length];
        Map<Likeness, Integer> seen = new HashMap<>();
        List<Integer> samples = new ArrayList<>();
        for (int i = 0; i < of.length; i++) {
            int string = i;
            var likeness = new Likeness(
                    site.prop[i], site.pixels[i], site.strings[i].feed(), site.strings[i].tail(), site.kept.channel[i]);
            of[i] = seen.computeIfAbsent(likeness, key -> {
                samples.add(string);
                return samples.size() - 1;
            });
        }
        size = samples.size();
        sample = samples.stream().mapToInt(Integer::intValue).toArray();
        count = new int[size];
        for (int item : of) {
            count[item]++;
        }
        members = new int[size][];
        for (int k = 0; k < size; k++) {
            int item = k;
            members[k] =
                    IntStream.range(0, of.length).filter(i -> of[i] == item).toArray();
        }
    }
}
