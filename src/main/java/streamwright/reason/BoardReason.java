package streamwright.reason;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import streamwright.plan.Board;
import streamwright.plan.Cable;
import streamwright.plan.PortUse;
import streamwright.plan.Reason;
import streamwright.plan.Reason.About;
import streamwright.plan.Reason.Because;
import streamwright.plan.Rule;
import streamwright.plan.StringUse;
import streamwright.yard.Spot;

/** Why a board hangs where it hangs: its ports, its hop, its amps, its place. */
final class BoardReason {
    private BoardReason() {}

    /** @param told those of the outcomes that the text repeats */
    static Reason of(Facts facts, Nearby nearby, Board board, List<Outcome> outcomes, List<Outcome> told) {
        Words words = new Words(facts.yard.units());
        String place = place(facts, nearby, board);
        String id = board.boardId() == null ? "" : ", ID " + board.boardId();
        return new Reason(
                About.board(board.id()),
                board.model() + " at " + place + id,
                because(facts, board),
                outcomes.stream().map(Outcome::instead).toList(),
                words.sentence(
                        chosen(facts, words, board, place),
                        told.stream().map(Outcome::instead).toList()));
    }

    private static List<Because> because(Facts facts, Board board) {
        List<Because> because = new ArrayList<>();
        facts.model(board)
                .filter(model -> !model.ports().isEmpty())
                .ifPresent(model -> because.add(Because.rule(
                        Rule.PORT_ONCE, board.ports().size(), model.ports().size())));
        Optional<Double> hop = hop(facts, board);
        hop.ifPresent(length -> because.add(
                Because.rule(Rule.HOP_LENGTH, length, facts.yard.rules().hopMost())));
        facts.model(board)
                .filter(model -> !model.ports().isEmpty() && Double.isFinite(model.ampsMost()))
                .ifPresent(model -> because.add(Because.rule(Rule.BOARD_AMPS, amps(facts, board), model.ampsMost())));
        facts.yard.spots().stream()
                .filter(spot -> spot.id() != null && spot.id().equals(board.spot()) && spot.most() < Integer.MAX_VALUE)
                .forEach(spot -> because.add(Because.rule(Rule.SPOT_MOST, there(facts, spot), spot.most())));
        because.add(Because.cost(
                facts.price(board) + hop.orElse(0.0) * facts.yard.costs().trunk() + facts.wires(board)));
        return because;
    }

    private static String chosen(Facts facts, Words words, Board board, String place) {
        String ports = facts.model(board)
                .filter(model -> !model.ports().isEmpty())
                .map(model ->
                        " with " + board.ports().size() + " of " + model.ports().size() + " ports used")
                .orElse("");
        String hop = hop(facts, board)
                .map(length -> (ports.isEmpty() ? "" : ",") + " at the end of a hop of " + words.length(length))
                .orElse("");
        return "Board " + board.id() + " (" + board.model() + ") hangs at " + place + ports + hop;
    }

    private static String place(Facts facts, Nearby nearby, Board board) {
        return facts.yard.spots().stream()
                .filter(spot -> spot.id() != null && spot.id().equals(board.spot()))
                .findFirst()
                .map(nearby::name)
                .orElseGet(() -> nearby.name(Spot.unnamed(board.at())));
    }

    private static Optional<Double> hop(Facts facts, Board board) {
        return facts.cable(board).flatMap(cable -> hop(cable, board.id()));
    }

    private static Optional<Double> hop(Cable cable, String board) {
        int at = cable.boards().indexOf(board);
        return at < 0 || at >= cable.hops().size()
                ? Optional.empty()
                : Optional.of(cable.hops().get(at));
    }

    private static int there(Facts facts, Spot spot) {
        return (int) facts.plan.boards().stream()
                .filter(board -> spot.id() != null && spot.id().equals(board.spot()))
                .count();
    }

    /** Of all its pixels at the show's brightness, injected ones included. */
    private static double amps(Facts facts, Board board) {
        double amps = 0;
        for (PortUse port : board.ports()) {
            for (StringUse string : port.strings()) {
                amps += string.pixels() * facts.amps(string.prop()) * facts.yard.brightness();
            }
        }
        return amps;
    }
}
