package streamwright.solve;

import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;
import streamwright.physics.Runs;

/**
 * What a strand costs on a port at a spot: the lead to its head, its jumpers, and the injections it needs. A strand
 * that needs none costs its cheapest order. Where injections come in, the order matters to them too: a lower bound is
 * quick, the exact price is the best of all orders.
 */
final class StrandPrices {
    /** Longer strands keep their lower bound: their orders are too many. */
    private static final int ORDERS_MOST = 7;

    private record Place(int strand, int spot) {}

    private final Site site;
    private final Items items;
    private final Strands strands;
    private final ConcurrentMap<Place, Double> exact = new ConcurrentHashMap<>();

    StrandPrices(Site site, Items items, Strands strands) {
        this.site = site;
        this.items = items;
        this.strands = strands;
    }

    /** At most the price; the price itself where no injection is needed. */
    double atLeast(int index, int spot, Site.Wire lead) {
        Strand strand = strands.all.get(index);
        double wires = lead.cost() + strand.jumpers();
        int injections = injectionsAtLeast(strand);
        if (injections == 0) {
            return wires;
        }
        double nearest = Double.POSITIVE_INFINITY;
        for (int item : strand.items()) {
            nearest = Math.min(nearest, wire(spot, item));
        }
        var costs = site.yard.costs();
        return wires + injections * (costs.injection() + costs.injectionWire() * nearest);
    }

    /** The price, or for very long strands a lower bound; infinite where no power would do. */
    double of(int index, int spot, Site.Wire lead) {
        Strand strand = strands.all.get(index);
        int[] strings = strings(strand.order());
        double injections = cheapestInjections(spot, strings, lead);
        if (injections == 0) {
            return lead.cost() + strand.jumpers();
        }
        if (strand.size() > ORDERS_MOST) {
            return atLeast(index, spot, lead);
        }
        return exact.computeIfAbsent(new Place(index, spot), place -> {
            int[] order = strings(bestOrder(index, spot));
            return lead.cost() + jumpers(order) + cheapestInjections(spot, order, lead);
        });
    }

    /** The order of items in which a strand costs least at a spot. */
    int[] bestOrder(int index, int spot) {
        Strand strand = strands.all.get(index);
        Site.Wire lead = java.util.Objects.requireNonNull(site.lead(spot, items.sample[strand.head()]));
        if (strand.size() > ORDERS_MOST || cheapestInjections(spot, strings(strand.order()), lead) == 0) {
            return strand.order();
        }
        int[][] best = {strand.order()};
        double[] least = {Double.POSITIVE_INFINITY};
        orders(strand, new int[strand.size()], 1, order -> {
            int[] strings = strings(order);
            double cost = jumpers(strings) + cheapestInjections(spot, strings, lead);
            if (cost < least[0]) {
                least[0] = cost;
                best[0] = order.clone();
            }
        });
        return best[0];
    }

    private int injectionsAtLeast(Strand strand) {
        double most = 0;
        double draw = 0;
        for (int item : strand.items()) {
            draw += site.draw[items.sample[item]];
        }
        for (var offer : site.offers) {
            most = Math.max(most, offer.model().fuse() * site.yard.rules().fuseLoad());
        }
        // a stretch within the rounding that the physics forgives must not count as one more
        return Double.isInfinite(most) || draw <= 0
                ? 0
                : Math.max(0, (int) Math.ceil(draw / (most + Site.AMPS_ROUNDING) - 1e-6) - 1);
    }

    private double wire(int spot, int item) {
        return Runs.lead(
                site.yard.rules(), site.ground.path(site.spots[spot].at(), site.strings[items.sample[item]].feed()));
    }

    private double cheapestInjections(int spot, int[] strings, Site.Wire lead) {
        double least = Double.POSITIVE_INFINITY;
        for (int m = 0; m < site.offers.length && least > 0; m++) {
            least = Math.min(least, site.injections(spot, m, strings, lead.length()));
        }
        return least;
    }

    private interface Visitor {
        void visit(int[] order);
    }

    private void orders(Strand strand, int[] order, int placed, Visitor visitor) {
        if (placed == 1) {
            order[0] = strand.head();
        }
        if (placed == order.length) {
            visitor.visit(order);
            return;
        }
        for (int i = 0; i < strand.items().length; i++) {
            int item = strand.items()[i];
            boolean twin = i > 0 && strand.items()[i - 1] == item;
            if (twin || uses(order, placed, item) >= uses(strand.items(), strand.size(), item)) {
                continue;
            }
            order[placed] = item;
            int[] strings = strings(java.util.Arrays.copyOf(order, placed + 1));
            if (site.jumper(strings[placed - 1], strings[placed]) != null) {
                orders(strand, order, placed + 1, visitor);
            }
        }
    }

    private static int uses(int[] list, int length, int item) {
        int uses = 0;
        for (int i = 0; i < length; i++) {
            uses += list[i] == item ? 1 : 0;
        }
        return uses;
    }

    /** Strings of the items: of an item that comes twice, two of its strings. */
    int[] strings(int[] order) {
        int[] strings = new int[order.length];
        for (int i = 0; i < order.length; i++) {
            strings[i] = items.members[order[i]][uses(order, i, order[i])];
        }
        return strings;
    }

    private double jumpers(int[] strings) {
        double cost = 0;
        for (int i = 1; i < strings.length; i++) {
            cost += java.util.Objects.requireNonNull(site.jumper(strings[i - 1], strings[i]))
                    .cost();
        }
        return cost;
    }
}
