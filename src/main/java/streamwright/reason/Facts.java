package streamwright.reason;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import streamwright.plan.Board;
import streamwright.plan.Cable;
import streamwright.plan.Plan;
import streamwright.plan.PortUse;
import streamwright.plan.StreamUse;
import streamwright.plan.StringUse;
import streamwright.yard.BoardModel;
import streamwright.yard.BoardOffer;
import streamwright.yard.Controller;
import streamwright.yard.PixelKind;
import streamwright.yard.PixelString;
import streamwright.yard.Prop;
import streamwright.yard.Yard;

/** A plan's figures as the audit restates them, by the things that they are about. */
final class Facts {
    private record Key(String prop, int string) {}

    /** A string on its port; {@code place} counts along the chain from 0. */
    record Use(Board board, PortUse port, int place) {
        StringUse string() {
            return port.strings().get(place);
        }
    }

    final Yard yard;
    final Plan plan;
    private final Map<Key, Use> uses = new HashMap<>();
    private final Map<String, Cable> cables = new HashMap<>();
    private final Map<String, Double> amps = new HashMap<>();

    Facts(Yard yard, Plan plan) {
        this.yard = yard;
        this.plan = plan;
        for (Board board : plan.boards()) {
            for (PortUse port : board.ports()) {
                for (int s = 0; s < port.strings().size(); s++) {
                    StringUse use = port.strings().get(s);
                    uses.putIfAbsent(new Key(use.prop(), use.string()), new Use(board, port, s));
                }
            }
        }
        for (Prop prop : yard.props()) {
            PixelKind kind = prop.pixel();
            if (kind != null) {
                amps.put(prop.id(), kind.amps());
            }
        }
        plan.cables().forEach(cable -> cables.putIfAbsent(key(cable.controller(), cable.jack()), cable));
    }

    private static String key(String controller, int jack) {
        return controller + " jack " + jack;
    }

    Optional<Use> use(PixelString string) {
        return Optional.ofNullable(uses.get(new Key(string.prop(), string.number())));
    }

    Optional<Cable> cable(Board board) {
        return Optional.ofNullable(cables.get(key(board.controller(), board.jack())));
    }

    Optional<StreamUse> stream(Use use) {
        return stream(use.board, use.port.stream());
    }

    Optional<StreamUse> stream(Board board, int number) {
        return cable(board)
                .flatMap(cable -> cable.streams().stream()
                        .filter(stream -> stream.stream() == number)
                        .findFirst());
    }

    /** The stream that is fullest by share, of some cables. */
    static Optional<StreamUse> fullest(List<Cable> cables) {
        return cables.stream()
                .flatMap(cable -> cable.streams().stream())
                .max(Comparator.comparingDouble(stream -> (double) stream.pixels() / Math.max(1, stream.limit())));
    }

    Optional<BoardOffer> offer(Board board) {
        return yard.boards().stream()
                .filter(offer -> offer.model().name().equals(board.model()))
                .findFirst();
    }

    Optional<BoardModel> model(Board board) {
        return offer(board).map(BoardOffer::model);
    }

    Optional<Controller> controller(Cable cable) {
        return yard.controllers().stream()
                .filter(controller -> controller.id().equals(cable.controller()))
                .findFirst();
    }

    /** Of one pixel of a prop with all channels full; 0 where the yard has no such pixels. */
    double amps(String prop) {
        return amps.getOrDefault(prop, 0.0);
    }

    /** What one board fewer of its model would save: nothing while owned ones suffice. */
    double price(Board board) {
        long used = plan.boards().stream()
                .filter(other -> other.model().equals(board.model()))
                .count();
        return offer(board)
                .filter(offer -> used > offer.have())
                .map(BoardOffer::price)
                .orElse(0.0);
    }

    /** Of the leads and jumpers of a board. */
    double wires(Board board) {
        double money = 0;
        for (PortUse port : board.ports()) {
            for (int s = 0; s < port.strings().size(); s++) {
                money += wire(port.strings().get(s), s);
            }
        }
        return money;
    }

    /** Of one lead (at the port) or jumper. */
    double wire(StringUse string, int place) {
        return string.length()
                * (place == 0 ? yard.costs().lead() : yard.costs().jumper());
    }
}
