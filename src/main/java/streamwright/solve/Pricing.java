package streamwright.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
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

    /**
     * A strand at a spot below the bar.
     *
     * @param order the order of its items in which it costs least
     */
    record Found(int spot, int[] order, double cost, double reduced) {}

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

    private final double injection;

    // of the search in hand
    private Worth worth = new Worth(new double[0], new double[0], 0);
    private double bar;
    private int spot;
    private long labelsLeft;
    private final Memories memories;
    private final Continuations free;
    private final Continuations charged;
    private final double[] charge;
    private final int[] whole;
    private final int[] path;
    private final int[] uses;
    private final Map<List<Integer>, Label> met = new HashMap<>();

    /** Pixels to a step of the dynamic programme, at most those of any string; a string counts as its whole steps. */
    private final int step;

    private final int steps;

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
        var costs = site.yard.costs();
        injection =
                costs.injection() + costs.injectionWire() * site.yard.rules().leadLoop();
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
        int table = Math.min(steps, STEPS_MOST);
        int stretch = Arrays.stream(site.stretchMost).max().orElse(0);
        charge = new double[table + 1];
        for (int taken = 1; taken <= table && stretch > 0; taken++) {
            charge[taken] = injection * Math.max(0, (taken * step + stretch - 1) / stretch - 1);
        }
        boolean[] scarce = new boolean[items.size];
        for (int k = 0; k < items.size; k++) {
            scarce[k] = items.count[k] * (long) whole[k] < table;
        }
        memories = new Memories(next, items.count, scarce);
        free = new Continuations(next, memories, whole, table);
        charged = new Continuations(next, memories, whole, table);
        path = new int[site.strings.length + 1];
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

    /** Looks ahead once for many spots, with each item worth the most that it is at any of them. */
    void lookAhead(double[] worthMost) {
        free.price(worthMost, new double[charge.length]);
        charged.price(worthMost, charge);
    }

    /**
     * Searches one spot.
     *
     * @param labels chains looked at before the search gives up
     * @param ahead whether to look ahead for this spot alone, which costs more and sees better
     */
    Result below(int atSpot, Worth atWorth, double below, long labels, boolean ahead) {
        spot = atSpot;
        worth = atWorth;
        bar = below;
        labelsLeft = labels;
        met.clear();
        if (steps > STEPS_MOST) {
            return new Result(spot, List.of(), false);
        }
        if (ahead) {
            lookAhead(worth.items);
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
            if (items.sample[head] != lead.to()
                    || whole[head] >= charge.length
                    || site.sort[lead.to()] != Drives.PIXELS) {
                continue;
            }
            double value = lead.cost() - worth.start - worth.heads[head] - worth.items[head] + charge[whole[head]];
            double reduced = value - charged.most(head, memories.begin(head), whole[head]);
            if (reduced < bar) {
                int[] order =
                        charged.best(head).stream().mapToInt(Integer::intValue).toArray();
                found.add(new Found(spot, order, reduced + worth(order), reduced));
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
                || steps >= charge.length
                || labelsLeft-- <= 0
                || ((labelsLeft & 255) == 0 && stopped.getAsBoolean())) {
            labelsLeft = taken > most[kind] || steps >= charge.length ? labelsLeft : 0;
            return;
        }
        double win = free.most(last, memory, steps);
        if (value - win >= bar || value + charge[steps] - charged.most(last, memory, steps) >= bar) {
            return;
        }
        double power = injections.atLeast(spot, path, length);
        if (value + power - win >= bar) {
            return;
        }
        if (value + power < bar) {
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
