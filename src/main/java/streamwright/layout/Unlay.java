package streamwright.layout;

import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import streamwright.plan.Board;
import streamwright.plan.Cable;
import streamwright.plan.Outputs;
import streamwright.plan.Plan;
import streamwright.plan.PortUse;
import streamwright.plan.StringUse;
import streamwright.yard.BoardModel;
import streamwright.yard.Controller;
import streamwright.yard.PixelKind;
import streamwright.yard.PixelString;
import streamwright.yard.Prop;
import streamwright.yard.Spot;
import streamwright.yard.Yard;

/** The decisions of an existing plan, so that one of them can be changed and the rest follow anew. */
public final class Unlay {
    private record Key(String prop, int number) {}

    private final Plan plan;
    private final Map<String, Board> boards;
    private final Map<String, Controller> controllers;
    private final Map<String, BoardModel> models;
    private final Map<String, Spot> spots = new HashMap<>();
    private final Map<Key, PixelString> strings;
    private final Map<String, Prop> props;
    private final List<PixelKind> kinds;

    private Unlay(Yard yard, Plan plan) {
        this.plan = plan;
        boards = plan.boards().stream().collect(Collectors.toMap(Board::id, board -> board, (one, again) -> one));
        controllers = yard.controllers().stream().collect(Collectors.toMap(Controller::id, c -> c));
        models = yard.boards().stream()
                .map(offer -> offer.model())
                .collect(Collectors.toMap(BoardModel::name, model -> model, (one, again) -> one));
        yard.spots().forEach(spot -> spots.put(Objects.requireNonNull(spot.id()), spot));
        kinds = yard.streamKinds();
        props = yard.props().stream().collect(Collectors.toMap(Prop::id, prop -> prop));
        strings = yard.strings().stream()
                .collect(Collectors.toMap(string -> new Key(string.prop(), string.number()), string -> string));
    }

    /**
     * A plan's layout, names and IDs kept. What the yard no longer knows is left out: strings, controllers, board
     * models, boards of which nothing remains. A board at a place that the yard does not name stands at an unnamed spot.
     */
    public static Layout of(Yard yard, Plan plan) {
        return new Unlay(yard, plan).layout();
    }

    private Layout layout() {
        return new Layout(plan.cables().stream().flatMap(this::run).toList());
    }

    private Stream<Layout.Run> run(Cable cable) {
        Controller controller = controllers.get(cable.controller());
        List<Layout.Hung> hung = cable.boards().stream()
                .map(boards::get)
                .filter(Objects::nonNull)
                .flatMap(this::hung)
                .toList();
        return controller == null || hung.isEmpty()
                ? Stream.empty()
                : Stream.of(new Layout.Run(controller, cable.jack(), hung));
    }

    private Stream<Layout.Hung> hung(Board board) {
        BoardModel model = models.get(board.model());
        List<Layout.Chain> ports = board.ports().stream()
                .sorted(Comparator.comparingInt(PortUse::port))
                .flatMap(this::chain)
                .toList();
        List<Prop> panels = board.panels().stream()
                .flatMap(use -> Stream.ofNullable(props.get(use.prop())))
                .filter(prop -> prop.panel() != null)
                .toList();
        Layout.Block block = board.outputs() == null ? null : block(board, board.outputs());
        if (model == null || (ports.isEmpty() && panels.isEmpty() && block == null)) {
            return Stream.empty();
        }
        Spot named = board.spot() == null ? null : spots.get(board.spot());
        Spot spot = named == null ? Spot.unnamed(board.at()) : named;
        return Stream.of(new Layout.Hung(board.id(), board.boardId(), model, spot, ports, block, panels));
    }

    /** The outputs of each prop that the yard still knows; null where it knows none of them. */
    private Layout.@Nullable Block block(Board board, Outputs outputs) {
        Map<String, Layout.Lines> lines = new LinkedHashMap<>();
        for (Outputs.Line line : outputs.lines()) {
            Prop prop = props.get(line.prop());
            if (prop != null && prop.outputs() > 0) {
                lines.putIfAbsent(prop.id(), new Layout.Lines(prop, line.output() - line.number() + 1));
            }
        }
        return lines.isEmpty()
                ? null
                : new Layout.Block(outputs.stream(), List.copyOf(lines.values()), kind(board, outputs.stream()));
    }

    /** Of a stream as its cable tells it; where that names none of the yard's, the yard's first. */
    private PixelKind kind(Board board, int stream) {
        return plan.cables().stream()
                .filter(cable -> cable.controller().equals(board.controller()) && cable.jack() == board.jack())
                .flatMap(cable -> cable.streams().stream())
                .filter(use -> use.stream() == stream)
                .flatMap(use -> kinds.stream().filter(kind -> kind.name().equals(use.pixel())))
                .findFirst()
                .orElse(kinds.get(0));
    }

    private Stream<Layout.Chain> chain(PortUse port) {
        List<PixelString> known = port.strings().stream().flatMap(this::string).toList();
        return known.isEmpty() ? Stream.empty() : Stream.of(new Layout.Chain(port.port(), port.stream(), known));
    }

    private Stream<PixelString> string(StringUse use) {
        return Stream.ofNullable(strings.get(new Key(use.prop(), use.string())));
    }
}
