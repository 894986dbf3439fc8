package streamwright.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import streamwright.yard.Drives;

/**
 * How many streams must enter a set of spots for what is served there. A stream carries one kind, and of kept channels those
 * a whole number of pixels apart, so each such group needs streams of its own. Strings are weighed so that what any one
 * stream carries weighs at most 1 (Fekete and Schepers, Mathematical Programming 91, 2001, say so of bins), in the way
 * that shows most need:
 *
 * <ul>
 *   <li>by pixels, as shares of what a stream takes;
 *   <li>1 for each of some strings no two of which go on one stream: two are too long together, or too far apart for one
 *       window of kept channels;
 *   <li>of a panel, 1 for each stream over which it is cut.
 * </ul>
 *
 * <p>What shows one picture may share pixels, so only one of its strings is weighed.
 *
 * <p>Streams come whole: where strings weigh n in all and those of them that are served elsewhere s, mixed-integer rounding
 * gives at least {@code ceil(n) - s/f} streams, f being the fractional part of n.
 */
final class StreamNeeds {
    private static final double ROUNDING = 1e-9;

    /** A smaller part of a stream makes strings that are served elsewhere weigh too much. */
    private static final double REST_LEAST = 0.1;

    /** Strings served less than this are not worth that others go. */
    private static final double SERVED_LEAST = 0.5;

    private record Key(int kind, long rest) {}

    /**
     * Streams that a group needs for some of its strings.
     *
     * @param items what is weighed
     * @param weight of one string of each
     * @param streams at least, less what of the weight is served elsewhere
     * @param away weight served elsewhere
     */
    record Need(int[] items, double[] weight, double streams, double away) {
        double now() {
            return streams - away;
        }
    }

    private final Site site;
    private final Items items;
    private final List<int[]> groups = new ArrayList<>();

    /** Of each item: the one whose pictures all its strings show; -1 where they are those of several. */
    private final int[] original;

    private final boolean[] panel;
    private final double[] share;

    /** Of each item: what one string weighs where no string of another item that weighs anything goes on its stream. */
    private final double[] alone;

    /** Of each item: its first kept channel, the end of its channels, and the channels of a stream. */
    private final long[] begin;

    private final long[] end;
    private final long[] window;

    // of the group in hand: its items that are served and weighed
    private final int[] group;
    private int size;
    private final int[] best;
    private final int[] order;
    private final double[] won;
    private final int[] before;

    StreamNeeds(Site site, Items items) {
        this.site = site;
        this.items = items;
        int panelParts = Arrays.stream(site.sockets.cut)
                .mapToInt(cut -> cut.length)
                .filter(parts -> parts > 0)
                .min()
                .orElse(1);
        panel = new boolean[items.size];
        share = new double[items.size];
        alone = new double[items.size];
        begin = new long[items.size];
        end = new long[items.size];
        window = new long[items.size];
        Map<Key, List<Integer>> byKey =
                new TreeMap<>(Comparator.comparing(Key::kind).thenComparing(Key::rest));
        for (int k = 0; k < items.size; k++) {
            int string = items.sample[k];
            int kind = site.kind[string];
            panel[k] = site.sort[string] == Drives.PANEL;
            int limit = Math.max(1, site.limitMost(kind));
            share[k] = site.pixels[string] / (double) limit;
            int together = Math.min(items.count[k], limit / Math.max(1, site.pixels[string]));
            alone[k] = panel[k] ? panelParts : 1.0 / Math.max(1, together);
            begin[k] = site.kept.channel[string];
            end[k] = begin[k] + site.kept.length(string);
            window[k] = limit * (long) site.kept.width[kind];
            // of kept channels a panel's are not looked at, and outputs go on streams of any kind
            if (site.sort[string] == Drives.PIXELS || (panel[k] && !site.kept.on)) {
                long rest = site.kept.on ? begin[k] % site.kept.width[kind] : 0;
                byKey.computeIfAbsent(new Key(kind, rest), key -> new ArrayList<>())
                        .add(k);
            }
        }
        Comparator<Integer> along =
                site.kept.on ? Comparator.comparingLong(k -> begin[k]) : Comparator.comparingDouble(k -> -share[k]);
        for (List<Integer> members : byKey.values()) {
            groups.add(
                    members.stream().sorted(along).mapToInt(Integer::intValue).toArray());
        }
        original = IntStream.range(0, items.size).map(this::original).toArray();
        group = new int[items.size];
        best = new int[items.size];
        order = new int[items.size];
        won = new double[items.size];
        before = new int[items.size];
    }

    private int original(int item) {
        int original = items.of[site.picture[items.sample[item]]];
        return Arrays.stream(items.members[item]).allMatch(i -> items.of[site.picture[i]] == original) ? original : -1;
    }

