package streamwright.solve;

import java.util.Arrays;

/** How much of anything a plan can have, and what it costs, in the terms of {@link Master}. */
final class MasterLimits {
    private final Site site;
    private final Items items;

    MasterLimits(Site site, Items items) {
        this.site = site;
        this.items = items;
    }

    /** Prices for leaving strings out that are above those of serving any, where any can be. */
    static double[] missingPrices(Site site, Items items) {
        double board = 0;
        for (var offer : site.offers) {
            board = Math.max(board, offer.price());
        }
        var rules = site.yard.rules();
        double[] prices = new double[items.size];
        Arrays.fill(
                prices,
                10
                        + 2 * board
                        + 2 * site.cablePrice
                        + 2 * Math.min(rules.hopMost(), 1e6) * site.trunkPrice
                        + 4
                                * Math.min(rules.leadData() + 3 * rules.jumperData(), 1e6)
                                * site.yard.costs().lead());
        return prices;
    }

    /** Every board carries at least one string, which must be in its reach. */
    int boardsMost(int spot, int model) {
        int most = Math.min(site.spots[spot].most(), site.offers[model].most());
        int inReach = 0;
        for (Site.Wire lead : site.reach[spot]) {
            inReach += site.suits(model, lead.to()) ? 1 : 0;
        }
        return Math.min(most, inReach);
    }

    /** Whether a plan may have an arc: it leads elsewhere, and no farther than a hop may. */
    boolean mayJoin(int from, int to) {
        return from != site.controllers.length + to && site.arcLength(from, to) <= site.hopMost;
    }

    double arcCost(int from, int to) {
        return (site.arcLength(from, to) - site.loops()) * site.trunkPrice
                + (from < site.controllers.length ? site.cablePrice : 0);
    }

    int arcMost(int from, int to) {
        int boards = Math.min(site.spots[to].most(), site.reach[to].length);
        return from < site.controllers.length
                ? Math.min(boards, site.controllers[from].model().jacks())
                : Math.min(
                        boards,
                        Math.min(
                                site.spots[from - site.controllers.length].most(),
                                site.reach[from - site.controllers.length].length));
    }

    /** How often a strand can hang: its items have only so many strings. */
    int columnMost(int[] list) {
        int most = Integer.MAX_VALUE;
        for (int item : list) {
            int uses = 0;
            for (int other : list) {
                uses += other == item ? 1 : 0;
            }
            most = Math.min(most, items.count[item] / uses);
        }
        return most;
    }
}
