package streamwright.layout;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import streamwright.plan.Totals;
import streamwright.yard.BoardModel;
import streamwright.yard.BoardOffer;
import streamwright.yard.Costs;
import streamwright.yard.Spot;
import streamwright.yard.Yard;

/** What a plan buys, added up from unrounded lengths. */
final class Bill {
    private final Map<BoardModel, Integer> boards = new HashMap<>();
    private final Set<Spot> spots = new HashSet<>();
    private int cables;
    private int strings;
    private long pixels;
    private long nulls;
    private double trunk;
    private double lead;
    private double jumper;
    private double injections;

    void cable(double length) {
        cables++;
        trunk += length;
    }

    void board(BoardModel model, Spot spot) {
        boards.merge(model, 1, Integer::sum);
        spots.add(spot);
    }

    void port(Placement.Port port, double injectionCost) {
        injections += injectionCost;
        for (int s = 0; s < port.strings().size(); s++) {
            Placement.Placed placed = port.strings().get(s);
            strings++;
            pixels += placed.string().pixels();
            nulls += placed.nulls();
            if (s == 0) {
                lead += placed.length();
            } else {
                jumper += placed.length();
            }
        }
    }

    Totals totals() {
        int all = boards.values().stream().mapToInt(Integer::intValue).sum();
        return new Totals(all, cables, strings, pixels, Whole.of(nulls), trunk, lead, jumper);
    }

    double cost(Yard yard) {
        Costs costs = yard.costs();
        double hung = boards.entrySet().stream()
                .mapToDouble(entry -> price(yard, entry.getKey(), entry.getValue()))
                .sum();
        double places = spots.stream().mapToDouble(Spot::price).sum();
        return bought(trunk, costs.trunk())
                + bought(lead, costs.lead())
                + bought(jumper, costs.jumper())
                + cables * costs.cable()
                + injections
                + hung
                + places;
    }

    private static double price(Yard yard, BoardModel model, int count) {
        for (BoardOffer offer : yard.boards()) {
            if (offer.model().equals(model)) {
                return Math.max(0, count - offer.have()) * offer.price();
            }
        }
        return count * model.price();
    }

    /** Endless wire at no price costs nothing. */
    private static double bought(double length, double price) {
        return price == 0 ? 0 : length * price;
    }
}
