package streamwright.check;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import streamwright.plan.Cable;
import streamwright.yard.Controller;

/**
 * A cable.
 *
 * @param controller null where the yard has none of that name
 * @param boards as listed; empty where the plan has no board of that name
 * @param ways length of the hop to each board, not a number where it cannot be known
 */
record SeenCable(Cable cable, @Nullable Controller controller, List<Optional<SeenBoard>> boards, List<Double> ways) {
    Jack jack() {
        return new Jack(cable.controller(), cable.jack());
    }

    String label() {
        return jack().label();
    }

    /** Where a hop ends and where it begins. */
    String hopLabel(int hop) {
        String from = hop == 0 ? label() : cable.boards().get(hop - 1);
        return from + " to " + cable.boards().get(hop);
    }

    double hop(int hop) {
        double way = ways.get(hop);
        if (!Double.isNaN(way)) {
            return way;
        }
        return hop < cable.hops().size() ? Near.bounded(cable.hops().get(hop)) : 0;
    }

    /** Of the whole cable. */
    double length() {
        double sum = 0;
        for (int hop = 0; hop < ways.size(); hop++) {
            sum += hop(hop);
        }
        return sum;
    }
}
