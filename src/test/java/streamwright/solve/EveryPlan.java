package streamwright.solve;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import streamwright.layout.Layout;
import streamwright.physics.Ground;
import streamwright.yard.Controller;
import streamwright.yard.Yard;

/**
 * Tries every plan of a tiny yard: every order of strings on every port, every port and stream, every board model at
 * every spot, every order of boards on every cable of every jack. Nothing is left out but what costs more and nothing
 * else tells apart. Knows nothing of the planner.
 */
final class EveryPlan {
    /** Highest universe of ANSI E1.31-2018, 9.1.1. */
    private static final long UNIVERSE_MOST = 63_999;

    private static final double ROUNDING = 1e-9;

    /** A plan's cables and cost. */
    record Tried(List<Cabling> cables, double cost) {}

    /** Told of plans. */
    interface Visitor {
        void visit(Tried plan);
    }

    private final Measured measured;
    private final Yard yard;
    private final List<Cabling.All> cablings = new ArrayList<>();
    private final boolean all;
    private Visitor visitor = plan -> {};
    private double best = Double.POSITIVE_INFINITY;

    private EveryPlan(Yard yard, Ground ground, boolean all) {
        this.yard = yard;
        this.all = all;
        measured = new Measured(yard, ground);
        for (int c = 0; c < yard.controllers().size(); c++) {
            cablings.add(new Cabling.All(measured, c, all));
        }
        if (!all) {
            cablings.forEach(ofController -> ofController.byStrings.replaceAll((strings, cables) -> cables.stream()
                    .sorted(Comparator.comparingDouble(Cabling::cost))
                    .toList()));
        }
    }

    /** The cheapest plan, or null where there is none. */
    static @Nullable Tried cheapest(Yard yard, Ground ground) {
        EveryPlan every = new EveryPlan(yard, ground, false);
        List<Tried> last = new ArrayList<>();
        every.visitor = plan -> {
            every.best = plan.cost;
            last.add(plan);
        };
        every.cables(0, new ArrayList<>(), 0);
        return last.isEmpty() ? null : last.get(last.size() - 1);
    }

    /** Every plan, each once; plans that differ only in ports and streams count as one. */
    static void all(Yard yard, Ground ground, Visitor visitor) {
        EveryPlan every = new EveryPlan(yard, ground, true);
        every.visitor = visitor;
        every.cables(0, new ArrayList<>(), 0);
    }

    static Layout layout(Yard yard, Ground ground, Tried plan) {
        Measured measured = new Measured(yard, ground);
        Map<Integer, Integer> jacks = new HashMap<>();
        return new Layout(plan.cables.stream()
                .map(cable -> cable.run(measured, jacks.merge(cable.controller(), 1, Integer::sum)))
                .toList());
    }

    /** The cable with the first string that is not served yet is any of any controller. */
    private void cables(int served, List<Cabling> taken, double cost) {
        if (cost >= best - ROUNDING && !all) {
            return;
        }
        if (served == (1 << measured.strings.size()) - 1) {
            whole(taken, cost);
            return;
        }
        int left = ((1 << measured.strings.size()) - 1) & ~served;
        int lowest = Integer.lowestOneBit(left);
        for (int c = 0; c < cablings.size(); c++) {
            int number = c;
            Controller controller = yard.controllers().get(c);
            long jacks = taken.stream().filter(t -> t.controller() == number).count();
            if (jacks == controller.model().jacks()) {
                continue;
            }
            for (int part = left; part > 0; part = (part - 1) & left) {
                if ((part & lowest) == 0) {
                    continue;
                }
                for (Cabling cable : cablings.get(c).byStrings.getOrDefault(part, List.of())) {
                    if (cost + cable.cost() >= best - ROUNDING && !all) {
                        break;
                    }
                    taken.add(cable);
                    cables(served | part, taken, cost + cable.cost());
                    taken.remove(taken.size() - 1);
                }
            }
        }
    }

    private void whole(List<Cabling> cables, double wired) {
        double cost = wired;
        int boards = 0;
        Set<Integer> spots = new HashSet<>();
        int[] models = new int[measured.offers.size()];
        int[] atSpot = new int[measured.spots.size()];
        double[] amps = new double[measured.spots.size()];
        long[] channels = new long[yard.controllers().size()];
        for (Cabling cable : cables) {
            channels[cable.controller()] += cable.channels();
            for (Hanging board : cable.boards()) {
                boards++;
                if (spots.add(board.spot())) {
                    cost += measured.spots.get(board.spot()).price();
                }
                atSpot[board.spot()]++;
                amps[board.spot()] += board.amps();
                if (++models[board.model()] > measured.offers.get(board.model()).have()) {
                    cost += measured.offers.get(board.model()).price();
                }
            }
        }
        if (boards < yard.boardCount().least() || boards > yard.boardCount().most()) {
            return;
        }
        for (int m = 0; m < models.length; m++) {
            if (models[m] > measured.offers.get(m).most()) {
                return;
            }
        }
        for (int p = 0; p < atSpot.length; p++) {
            if (atSpot[p] > measured.spots.get(p).most()
                    || amps[p] > measured.spots.get(p).ampsMost() + ROUNDING) {
                return;
            }
        }
        for (int c = 0; c < channels.length; c++) {
            if (!channelsHold(yard.controllers().get(c), channels[c])) {
                return;
            }
        }
        if (all || cost < best - ROUNDING) {
            visitor.visit(new Tried(List.copyOf(cables), cost));
        }
    }

    private static boolean channelsHold(Controller controller, long channels) {
        long last = controller.firstChannel() + channels - 1;
        long universe =
                controller.firstUniverse() + (channels - 1) / controller.model().universeSlots();
        return channels == 0 || (last <= controller.model().channelMost() && universe <= UNIVERSE_MOST);
    }
}
