package streamwright.solve;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import streamwright.physics.Runs;

/** What the injections of an order of items cost on a port at a spot, on the model where they cost least. */
final class Injections {
    private static final int KEPT_MOST = 1_000_000;

    private record Place(int spot, List<Integer> order) {}

    private final Site site;
    private final Items items;
    private final Map<Place, Double> known = new HashMap<>();

    private int[] places = new int[64];
    private double[] cost = new double[64];
    private int placeCount;
    private final double[][] wires;
    private final double[][] least;

    Injections(Site site, Items items) {
        wires = new double[site.spots.length][items.size];
        least = new double[site.spots.length][0];
        this.site = site;
        this.items = items;
    }

    /** The price; infinite where no power would do. */
    double of(int spot, int[] order, int length) {
        int[] strings = strings(order, length);
        Site.Wire lead = Objects.requireNonNull(site.lead(spot, strings[0]));
        if (site.needsNoInjection(strings, lead.length())) {
            return 0;
        }
        if (known.size() > KEPT_MOST) {
            known.clear();
        }
        Place place = new Place(spot, Arrays.stream(order, 0, length).boxed().toList());
        return known.computeIfAbsent(place, p -> {
            double least = Double.POSITIVE_INFINITY;
            for (int m = 0; m < site.offers.length && least > 0; m++) {
                least = Math.min(least, site.injections(spot, m, strings, lead.length()));
            }
            return least;
        });
    }

    /**
     * At most the price: the cheapest stretches of at most {@link Site#stretchMost} pixels. Within a string an earlier
     * pixel is cheaper to reach, so some cheapest set has each injection at the begin of a string, or as early as the
     * stretch behind it allows: only such places are tried, from the last to the first.
     */
    double atLeast(int spot, int[] order, int length) {
        int stretch = site.stretchMost[site.kind[items.sample[order[0]]]];
        int all = 0;
        for (int i = 0; i < length; i++) {
            all += site.pixels[items.sample[order[i]]];
        }
        if (stretch == 0 || all <= stretch) {
            return 0;
        }
        placeCount = 0;
        int begin = 0;
        for (int i = 0; i < length; i++) {
            addPlaces(begin, stretch);
            begin += site.pixels[items.sample[order[i]]];
        }
        addPlaces(all, stretch);
        return cheapest(spot, order, all, stretch);
    }

    private void addPlaces(int from, int stretch) {
        for (int place = from; place > 0; place -= stretch) {
            if (placeCount == places.length) {
                places = Arrays.copyOf(places, 2 * placeCount);
                cost = new double[2 * placeCount];
            }
            places[placeCount++] = place;
        }
    }

    private double cheapest(int spot, int[] order, int all, int stretch) {
        Arrays.sort(places, 0, placeCount);
        int[] at = places;
        int kind = site.kind[items.sample[order[0]]];
        int string = -1;
        int begin = 0;
        int end = 0;
        double base = 0;
        for (int i = 0; i < placeCount; i++) {
            while (at[i] >= end && end < all) {
                string++;
                begin = end;
                end += site.pixels[items.sample[order[string]]];
                base = wire(spot, order[string]);
            }
            cost[i] = site.injectionPrice(base, at[i] - begin, kind);
        }
        double first = Double.POSITIVE_INFINITY;
        for (int i = placeCount - 1; i >= 0; i--) {
            double rest = all - at[i] <= stretch ? 0 : Double.POSITIVE_INFINITY;
            for (int j = i + 1; j < placeCount && at[j] - at[i] <= stretch && rest > 0; j++) {
                rest = Math.min(rest, cost[j]);
            }
            cost[i] = at[i] == all ? Double.POSITIVE_INFINITY : cost[i] + rest;
            if (at[i] <= stretch) {
                first = Math.min(first, cost[i]);
            }
        }
        return first;
    }

    /** Of each item: what an injection on it from a spot costs at least. */
    double[] least(int spot) {
        if (least[spot].length == 0) {
            least[spot] = new double[items.size];
            for (int k = 0; k < items.size; k++) {
                least[spot][k] = site.injectionPrice(wire(spot, k), 0, site.kind[items.sample[k]]);
            }
        }
        return least[spot];
    }

    private double wire(int spot, int item) {
        double known = wires[spot][item];
        if (known == 0) {
            known = wires[spot][item] = Runs.lead(
                    site.yard.rules(),
                    site.ground.path(site.spots[spot].at(), site.strings[items.sample[item]].feed()));
        }
        return known;
    }

    /** Strings of the items: of an item that comes twice, two of its strings. */
    private int[] strings(int[] order, int length) {
        int[] strings = new int[length];
        for (int i = 0; i < length; i++) {
            int before = 0;
            for (int j = 0; j < i; j++) {
                before += order[j] == order[i] ? 1 : 0;
            }
            strings[i] = items.members[order[i]][before];
        }
        return strings;
    }
}
