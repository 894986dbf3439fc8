package streamwright.solve;

import java.util.ArrayList;
import java.util.Arrays;
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
    private final Growth growth;
    private final Next[][] next;
    private final int[] pixels;

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

    /** Where chains come from any spot, and where those from the spot in hand that may end below the bar. */
    private final Arrivals anywhere;

    private final Arrivals here;

    /** Of each item and number of steps: the most that a chain from any spot still wins; no bound before the first look. */
    private final double[][] win;

    Pricing(Site site, Items items, BooleanSupplier stopped) {
        this.stopped = stopped;
        this.site = site;
        this.items = items;
        injections = new Injections(site, items);
        growth = new Growth(site, items);
        next = growth.next;
        pixels = growth.pixels;
        whole = growth.whole;
        memories = growth.memories;
        injectionLeast = new double[items.size];
        Arrays.fill(injectionLeast, site.injectionPrice(site.yard.rules().leadLoop(), 0, 0));
        int[] powerMost = Arrays.stream(items.sample)
                .map(string -> site.stretchMost[site.kind[string]])
                .toArray();
        PowerSteps fine = new PowerSteps(whole, powerMost, growth.step, growth.table);
        power = (long) growth.table * fine.longest <= PLANE_MOST
                ? fine
                : new PowerSteps(whole, new int[items.size], growth.step, growth.table);
        ahead = new Continuations(next, memories, whole, growth.table, power);
        win = new double[items.size][growth.table + 1];
        for (double[] row : win) {
            Arrays.fill(row, Double.POSITIVE_INFINITY);
        }
        here = new Arrivals(next, whole, growth.table);
        anywhere = anywhere();
        path = new int[site.strings.length + 1];
        powered = new Powered[site.strings.length + 1];
        uses = new int[items.size];
    }

    /** Everywhere that jumpers lead, whatever the value. */
    private Arrivals anywhere() {
        Arrivals all = new Arrivals(next, whole, growth.table);
        for (int item = 0; item < items.size; item++) {
            if (site.leads[items.sample[item]].length > 0) {
                all.begin(item, 0);
            }
        }
        all.grow(new double[items.size], win, Double.POSITIVE_INFINITY);
        return all;
    }

    /** Looks ahead once for many spots, with each item worth the most that it is at any of them. */
    void lookAhead(double[] worthMost) {
        ahead.price(worthMost, injectionLeast, anywhere);
        for (int item = 0; item < items.size; item++) {
            for (int taken = 1; taken <= growth.table; taken++) {
                win[item][taken] = ahead.most(item, taken);
            }
        }
    }

    /**
     * Searches one spot, which is worth no more than {@link #lookAhead} was told last.
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
        if (!growth.isSeen()) {
            return new Result(spot, List.of(), false);
        }
        if (alone) {
            lookAhead();
        }
        for (Site.Wire lead : site.reach[spot]) {
            int head = items.of[lead.to()];
            if (items.sample[head] == lead.to()) {
                path[0] = head;
                uses[head]++;
                double value = value(lead);
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

    /** Looks ahead for the spot in hand alone. */
    private void lookAhead() {
        here.clear();
        for (Site.Wire lead : site.reach[spot]) {
            if (site.sort[lead.to()] == Drives.PIXELS) {
                here.begin(items.of[lead.to()], value(lead));
            }
        }
        here.grow(worth.items, win, bar);
        ahead.price(worth.items, injections.least(spot), here);
    }

    /** The reduced cost of a head alone. */
    private double value(Site.Wire lead) {
        int head = items.of[lead.to()];
        return lead.cost() - worth.start - worth.heads[head] - worth.items[head];
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
                    || whole[head] > growth.table
                    || site.sort[lead.to()] != Drives.PIXELS) {
                continue;
            }
            double value = value(lead);
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
        if (taken > growth.most[kind]
                || steps > growth.table
                || labelsLeft-- <= 0
                || ((labelsLeft & 255) == 0 && stopped.getAsBoolean())) {
            labelsLeft = taken > growth.most[kind] || steps > growth.table ? labelsLeft : 0;
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
