package streamwright.solve;

import java.util.ArrayList;
import java.util.List;

/** The ways to power a chain in hand that may turn out best: steps behind the last injection, and what was paid. */
final class Powered {
    /** No chain yet. */
    static final Powered NOTHING = new Powered(List.of(new Way(0, 0)));

    private record Way(int since, double paid) {
        boolean asGoodAs(Way other) {
            return since <= other.since && paid <= other.paid;
        }
    }

    private final List<Way> ways;

    private Powered(List<Way> ways) {
        this.ways = ways;
    }

    /** With one item more, an injection on which costs so much. */
    Powered on(PowerSteps power, int item, double injection) {
        List<Way> on = new ArrayList<>(ways.size() + 1);
        for (Way way : ways) {
            int most = power.most(item, way.since);
            for (int injections = power.least(item, way.since); injections <= most; injections++) {
                add(on, new Way(power.after(item, way.since, injections), way.paid + injections * injection));
            }
        }
        return new Powered(on);
    }

    private static void add(List<Way> ways, Way way) {
        for (int w = ways.size() - 1; w >= 0; w--) {
            if (ways.get(w).asGoodAs(way)) {
                return;
            }
            if (way.asGoodAs(ways.get(w))) {
                ways.remove(w);
            }
        }
        ways.add(way);
    }

    /** The way that costs least with what the chain may still win. */
    int best(Continuations ahead, int item, int memory, int taken) {
        int best = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int w = 0; w < ways.size(); w++) {
            double cost = ways.get(w).paid - ahead.most(item, memory, taken, since(w));
            if (cost < least) {
                least = cost;
                best = w;
            }
        }
        return best;
    }

    int since(int way) {
        return ways.get(way).since;
    }

    double paid(int way) {
        return ways.get(way).paid;
    }
}
