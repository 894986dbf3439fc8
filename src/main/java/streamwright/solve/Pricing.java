package streamwright.solve;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;
import streamwright.solve.Continuations.Next;
import streamwright.yard.Drives;

/**
 * Finds the strands that a dual solution prices below a bar, spot by spot: chains are grown along jumpers, depth first,
 * and given up where not even the best continuation could bring them below the bar. That best is bounded by a dynamic
 * programme that only forgets limits ({@link Continuations}), so nothing below the bar is missed.
 */
final class Pricing {
    /** Steps to a whole port, about: more are nearer the truth and slower. */
    private static final int FINENESS = 64;

    /** Longest table of the dynamic programme. */
    private static final int STEPS_MOST = 5000;

    /** Largest one of steps taken and steps behind an injection. */
    private static final int PLANE_MOST = 1 << 15;

    /**
     * A strand at a spot below the bar.
     *
     * @param order the order of its items in which it costs least
     * @param relaxed whether it may be no real chain, or cost less than it would
     */
    record Found(int spot, int[] order, double cost, double reduced, boolean relaxed) {
        /** A real one. */
        Found(int spot, int[] order, double cost, double reduced) {
            this(spot, order, cost, reduced, false);
        }
    }

    /**
     * What was found.
     *
     * @param complete whether nothing below the bar is missing
     */
    record Result(int spot, List<Found> found, boolean complete) {}

    /** The worth of things at a spot to all rows of a relaxation. */
    record Worth(double[] items, double[] heads, double start) {}

    private record Label(int[] order, double value) {}

    private final Site site;
    private final Items items;
    private final Injections injections;
    private final BooleanSupplier stopped;
    private final Next[][] next;
    private final int[] pixels;
    private final int[] most;

    /** What an injection costs at least, wherever it is. */
    private final double[] injectionLeast;

    // of the search in hand
    private Worth worth = new Worth(new double[0], new double[0], 0);
    private double bar;
    private int spot;
    private long labelsLeft;
    private final Memories memories;
    private final Continuations ahead;
    private final PowerSteps power;
    private final Powered[] powered;
    private final int[] whole;
    private final int[] path;
    private final int[] uses;
    private final Map<List<Integer>, Label> met = new HashMap<>();

    /** Pixels to a step of the dynamic programme, at most those of any string; a string counts as its whole steps. */
    private final int step;

    private final int steps;

    private final int table;

    private final BitSet all = new BitSet();

    /** Of each spot: all items that may be on a chain from there; null where that was not asked yet. */
    private final @Nullable BitSet[] from;

    Pricing(Site site, Items items, BooleanSupplier stopped) {
        this.stopped = stopped;
        this.site = site;
        this.items = items;
        injections = new Injections(site, items);
        next = new Next[items.size][];
        pixels = new int[items.size];
        int port = 0;
        for (var offer : site.offers) {
            port = offer.model().drives() == Drives.PIXELS
                    ? Math.max(port, offer.model().portMost())
                    : port;
        }
        injectionLeast = new double[items.size];
        Arrays.fill(injectionLeast, site.injectionPrice(site.yard.rules().leadLoop(), 0, 0));
        most = new int[site.kinds.length];
        for (int k = 0; k < most.length; k++) {
            for (int[] limit : site.limit) {
                most[k] = Math.max(most[k], Math.min(port, limit[k]));
            }
        }
        for (int k = 0; k < items.size; k++) {
            pixels[k] = site.pixels[items.sample[k]];
            next[k] = jumpers(k);
        }
        int least = Arrays.stream(pixels).filter(p -> p > 0).min().orElse(1);
        step = Math.max(1, Math.min(least, Arrays.stream(most).max().orElse(0) / FINENESS));
        steps = Arrays.stream(most).max().orElse(0) / step;
        whole = Arrays.stream(pixels).map(p -> p / step).toArray();
        table = Math.min(steps, STEPS_MOST);
        int[] powerMost = Arrays.stream(items.sample)
                .map(string -> site.stretchMost[site.kind[string]])
                .toArray();
        PowerSteps fine = new PowerSteps(whole, powerMost, step, table);
        power = (long) table * fine.longest <= PLANE_MOST
                ? fine
                : new PowerSteps(whole, new int[items.size], step, table);
        boolean[] scarce = new boolean[items.size];
        for (int k = 0; k < items.size; k++) {
            scarce[k] = items.count[k] * (long) whole[k] < table;
        }
        all.set(0, items.size);
        from = new BitSet[site.spots.length];
        memories = new Memories(next, items.count, scarce);
        ahead = new Continuations(next, memories, whole, table, power);
        path = new int[site.strings.length + 1];
        powered = new Powered[site.strings.length + 1];
        uses = new int[items.size];
    }

    private Next[] jumpers(int item) {
        Map<Integer, Next> cheapest = new HashMap<>();
        for (Site.Wire wire : site.after[items.sample[item]]) {
            cheapest.putIfAbsent(items.of[wire.to()], new Next(items.of[wire.to()], wire.cost(), wire.nulls()));
        }
        return cheapest.values().stream()
                .sorted(Comparator.comparingDouble(Next::cost).thenComparingInt(Next::item))
                .toArray(Next[]::new);
    }

    private BitSet from(int spot) {
        BitSet known = from[spot];
        if (known == null) {
            known = from[spot] = reached(spot);
        }
        return known;
    }

