package streamwright.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import streamwright.physics.Ground;
import streamwright.physics.Runs;
import streamwright.yard.PixelKind;
import streamwright.yard.PixelString;
import streamwright.yard.Point;
import streamwright.yard.Prop;
import streamwright.yard.Rules;

/**
 * Where a cable's strings lie on its streams: in cable order, on a board in the order of its ports.
 *
 * @param boards for each board of the cable its ports, by number
 * @param streams for each stream that carries something its length and kind
 */
record Placement(List<List<Port>> boards, SortedMap<Integer, Stream> streams) {

    /** A port from its start pixel on, nulls included. */
    record Port(Layout.Chain chain, long startPixel, List<Placed> strings) {}

    /** A string behind its wire: length with slack, nulls in it, position of its first lit pixel. */
    record Placed(PixelString string, PixelKind kind, double length, int nulls, long firstPixel) {}

    /** The position of its last used pixel, and the kind of its first string. */
    record Stream(PixelKind kind, long pixels) {}

    static Placement of(Layout.Run run, Map<String, PixelKind> kinds, Rules rules, Ground ground) {
        SortedMap<Integer, Stream> streams = new TreeMap<>();
        List<List<Port>> boards = new ArrayList<>();
        for (Layout.Hung board : run.boards()) {
            List<Port> ports = new ArrayList<>();
            for (Layout.Chain chain : byPort(board.ports())) {
                PixelKind kind = kind(kinds, chain.strings().get(0));
                Stream before = streams.getOrDefault(chain.stream(), new Stream(kind, 0));
                List<Placed> placed = placed(board.spot().at(), chain, before.pixels, kinds, rules, ground);
                Placed last = placed.get(placed.size() - 1);
                ports.add(new Port(chain, before.pixels + 1, placed));
                long end = last.firstPixel + last.string.pixels() - 1;
                streams.put(chain.stream(), new Stream(before.kind, end));
            }
            boards.add(ports);
        }
        return new Placement(boards, streams);
    }

    private static List<Layout.Chain> byPort(List<Layout.Chain> chains) {
        return chains.stream()
                .sorted(Comparator.comparingInt(Layout.Chain::port))
                .toList();
    }

    private static List<Placed> placed(
            Point board, Layout.Chain chain, long before, Map<String, PixelKind> kinds, Rules rules, Ground ground) {
        List<Placed> placed = new ArrayList<>();
        Point from = board;
        long end = before;
        for (PixelString string : chain.strings()) {
            double length = Runs.lead(rules, ground.path(from, string.feed()));
            int nulls = placed.isEmpty() ? Runs.leadNulls(rules, length) : Runs.jumperNulls(rules, length);
            placed.add(new Placed(string, kind(kinds, string), length, nulls, end + nulls + 1));
            end += nulls + string.pixels();
            from = string.tail();
        }
        return placed;
    }

    private static PixelKind kind(Map<String, PixelKind> kinds, PixelString string) {
        PixelKind kind = kinds.get(string.prop());
        if (kind == null) {
            throw new IllegalArgumentException("the yard has no pixel strings named " + string.prop());
        }
        return kind;
    }

    /** Kinds by prop, of a yard's props that have strings. */
    static Map<String, PixelKind> kinds(List<Prop> props) {
        Map<String, PixelKind> kinds = new HashMap<>();
        props.forEach(prop -> {
            if (prop.pixel() != null) {
                kinds.put(prop.id(), prop.pixel());
            }
        });
        return kinds;
    }
}
