package streamwright.plan.change;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import streamwright.plan.Board;
import streamwright.plan.Cable;
import streamwright.plan.Injection;
import streamwright.plan.Outputs;
import streamwright.plan.PanelUse;
import streamwright.plan.Plan;
import streamwright.plan.PortUse;
import streamwright.plan.StreamUse;
import streamwright.plan.StringUse;

/** A plan as a crew meets it: what is plugged where, which boards hang, which stretches of trunk are laid. */
final class Wiring {
    /** A board by its name, and its model: another model under the same name is another board. */
    record BoardKey(String id, String model) {}

    /** A string's place. */
    record Seat(BoardKey board, int port, @Nullable StringId behind, StringUse use) {}

    /** What a hop ends at: a board, or a controller's jack. */
    record End(@Nullable BoardKey board, @Nullable String controller, int jack) {
        static End of(BoardKey board) {
            return new End(board, null, 0);
        }

        @Override
        public String toString() {
            return board != null ? board.id() : controller + " " + jack;
        }
    }

    /** A hop in the direction of its data; equality of hops is that of {@link #ends}. */
    record Hop(End from, End to, double length) {
        Set<End> ends() {
            return Set.of(from, to);
        }
    }

    record StreamKey(String controller, int jack, int stream) {}

    record PortKey(BoardKey board, int port) {}

    /** Several of a string in a plan that breaks rules. */
    final Map<StringId, List<Seat>> seats = new LinkedHashMap<>();

    final Map<BoardKey, Board> boards = new LinkedHashMap<>();
    final Map<Set<End>, Hop> hops = new LinkedHashMap<>();
    final Map<PortKey, PortUse> ports = new LinkedHashMap<>();
    final Map<StreamKey, StreamUse> streams = new LinkedHashMap<>();
    final Map<StreamKey, Set<StringId>> carried = new LinkedHashMap<>();
    final Map<Injection, BoardKey> injections = new LinkedHashMap<>();

    /** Of each board what its data passes on the way from the jack, itself last. */
    final Map<BoardKey, List<Hop>> ways = new LinkedHashMap<>();

    Wiring(Plan plan) {
        Map<String, BoardKey> byName = new LinkedHashMap<>();
        for (Board board : plan.boards()) {
            BoardKey key = new BoardKey(board.id(), board.model());
            if (byName.putIfAbsent(board.id(), key) == null) {
                boards.put(key, board);
            }
            board.ports().forEach(port -> port(key, board, port));
            carryFixtures(board);
        }
        plan.cables().forEach(cable -> cable(cable, byName));
    }

    private void port(BoardKey key, Board board, PortUse port) {
        ports.putIfAbsent(new PortKey(key, port.port()), port);
        StringId behind = null;
        for (StringUse use : port.strings()) {
            StringId string = new StringId(use.prop(), use.string());
            seats.computeIfAbsent(string, s -> new ArrayList<>()).add(new Seat(key, port.port(), behind, use));
            carry(board, port.stream(), string);
            behind = string;
        }
        port.injections().forEach(injection -> injections.put(injection, key));
    }

    /** Props of the board's outputs and panels, each as its first string. */
    static Set<StringId> fixtures(Board board) {
        Set<StringId> fixtures = new LinkedHashSet<>();
        if (board.outputs() != null) {
            board.outputs().lines().forEach(line -> fixtures.add(new StringId(line.prop(), 1)));
        }
        board.panels().forEach(panel -> fixtures.add(new StringId(panel.prop(), 1)));
        return fixtures;
    }

    private void carryFixtures(Board board) {
        Outputs outputs = board.outputs();
        if (outputs != null) {
            outputs.lines().forEach(line -> carry(board, outputs.stream(), new StringId(line.prop(), 1)));
        }
        for (PanelUse panel : board.panels()) {
            panel.parts().forEach(part -> carry(board, part.stream(), new StringId(panel.prop(), 1)));
        }
    }

    private void carry(Board board, int stream, StringId string) {
        carried.computeIfAbsent(new StreamKey(board.controller(), board.jack(), stream), s -> new LinkedHashSet<>())
                .add(string);
    }

    private void cable(Cable cable, Map<String, BoardKey> byName) {
        End from = new End(null, cable.controller(), cable.jack());
        List<Hop> way = new ArrayList<>();
        for (int i = 0; i < cable.boards().size(); i++) {
            String name = cable.boards().get(i);
            BoardKey key = byName.get(name);
            // a board that the plan does not describe hangs nowhere, and its wire is dead
            End to = End.of(key == null ? new BoardKey(name, "") : key);
            if (!from.equals(to)) {
                double length = i < cable.hops().size() ? cable.hops().get(i) : 0;
                Hop hop = new Hop(from, to, length);
                hops.putIfAbsent(hop.ends(), hop);
                way.add(hop);
                if (key != null) {
                    ways.putIfAbsent(key, List.copyOf(way));
                }
            }
            from = to;
        }
        for (StreamUse stream : cable.streams()) {
            streams.putIfAbsent(new StreamKey(cable.controller(), cable.jack(), stream.stream()), stream);
        }
    }

    Set<StringId> carried(StreamKey stream) {
        return carried.getOrDefault(stream, Set.of());
    }

    static List<StringId> strings(PortUse port) {
        return port.strings().stream()
                .map(use -> new StringId(use.prop(), use.string()))
                .toList();
    }
}
