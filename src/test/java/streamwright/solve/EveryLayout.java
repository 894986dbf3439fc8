package streamwright.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import streamwright.layout.Layout;
import streamwright.physics.Ground;
import streamwright.physics.Runs;
import streamwright.yard.BoardModel;
import streamwright.yard.BoardOffer;
import streamwright.yard.Controller;
import streamwright.yard.PixelString;
import streamwright.yard.Spot;
import streamwright.yard.Yard;

/** Every layout of a tiny yard, also those that break rules: chains, boards, places, jacks, ports and streams. */
final class EveryLayout {
    private static final long MOST = 60_000;

    private final Yard yard;
    private final Ground ground;
    private final Consumer<Layout> visitor;
    private long seen;

    private record Board(BoardModel model, Spot spot, List<List<PixelString>> chains) {}

    private record Jack(Controller controller, int jack, List<Board> boards) {}

    private EveryLayout(Yard yard, Ground ground, Consumer<Layout> visitor) {
        this.yard = yard;
        this.ground = ground;
        this.visitor = visitor;
    }

    /** Shows every layout once at least; false where there are too many. */
    static boolean visit(Yard yard, Ground ground, Consumer<Layout> visitor) {
        EveryLayout every = new EveryLayout(yard, ground, visitor);
        every.chains(yard.strings(), 0, new ArrayList<>());
        return every.seen <= MOST;
    }

    private void chains(List<PixelString> strings, int next, List<List<PixelString>> chains) {
        if (seen > MOST) {
            return;
        }
        if (next == strings.size()) {
            boards(chains, 0, new ArrayList<>());
            return;
        }
        PixelString string = strings.get(next);
        for (List<PixelString> chain : List.copyOf(chains)) {
            for (int at = 0; at <= chain.size(); at++) {
                chain.add(at, string);
                chains(strings, next + 1, chains);
                chain.remove(at);
            }
        }
        chains.add(new ArrayList<>(List.of(string)));
        chains(strings, next + 1, chains);
        chains.remove(chains.size() - 1);
    }

    private boolean reaches(Spot spot, List<PixelString> chain) {
        double length =
                Runs.lead(yard.rules(), ground.path(spot.at(), chain.get(0).feed()));
        return Runs.leadNulls(yard.rules(), length) <= yard.rules().nullsMost();
    }

    private void boards(List<List<PixelString>> chains, int next, List<Board> boards) {
        if (seen > MOST) {
            return;
        }
        if (next == chains.size()) {
            jacks(boards, 0, new ArrayList<>());
            return;
        }
        List<PixelString> chain = chains.get(next);
        for (Board board : List.copyOf(boards)) {
            if (board.chains.size() < board.model.ports().size() && reaches(board.spot, chain)) {
                board.chains.add(chain);
                boards(chains, next + 1, boards);
                board.chains.remove(board.chains.size() - 1);
            }
        }
        for (BoardOffer offer : yard.boards()) {
            for (Spot spot : yard.places()) {
                if (reaches(spot, chain)) {
                    boards.add(new Board(offer.model(), spot, new ArrayList<>(List.of(chain))));
                    boards(chains, next + 1, boards);
                    boards.remove(boards.size() - 1);
                }
            }
        }
    }

    private void jacks(List<Board> boards, int next, List<Jack> jacks) {
        if (seen > MOST) {
            return;
        }
        if (next == boards.size()) {
            ports(jacks, 0, 0, 0, new ArrayList<>());
            return;
        }
        Board board = boards.get(next);
        for (Jack jack : List.copyOf(jacks)) {
            for (int at = 0; at <= jack.boards.size(); at++) {
                jack.boards.add(at, board);
                jacks(boards, next + 1, jacks);
                jack.boards.remove(at);
            }
        }
        for (Controller controller : yard.controllers()) {
            for (int j = 1; j <= controller.model().jacks(); j++) {
                int number = j;
                if (jacks.stream().noneMatch(on -> on.controller.equals(controller) && on.jack == number)) {
                    jacks.add(new Jack(controller, j, new ArrayList<>(List.of(board))));
                    jacks(boards, next + 1, jacks);
                    jacks.remove(jacks.size() - 1);
                }
            }
        }
    }

    /** Ports of the board's chains, one after another; {@code done} counts chains of this board. */
    private void ports(List<Jack> jacks, int j, int b, int done, List<List<Layout.Chain>> plugged) {
        if (seen > MOST) {
            return;
        }
        if (j == jacks.size()) {
            seen++;
            visitor.accept(layout(jacks, plugged));
            return;
        }
        Jack jack = jacks.get(j);
        if (b == jack.boards.size()) {
            ports(jacks, j + 1, 0, 0, plugged);
            return;
        }
        Board board = jack.boards.get(b);
        if (done == 0) {
            plugged.add(new ArrayList<>());
        }
        List<Layout.Chain> here = plugged.get(plugged.size() - 1);
        if (done == board.chains.size()) {
            ports(jacks, j, b + 1, 0, plugged);
        } else {
            for (int port = 1; port <= board.model.ports().size(); port++) {
                int number = port;
                int heard = board.model.ports().get(port - 1);
                if (here.stream().anyMatch(chain -> chain.port() == number)) {
                    continue;
                }
                for (int s = 1; s <= jack.controller.model().streams(); s++) {
                    if (heard == BoardModel.ANY || heard == s) {
                        here.add(new Layout.Chain(port, s, board.chains.get(done)));
                        ports(jacks, j, b, done + 1, plugged);
                        here.remove(here.size() - 1);
                    }
                }
            }
        }
        if (done == 0) {
            plugged.remove(plugged.size() - 1);
        }
    }

    private static Layout layout(List<Jack> jacks, List<List<Layout.Chain>> plugged) {
        int at = 0;
        List<Layout.Run> runs = new ArrayList<>();
        for (Jack jack : jacks) {
            List<Layout.Hung> hung = new ArrayList<>();
            for (Board board : jack.boards) {
                hung.add(new Layout.Hung(board.model, board.spot, plugged.get(at++)));
            }
            runs.add(new Layout.Run(jack.controller, jack.jack, hung));
        }
        return new Layout(runs);
    }
}