    /**
     * The needs of all groups.
     *
     * @param served strings of each item
     */
    List<Need> of(double[] served) {
        List<Need> needs = new ArrayList<>(groups.size());
        for (int[] all : groups) {
            show(all, served);
            if (size > 0) {
                Need shares = shares(served);
                Need alone = site.kept.on ? windows(served) : large(served);
                Need most = alone.now() > shares.now() + ROUNDING ? alone : shares;
                if (most.now() > ROUNDING) {
                    needs.add(most);
                }
            }
        }
        return needs;
    }

    /** Of all that show one picture, the item of which most is served. */
    private void show(int[] all, double[] served) {
        size = 0;
        Arrays.fill(best, -1);
        for (int k : all) {
            int of = original[k];
            if (of >= 0 && (best[of] < 0 || served[k] > served[best[of]])) {
                best[of] = k;
            }
        }
        for (int k : all) {
            if (served[k] > ROUNDING && original[k] >= 0 && best[original[k]] == k) {
                group[size++] = k;
            }
        }
    }

    private double away(int item, double[] served) {
        return 1 - served[item] / items.count[item];
    }

    /** By pixels: of the strings in the order of how wholly they are served, so many as show most need. */
    private Need shares(double[] served) {
        for (int i = 0; i < size; i++) {
            int at = i;
            double mine = away(group[i], served);
            while (at > 0 && away(order[at - 1], served) > mine) {
                order[at] = order[at - 1];
                at--;
            }
            order[at] = group[i];
        }
        double sum = 0;
        double away = 0;
        double most = 0;
        int joined = 0;
        double by = 1;
        double streams = 0;
        double gone = 0;
        for (int i = 0; i < size; i++) {
            int k = order[i];
            sum += items.count[k] * share[k];
            away += (items.count[k] - served[k]) * share[k];
            double part = sum - Math.floor(sum);
            boolean round = part >= REST_LEAST && Math.ceil(sum) - away / part > sum - away;
            double now = round ? Math.ceil(sum) - away / part : sum - away;
            if (now > most + ROUNDING) {
                most = now;
                joined = i + 1;
                by = round ? part : 1;
                streams = round ? Math.ceil(sum) : sum;
                gone = away / by;
            }
        }
        int[] which = Arrays.copyOf(order, joined);
        double[] weight = new double[joined];
        for (int i = 0; i < joined; i++) {
            weight[i] = share[which[i]] / by;
        }
        return new Need(which, weight, streams, gone);
    }

    /** Of strings no two of which go on one stream, in {@link #order}, those that are served enough. */
    private Need alone(int[] apart, int count, double[] served) {
        int[] which = new int[count];
        double[] weight = new double[count];
        int joined = 0;
        double streams = 0;
        double away = 0;
        for (int i = 0; i < count; i++) {
            int k = apart[i];
            if (served[k] > SERVED_LEAST * items.count[k]) {
                which[joined] = k;
                weight[joined++] = alone[k];
                streams += items.count[k] * alone[k];
                away += (items.count[k] - served[k]) * alone[k];
            }
        }
        return new Need(Arrays.copyOf(which, joined), Arrays.copyOf(weight, joined), streams, away);
    }

    /**
     * Those longer than half a stream, and the best one of the others that no stream has beside one of them; or a panel, if
     * it is the best of all where none is so long.
     */
    private Need large(double[] served) {
        int count = 0;
        double least = 1;
        int other = -1;
        for (int i = 0; i < size; i++) {
            int k = group[i];
            if (!panel[k] && 2 * share[k] > 1 + ROUNDING) {
                order[count++] = k;
                least = share[k];
            }
        }
        for (int i = 0; i < size; i++) {
            int k = group[i];
            boolean may = count == 0 || (!panel[k] && 2 * share[k] <= 1 + ROUNDING && share[k] + least > 1 + ROUNDING);
            if (may && served[k] * alone[k] > (other < 0 ? 0 : served[other] * alone[other])) {
                other = k;
            }
        }
        if (other >= 0) {
            order[count++] = other;
        }
        return alone(order, count, served);
    }

    /** Strings, each too far from the one before for a stream, and so from all before: as many served as can be. */
    private Need windows(double[] served) {
        int last = -1;
        for (int i = 0; i < size; i++) {
            int far = -1;
            for (int j = 0; j < i && begin[group[j]] < end[group[i]] - window[group[i]]; j++) {
                far = far < 0 || won[j] > won[far] ? j : far;
            }
            before[i] = far;
            won[i] = served[group[i]] * alone[group[i]] + (far < 0 ? 0 : won[far]);
            last = last < 0 || won[i] > won[last] ? i : last;
        }
        int count = 0;
        for (int i = last; i >= 0; i = before[i]) {
            order[count++] = group[i];
        }
        return alone(order, count, served);
    }
}
