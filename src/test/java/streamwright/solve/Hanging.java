package streamwright.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import streamwright.layout.Layout;
import streamwright.yard.BoardModel;
import streamwright.yard.Controller;
import streamwright.yard.PixelKind;

/**
 * A board at a spot with strings on its ports.
 *
 * @param strings a bit for each
 * @param ports of each link, 0-based
 * @param streams of each link, 0-based
 * @param load of each stream of the cable: its pixels from this board, and their kind
 * @param cost of all wires and injections
 */
record Hanging(
        int spot,
        int model,
        int strings,
        List<Measured.Link> links,
        List<Integer> ports,
        List<Integer> streams,
        Load load,
        double cost) {

    /** What the streams of a cable carry; a kind is null while a stream is free. */
    record Load(List<Long> pixels, List<PixelKind> kinds) {
        static final PixelKind FREE = new PixelKind("free", 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, "");

        static Load none(int streams) {
            Long[] zero = new Long[streams];
            PixelKind[] free = new PixelKind[streams];
            Arrays.fill(zero, 0L);
            Arrays.fill(free, FREE);
            return new Load(List.of(zero), List.of(free));
        }

        /** Both together, or null where kinds mix or a stream overflows. */
        @Nullable
        Load with(Load other, Measured yard, Controller controller) {
            List<Long> sum = new ArrayList<>();
            List<PixelKind> both = new ArrayList<>();
            for (int s = 0; s < pixels.size(); s++) {
                PixelKind mine = kinds.get(s);
                PixelKind theirs = other.kinds.get(s);
                PixelKind kind = mine.equals(FREE) ? theirs : mine;
                long all = pixels.get(s) + other.pixels.get(s);
                if ((!theirs.equals(FREE) && !theirs.equals(kind))
                        || (!kind.equals(FREE) && all > yard.limit(controller, kind))) {
                    return null;
                }
                sum.add(all);
                both.add(kind);
            }
            return new Load(sum, both);
        }

        long channels() {
            long channels = 0;
            for (int s = 0; s < pixels.size(); s++) {
                channels += pixels.get(s) * kinds.get(s).channels();
            }
            return channels;
        }
    }

    double amps() {
        return links.stream().mapToDouble(Measured.Link::amps).sum();
    }

    Layout.Hung hung(Measured yard) {
        List<Layout.Chain> chains = new ArrayList<>();
        for (int l = 0; l < links.size(); l++) {
            chains.add(new Layout.Chain(
                    ports.get(l) + 1,
                    streams.get(l) + 1,
                    links.get(l).strings().stream().map(yard.strings::get).toList()));
        }
        return new Layout.Hung(yard.offers.get(model).model(), yard.spots.get(spot), chains);
    }

    /** All boards that a cable of a controller can have, by the strings they carry. */
    static final class All {
        private final Measured yard;
        private final Controller controller;
        private final boolean orders;
        final Map<Integer, List<Hanging>> byStrings = new HashMap<>();

        private int spot;
        private int model;
        private List<Measured.Link> links = List.of();
        private final Map<Object, Hanging> met = new LinkedHashMap<>();

        /** @param orders whether boards that differ in the orders of their strings alone are told apart */
        All(Measured yard, Controller controller, boolean orders) {
            this.yard = yard;
            this.controller = controller;
            this.orders = orders;
            for (spot = 0; spot < yard.spots.size(); spot++) {
                for (model = 0; model < yard.offers.size(); model++) {
                    links = yard.links(spot, yard.offers.get(model).model());
                    met.clear();
                    share(0, new ArrayList<>(), new ArrayList<>());
                    met.values()
                            .forEach(hanging -> byStrings
                                    .computeIfAbsent(hanging.strings, strings -> new ArrayList<>())
                                    .add(hanging));
                }
            }
        }

        /** Takes on one link more, later in the list than those before it, on each stream. */
        private void share(int from, List<Measured.Link> taken, List<Integer> streams) {
            if (!taken.isEmpty()) {
                keep(taken, streams);
            }
            BoardModel board = yard.offers.get(model).model();
            if (taken.size() == board.ports().size()) {
                return;
            }
            int carried = taken.stream()
                    .mapToInt(link -> Measured.mask(link.strings()))
                    .sum();
            for (int l = from; l < links.size(); l++) {
                if ((carried & Measured.mask(links.get(l).strings())) != 0) {
                    continue;
                }
                for (int s = 0; s < controller.model().streams(); s++) {
                    taken.add(links.get(l));
                    streams.add(s);
                    if (ports(board, streams) != null) {
                        share(l + 1, taken, streams);
                    }
                    taken.remove(taken.size() - 1);
                    streams.remove(streams.size() - 1);
                }
            }
        }

        private void keep(List<Measured.Link> taken, List<Integer> streams) {
            BoardModel board = yard.offers.get(model).model();
            double amps = taken.stream().mapToDouble(Measured.Link::amps).sum();
            boolean oneSupply = taken.stream()
                            .mapToDouble(link -> link.kind().volts())
                            .distinct()
                            .count()
                    == 1;
            // without an address every port starts at pixel 1 of its stream
            boolean apart = board.addressed() || streams.stream().distinct().count() == streams.size();
            Load load = Load.none(controller.model().streams());
            for (int l = 0; l < taken.size() && load != null; l++) {
                load = load.with(alone(taken.get(l), streams.get(l)), yard, controller);
            }
            List<Integer> ports = ports(board, streams);
            if (amps > board.ampsMost() + 1e-9 || !oneSupply || !apart || load == null || ports == null) {
                return;
            }
            double cost = taken.stream().mapToDouble(Measured.Link::cost).sum();
            int strings = taken.stream()
                    .mapToInt(link -> Measured.mask(link.strings()))
                    .sum();
            Object key = orders
                    ? List.of(taken.stream().map(Measured.Link::strings).toList(), load)
                    : List.of(strings, load);
            Hanging hanging =
                    new Hanging(spot, model, strings, List.copyOf(taken), ports, List.copyOf(streams), load, cost);
            met.merge(key, hanging, (a, b) -> b.cost < a.cost ? b : a);
        }

        private Load alone(Measured.Link link, int stream) {
            Load none = Load.none(controller.model().streams());
            List<Long> pixels = new ArrayList<>(none.pixels);
            List<PixelKind> kinds = new ArrayList<>(none.kinds);
            pixels.set(stream, link.pixels());
            kinds.set(stream, link.kind());
            return new Load(pixels, kinds);
        }

        /** A port for each link that hears its stream, or null where there are too few. */
        private static @Nullable List<Integer> ports(BoardModel board, List<Integer> streams) {
            Integer[] ports = new Integer[streams.size()];
            boolean[] taken = new boolean[board.ports().size()];
            for (boolean any : new boolean[] {false, true}) {
                for (int l = 0; l < ports.length; l++) {
                    for (int p = 0; p < taken.length && ports[l] == null; p++) {
                        int heard = board.ports().get(p);
                        if (!taken[p] && (any ? heard == BoardModel.ANY : heard == streams.get(l) + 1)) {
                            taken[p] = true;
                            ports[l] = p;
                        }
                    }
                }
            }
            return Arrays.asList(ports).contains(null) ? null : List.of(ports);
        }
    }
}
