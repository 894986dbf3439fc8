package streamwright.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import streamwright.plan.Board;
import streamwright.plan.Cable;
import streamwright.plan.Plan;
import streamwright.plan.PortUse;
import streamwright.plan.StringUse;
import streamwright.yard.Controller;
import streamwright.yard.PixelString;
import streamwright.yard.Point;
import streamwright.yard.Yard;

/** A plan put beside the yard once, for all rules: names resolved, lengths, stretches and streams worked out. */
final class Survey {
    final Yard yard;
    final Plan plan;
    final Index index;
    final Lengths lengths;
    final List<SeenBoard> boards;
    final List<SeenCable> cables;
    final List<SeenStream> streams;
    private final Map<String, SeenBoard> boardsByName = new HashMap<>();

    private final Map<OnJack, SeenStream> streamsByPlace = new HashMap<>();

    private Survey(Yard yard, Plan plan) {
        this.yard = yard;
        this.plan = plan;
        index = new Index(yard);
        lengths = new Lengths(yard);
        boards = boards(yard, plan, index, lengths);
        boards.forEach(board -> boardsByName.putIfAbsent(board.label(), board));
        cables = plan.cables().stream()
                .map(cable -> cable(cable, index, lengths, boardsByName))
                .toList();
        streams = Streams.of(plan, index, boards);
        streams.forEach(stream -> streamsByPlace.put(new OnJack(stream.jack(), stream.number()), stream));
    }

    private record OnJack(Jack jack, int stream) {}

    static Survey of(Yard yard, Plan plan) {
        return new Survey(yard, plan);
    }

    /** The first board of a name, or null. */
    @Nullable
    SeenBoard board(String name) {
        return boardsByName.get(name);
    }

    /** Null where it carries nothing and no cable lists it. */
    @Nullable
    SeenStream stream(Jack jack, int number) {
        return streamsByPlace.get(new OnJack(jack, number));
    }

    private static List<SeenBoard> boards(Yard yard, Plan plan, Index index, Lengths lengths) {
        Places places = new Places(yard);
        Power power = new Power(yard, lengths);
        List<SeenBoard> boards = new ArrayList<>();
        for (Board board : plan.boards()) {
            SeenBoard bare = new SeenBoard(board, index.offers.get(board.model()), places.of(board), List.of());
            List<SeenPort> ports = board.ports().stream()
                    .map(use -> port(bare, use, index, lengths, power))
                    .toList();
            boards.add(new SeenBoard(board, bare.offer(), bare.place(), ports));
        }
        return List.copyOf(boards);
    }

    private static SeenPort port(SeenBoard board, PortUse use, Index index, Lengths lengths, Power power) {
        String label = board.label() + " port " + use.port();
        List<SeenString> strings = new ArrayList<>();
        Point end = board.at();
        for (StringUse on : use.strings()) {
            StringKey key = new StringKey(on.prop(), on.string());
            PixelString string = index.string(key);
            double way = string == null || end == null ? Double.NaN : lengths.lead(end, string.feed());
            strings.add(
                    new SeenString(index.label(key), on, index.props.get(on.prop()), string, strings.isEmpty(), way));
            end = string == null ? null : string.tail();
        }
        return new SeenPort(label, use, List.copyOf(strings), power.fed(label, board.at(), strings, use.injections()));
    }

    private static SeenCable cable(Cable cable, Index index, Lengths lengths, Map<String, SeenBoard> byName) {
        Controller controller = index.controllers.get(cable.controller());
        List<Optional<SeenBoard>> boards = cable.boards().stream()
                .map(name -> Optional.ofNullable(byName.get(name)))
                .toList();
        List<Double> ways = new ArrayList<>();
        Point from = controller == null ? null : controller.at();
        for (Optional<SeenBoard> board : boards) {
            Point to = board.map(SeenBoard::at).orElse(null);
            ways.add(from == null || to == null ? Double.NaN : lengths.hop(from, to));
            from = to;
        }
        return new SeenCable(cable, controller, boards, List.copyOf(ways));
    }
}