    private BitSet reached(int spot) {
        BitSet reached = new BitSet();
        Deque<Integer> ends = new ArrayDeque<>();
        for (Site.Wire lead : site.reach[spot]) {
            ends.add(items.of[lead.to()]);
        }
        while (!ends.isEmpty()) {
            int item = ends.remove();
            if (!reached.get(item)) {
                reached.set(item);
                for (Next to : next[item]) {
                    ends.add(to.item());
                }
            }
        }
        return reached;
    }

    /** Looks ahead once for many spots, with each item worth the most that it is at any of them. */
    void lookAhead(double[] worthMost) {
        ahead.price(worthMost, injectionLeast, all);
    }

    /**
     * Searches one spot.
     *
     * @param labels chains looked at before the search gives up
     * @param alone whether to look ahead for this spot alone, which costs more and sees better
     */
    Result below(int atSpot, Worth atWorth, double below, long labels, boolean alone) {
        spot = atSpot;
        worth = atWorth;
        bar = below;
        labelsLeft = labels;
        met.clear();
        if (steps > STEPS_MOST) {
            return new Result(spot, List.of(), false);
        }
        if (alone) {
            ahead.price(worth.items, injections.least(spot), from(spot));
        }
        for (Site.Wire lead : site.reach[spot]) {
            int head = items.of[lead.to()];
            if (items.sample[head] == lead.to()) {
                path[0] = head;
                uses[head]++;
                double value = lead.cost() - worth.start - worth.heads[head] - worth.items[head];
                if (site.sort[lead.to()] != Drives.PIXELS) {
                    // outputs and panels hang alone
                    if (value < bar) {
                        remember(1, value);
                    }
                    uses[head]--;
                    continue;
                }
                powered[1] = Powered.NOTHING.on(power, head, injections.least(spot)[head]);
                grow(1, value, lead.nulls() + pixels[head], whole[head], memories.begin(head));
                uses[head]--;
            }
        }
        List<Found> found = new ArrayList<>();
        for (Label label : met.values()) {
            found.add(new Found(spot, label.order, label.value + worth(label.order), label.value));
        }
        return new Result(spot, found, labelsLeft > 0);
    }

    /**
     * What may be below the bar at a spot where {@link #below} gave up and found nothing: for each head the chain of the
     * dynamic programme, whose items may repeat, at a price that no real chain undercuts. None proves that nothing is
     * below the bar; to let them in keeps a relaxation a relaxation.
     */
    List<Found> relaxed() {
        List<Found> found = new ArrayList<>();
        for (Site.Wire lead : site.reach[spot]) {
            int head = items.of[lead.to()];
            if (items.sample[head] != lead.to() || whole[head] > table || site.sort[lead.to()] != Drives.PIXELS) {
                continue;
            }
            double value = lead.cost() - worth.start - worth.heads[head] - worth.items[head];
            Powered reach = Powered.NOTHING.on(power, head, injections.least(spot)[head]);
            int best = reach.best(ahead, head, memories.begin(head), whole[head]);
            double reduced =
                    value + reach.paid(best) - ahead.most(head, memories.begin(head), whole[head], reach.since(best));
            if (reduced < bar) {
                int[] order = ahead.best(head, reach.since(best)).stream()
                        .mapToInt(Integer::intValue)
                        .toArray();
                found.add(new Found(spot, order, reduced + worth(order), reduced, true));
            }
        }
        return found;
    }

    private double worth(int[] order) {
        double sum = worth.start + worth.heads[order[0]];
        for (int item : order) {
            sum += worth.items[item];
        }
        return sum;
    }

    /**
     * Looks at the chain in hand and all that grow from it. What its own injections cost, all that grow from it pay too:
     * with the pixels behind left out, their injections hold its stretches.
     *
     * @param value reduced cost without injections
     * @param taken pixels, nulls included; {@code steps} whole ones of its strings
     */
    private void grow(int length, double value, int taken, int steps, int memory) {
        int last = path[length - 1];
        int kind = site.kind[items.sample[last]];
        if (taken > most[kind]
                || steps > table
                || labelsLeft-- <= 0
                || ((labelsLeft & 255) == 0 && stopped.getAsBoolean())) {
            labelsLeft = taken > most[kind] || steps > table ? labelsLeft : 0;
            return;
        }
        Powered reach = powered[length];
        int best = reach.best(ahead, last, memory, steps);
        if (value + reach.paid(best) - ahead.most(last, memory, steps, reach.since(best)) >= bar) {
            return;
        }
        double win = ahead.most(last, memory, steps, 0);
        double injected = injections.atLeast(spot, path, length);
        if (value + injected - win >= bar) {
            return;
        }
        if (value + injected < bar) {
            double whole = value + injections.of(spot, path, length);
            if (whole < bar) {
                remember(length, whole);
            } else if (whole - win >= bar) {
                return;
            }
        }
        for (int n = 0; n < next[last].length; n++) {
            Next to = next[last][n];
            if (uses[to.item()] < items.count[to.item()]) {
                int after = memories.after(last, n, memory);
                path[length] = to.item();
                powered[length + 1] = reach.on(power, to.item(), injections.least(spot)[to.item()]);
                uses[to.item()]++;
                grow(
                        length + 1,
                        value + to.cost() - worth.items[to.item()],
                        taken + to.nulls() + pixels[to.item()],
                        steps + whole[to.item()],
                        after);
                uses[to.item()]--;
            }
        }
    }

    private void remember(int length, double value) {
        int[] order = Arrays.copyOf(path, length);
        int[] key = order.clone();
        Arrays.sort(key, 1, length);
        met.merge(Arrays.stream(key).boxed().toList(), new Label(order, value), (a, b) -> b.value < a.value ? b : a);
    }
}
