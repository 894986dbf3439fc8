package streamwright.solve;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import streamwright.layout.Layout;
import streamwright.yard.Address;
import streamwright.yard.BoardModel;
import streamwright.yard.Controller;
import streamwright.yard.Point;

/**
 * A cable with its boards in order.
 *
 * @param cost of trunk, cable, wires and injections; boards and spots are paid for by the plan
 */
record Cabling(int controller, int strings, List<Hanging> boards, long channels, double cost) {

    Layout.Run run(Measured yard, int jack) {
        return new Layout.Run(
                yard.yard.controllers().get(controller),
                jack,
                boards.stream().map(board -> board.hung(yard)).toList());
    }

    /** What tells boards apart to rules that span cables: where, which, and how many amps. */
    private record Seen(int spot, int model, double amps) {}

    /** All cables that a controller can have, by the strings they serve. */
    static final class All {
        private final Measured yard;
        private final int number;
        private final Controller controller;
        private final boolean orders;
        private final Hanging.All hangings;
        private final boolean ampsMatter;
        private final Map<List<Integer>, List<List<Integer>>> ways = new HashMap<>();
        private final Map<Integer, List<Open>> open = new HashMap<>();
        final Map<Integer, List<Cabling>> byStrings = new HashMap<>();

        /** Boards on one cable, in no order yet. */
        private record Open(List<Hanging> boards, Hanging.Load load, double cost) {}

        /** @param orders whether all are wanted, or of those that nothing else tells apart only the cheapest */
        All(Measured yard, int number, boolean orders) {
            this.yard = yard;
            this.number = number;
            this.orders = orders;
            controller = yard.yard.controllers().get(number);
            hangings = new Hanging.All(yard, controller, orders);
            ampsMatter = yard.spots.stream().anyMatch(spot -> Double.isFinite(spot.ampsMost()));
            open.put(
                    0,
                    List.of(new Open(
                            List.of(), Hanging.Load.none(controller.model().streams()), 0)));
            for (int strings = 1; strings < 1 << yard.strings.size(); strings++) {
                open.put(strings, opened(strings));
                byStrings.put(strings, closed(strings));
            }
        }

        /** The board with the lowest string joins a cable with the others. */
        private List<Open> opened(int strings) {
            Map<Object, Open> met = new LinkedHashMap<>();
            int lowest = Integer.lowestOneBit(strings);
            for (int part = strings; part > 0; part = (part - 1) & strings) {
                if ((part & lowest) == 0) {
                    continue;
                }
                for (Hanging board : hangings.byStrings.getOrDefault(part, List.of())) {
                    for (Open others : open.getOrDefault(strings & ~part, List.of())) {
                        Hanging.Load load = others.load.with(board.load(), yard, controller);
                        List<Hanging> boards = new ArrayList<>(others.boards);
                        boards.add(board);
                        if (load == null || boards.size() > controller.model().boardsPerCable() || !toldApart(boards)) {
                            continue;
                        }
                        Open joined = new Open(boards, load, others.cost + board.cost());
                        Object key = List.of(load, likeness(boards));
                        met.merge(key, joined, (a, b) -> b.cost < a.cost ? b : a);
                    }
                }
            }
            return List.copyOf(met.values());
        }

        private Object likeness(List<Hanging> boards) {
            return orders
                    ? List.copyOf(boards)
                    : boards.stream()
                            .map(b -> new Seen(b.spot(), b.model(), ampsMatter ? b.amps() : 0))
                            .collect(Collectors.groupingBy(seen -> seen, Collectors.counting()));
        }

        private boolean toldApart(List<Hanging> boards) {
            List<BoardModel> models = boards.stream()
                    .map(board -> yard.offers.get(board.model()).model())
                    .toList();
            return (boards.size() == 1 || models.stream().allMatch(BoardModel::addressed))
                    && ids(models, 0, new ArrayList<>());
        }

        private static boolean ids(List<BoardModel> models, int next, List<Integer> given) {
            if (next == models.size()) {
                return true;
            }
            Address address = models.get(next).address();
            int least = address instanceof Address.Switches s ? s.least() : 0;
            int most = address instanceof Address.Switches s ? s.most() : 0;
            if (address instanceof Address.Rotary rotary) {
                least = rotary.least();
                most = rotary.most();
            }
            for (int id = least; id <= most; id++) {
                if (!given.contains(id)) {
                    given.add(id);
                    boolean found = ids(models, next + 1, given);
                    given.remove(given.size() - 1);
                    if (found) {
                        return true;
                    }
                }
            }
            return false;
        }

        private List<Cabling> closed(int strings) {
            Map<Object, Cabling> met = new LinkedHashMap<>();
            for (Open cable : open.getOrDefault(strings, List.of())) {
                List<Integer> spots = cable.boards.stream().map(Hanging::spot).toList();
                for (List<Integer> way : ways.computeIfAbsent(spots, this::ways)) {
                    List<Hanging> boards = way.stream().map(cable.boards::get).toList();
                    double cost = cable.cost
                            + yard.yard.costs().cable()
                            + length(boards.stream().map(Hanging::spot).toList())
                                    * yard.yard.costs().trunk();
                    Cabling whole = new Cabling(number, strings, boards, cable.load.channels(), cost);
                    Object key = orders ? boards : List.of(whole.channels, likeness(boards));
                    met.merge(key, whole, (a, b) -> b.cost < a.cost ? b : a);
                }
            }
            return List.copyOf(met.values());
        }

        /** Orders of these spots in which the cable may visit them: all, or only the shortest. */
        private List<List<Integer>> ways(List<Integer> spots) {
            List<List<Integer>> all = new ArrayList<>();
            permute(spots, new ArrayList<>(), all);
            if (orders || all.isEmpty()) {
                return all;
            }
            List<Integer> best = all.get(0);
            for (List<Integer> way : all) {
                if (length(way.stream().map(spots::get).toList())
                        < length(best.stream().map(spots::get).toList())) {
                    best = way;
                }
            }
            return List.of(best);
        }

        private void permute(List<Integer> spots, List<Integer> order, List<List<Integer>> all) {
            if (order.size() == spots.size()) {
                List<Integer> visited = order.stream().map(spots::get).toList();
                if (yard.cableHolds(length(visited)) && hopsHold(visited)) {
                    all.add(List.copyOf(order));
                }
                return;
            }
            for (int next = 0; next < spots.size(); next++) {
                if (!order.contains(next)) {
                    order.add(next);
                    permute(spots, order, all);
                    order.remove(order.size() - 1);
                }
            }
        }

        private double hop(List<Integer> visited, int to) {
            Point from = to == 0
                    ? controller.at()
                    : yard.spots.get(visited.get(to - 1)).at();
            return yard.hop(from, yard.spots.get(visited.get(to)).at());
        }

        private boolean hopsHold(List<Integer> visited) {
            for (int to = 0; to < visited.size(); to++) {
                if (!yard.hopHolds(hop(visited, to))) {
                    return false;
                }
            }
            return true;
        }

        private double length(List<Integer> visited) {
            double length = 0;
            for (int to = 0; to < visited.size(); to++) {
                length += hop(visited, to);
            }
            return length;
        }
    }
}
