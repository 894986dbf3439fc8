package streamwright.solve;

import java.util.Arrays;
import java.util.stream.IntStream;
import streamwright.yard.BoardOffer;

/**
 * What no plan of a site costs less than, by arithmetic alone: what stands beside a plan whose search ended before anything
 * better was proved. Boards that plug everything in are bought at the price of the cheapest, but for those that are
 * owned; each takes a hop of at least its loops, the first on a cable one from its controller; each string takes its
 * cheapest lead or jumper. No money is counted twice.
 */
final class LeastCost {
    private final Site site;

    private LeastCost(Site site) {
        this.site = site;
    }

    /** In money; 0 where nothing is to be bought. */
    static double of(Site site) {
        LeastCost least = new LeastCost(site);
        long boards = Math.max(NeedsOfAll.boards(site), site.yard.boardCount().least());
        return least.wires() + least.boards(boards) + least.trunk(boards);
    }

    private double wires() {
        return IntStream.range(0, site.strings.length)
                .mapToDouble(i -> Math.min(first(site.leads[i]), first(site.before[i])))
                .filter(Double::isFinite)
                .sum();
    }

    private static double first(Site.Wire[] cheapestFirst) {
        return cheapestFirst.length == 0 ? Double.POSITIVE_INFINITY : cheapestFirst[0].cost();
    }

    private double boards(long boards) {
        long owned = 0;
        double price = Double.POSITIVE_INFINITY;
        for (BoardOffer offer : Fixtures.offers(site.yard)) {
            owned += Math.min(offer.have(), offer.most());
            price = Math.min(price, offer.price());
        }
        return boards > owned && Double.isFinite(price) ? (boards - owned) * price : 0;
    }

    /** Cables as few as may be, each with a hop from the nearest controller to the nearest spot where something hangs. */
    private double trunk(long boards) {
        int most = Arrays.stream(site.controllers)
                .mapToInt(controller -> controller.model().boardsPerCable())
                .max()
                .orElse(1);
        double entry = Double.POSITIVE_INFINITY;
        for (int s = 0; s < site.spots.length; s++) {
            for (int c = 0; c < site.controllers.length && site.reach[s].length > 0; c++) {
                entry = Math.min(entry, site.hopFrom(c, s));
            }
        }
        if (boards == 0 || most == 0 || !Double.isFinite(entry)) {
            return 0;
        }
        long cables = (boards + most - 1) / most;
        return cables * (site.cablePrice + site.trunkPrice * entry)
                + (boards - cables) * site.trunkPrice * Math.min(entry, site.loops());
    }
}
