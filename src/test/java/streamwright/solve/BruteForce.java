package streamwright.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import streamwright.check.Audit;
import streamwright.check.Findings;
import streamwright.layout.Assembly;
import streamwright.layout.Layout;
import streamwright.physics.Ground;
import streamwright.physics.Runs;
import streamwright.yard.BoardModel;
import streamwright.yard.BoardOffer;
import streamwright.yard.Controller;
import streamwright.yard.Follow;
import streamwright.yard.PixelString;
import streamwright.yard.Spot;
import streamwright.yard.Yard;

/**
 * Tries every plan of a tiny yard: every set of chains, every sharing out over boards of every model at every place,
 * every order on every jack, every port and stream. Only the audit says what a plan costs and whether it keeps the
 * rules; what it has found too dear or broken with one choice of ports is not tried with another only where the rule has
 * nothing to do with ports.
 */
final class BruteForce {
    private final Yard yard;
    private final Ground ground;
    private final List<Spot> places;
    private double best = Double.POSITIVE_INFINITY;
    private long tried;

    /** Audits after which a yard is not tiny. */
    private static final long TRIED_MOST = 4_000;

    /** Whether there were too many plans to try them all. */
    boolean tooMany() {
        return tried > TRIED_MOST;
    }

    BruteForce(Yard yard, Ground ground) {
        this.yard = yard;
        this.ground = ground;
        places = yard.places();
    }

    /** The cost of the cheapest plan, empty where there is none. */
    OptionalDouble optimum() {
        chains(yard.strings(), 0, new ArrayList<>());
        return best < Double.POSITIVE_INFINITY ? OptionalDouble.of(best) : OptionalDouble.empty();
    }

    /** Every way to string the strings: each joins a chain before it at any place, or begins one. */
    private void chains(List<PixelString> strings, int next, List<List<PixelString>> chains) {
        if (tooMany()) {
            return;
        }
        if (next == strings.size()) {
            if (chains.stream().allMatch(this::mayFollow)) {
                boards(chains, 0, new ArrayList<>());
            }
            return;
        }
        PixelString string = strings.get(next);
        for (int c = 0; c < chains.size(); c++) {
            for (int at = 0; at <= chains.get(c).size(); at++) {
                chains.get(c).add(at, string);
                chains(strings, next + 1, chains);
                chains.get(c).remove(at);
            }
        }
        chains.add(new ArrayList<>(List.of(string)));
        chains(strings, next + 1, chains);
        chains.remove(chains.size() - 1);
    }

    /** What no place and no port can mend: who may follow whom, and over which way. */
    private boolean mayFollow(List<PixelString> chain) {
        for (int i = 1; i < chain.size(); i++) {
            PixelString before = chain.get(i - 1);
            PixelString after = chain.get(i);
            Follow first = follow(before);
            boolean may = before.prop().equals(after.prop())
                    ? first != Follow.NONE
                    : first == Follow.ANY && follow(after) == Follow.ANY;
            double length = Runs.lead(yard.rules(), ground.path(before.tail(), after.feed()));
            if (!may || Runs.jumperNulls(yard.rules(), length) > yard.rules().nullsMost()) {
                return false;
            }
        }
        return true;
    }

    private Follow follow(PixelString string) {
        return yard.props().stream()
                .filter(prop -> prop.id().equals(string.prop()))
                .findFirst()
                .orElseThrow()
                .follow();
    }

    private boolean reaches(Spot spot, List<PixelString> chain) {
        double length =
                Runs.lead(yard.rules(), ground.path(spot.at(), chain.get(0).feed()));
        return Runs.leadNulls(yard.rules(), length) <= yard.rules().nullsMost();
    }

    private record Board(BoardModel model, Spot spot, List<List<PixelString>> chains) {}

    /** Every way to share chains out over boards: each joins a board before it, or opens one of any model anywhere. */
    private void boards(List<List<PixelString>> chains, int next, List<Board> boards) {
        if (tooMany()) {
            return;
        }
        if (next == chains.size()) {
            cables(boards, new ArrayList<>());
            return;
        }
        for (Board board : List.copyOf(boards)) {
            if (board.chains.size() < board.model.ports().size() && reaches(board.spot, chains.get(next))) {
                board.chains.add(chains.get(next));
                boards(chains, next + 1, boards);
                board.chains.remove(board.chains.size() - 1);
            }
        }
        for (BoardOffer offer : yard.boards()) {
            for (Spot spot : places) {
                if (!reaches(spot, chains.get(next))) {
                    continue;
                }
                boards.add(new Board(offer.model(), spot, new ArrayList<>(List.of(chains.get(next)))));
                boards(chains, next + 1, boards);
                boards.remove(boards.size() - 1);
            }
        }
    }

    private record Jack(Controller controller, int jack, List<Board> boards) {}

    /** Every way to hang boards on jacks: each at any place of a cable before it, or first on the next jack. */
    private void cables(List<Board> boards, List<Jack> jacks) {
        if (tooMany()) {
            return;
        }
        int next = jacks.stream().mapToInt(jack -> jack.boards.size()).sum();
        if (next == boards.size()) {
            plug(jacks);
            return;
        }
        Board board = boards.get(next);
        for (Jack jack : List.copyOf(jacks)) {
            for (int at = 0; at <= jack.boards.size(); at++) {
                jack.boards.add(at, board);
                cables(boards, jacks);
                jack.boards.remove(at);
            }
        }
        for (Controller controller : yard.controllers()) {
            int used = (int) jacks.stream()
                    .filter(jack -> jack.controller.equals(controller))
                    .count();
            if (used < controller.model().jacks()) {
                jacks.add(new Jack(controller, used + 1, new ArrayList<>(List.of(board))));
                cables(boards, jacks);
                jacks.remove(jacks.size() - 1);
            }
        }
    }

    /** Every choice of ports and streams; the cost is the same for all, so a plan that is too dear needs none. */
    private void plug(List<Jack> jacks) {
        if (tooMany()) {
            return;
        }
        Layout any = layout(jacks, new ArrayList<>());
        tried++;
        Findings first = Audit.of(yard, Assembly.plan(yard, ground, any));
        if (first.restated().cost() >= best - 1e-9
                || first.list().stream().anyMatch(f -> !PORT_RULES.contains(f.rule()))) {
            return;
        }
        if (first.clean() || ports(jacks, 0, new ArrayList<>())) {
            best = first.restated().cost();
        }
    }

    private static final List<streamwright.plan.Rule> PORT_RULES = List.of(
            streamwright.plan.Rule.PORT_STREAM,
            streamwright.plan.Rule.START_PIXEL,
            streamwright.plan.Rule.STREAM_LIMIT,
            streamwright.plan.Rule.PORT_ONCE,
            streamwright.plan.Rule.PIXEL_KIND,
            streamwright.plan.Rule.CHANNEL_RANGE,
            streamwright.plan.Rule.CHANNEL_OVERLAP);

    private record Plug(int port, int stream) {}

    private boolean ports(List<Jack> jacks, int done, List<Plug> plugs) {
        int chain = 0;
        for (Jack jack : jacks) {
            for (Board board : jack.boards) {
                int first = chain;
                chain += board.chains.size();
                if (done >= chain) {
                    continue;
                }
                for (int port = 1; port <= board.model.ports().size(); port++) {
                    int taken = port;
                    if (plugs.subList(first, done).stream().anyMatch(plug -> plug.port == taken)) {
                        continue;
                    }
                    int heard = board.model.ports().get(port - 1);
                    for (int s = 1; s <= jack.controller.model().streams(); s++) {
                        if (heard == BoardModel.ANY || heard == s) {
                            plugs.add(new Plug(port, s));
                            if (ports(jacks, done + 1, plugs)) {
                                return true;
                            }
                            plugs.remove(plugs.size() - 1);
                        }
                    }
                }
                return false;
            }
        }
        Layout layout = layout(jacks, plugs);
        tried++;
        return layout != null
                && Audit.of(yard, Assembly.plan(yard, ground, layout)).clean();
    }

    /** The layout with these plugs in the order of cables, boards and chains; with the first that fit where none. */
    private static Layout layout(List<Jack> jacks, List<Plug> plugs) {
        int chain = 0;
        List<Layout.Run> runs = new ArrayList<>();
        for (Jack jack : jacks) {
            List<Layout.Hung> hung = new ArrayList<>();
            for (Board board : jack.boards) {
                List<Layout.Chain> chains = new ArrayList<>();
                for (int i = 0; i < board.chains.size(); i++, chain++) {
                    int heard = board.model.ports().get(i);
                    Plug plug =
                            plugs.isEmpty() ? new Plug(i + 1, heard == BoardModel.ANY ? 1 : heard) : plugs.get(chain);
                    chains.add(new Layout.Chain(plug.port, plug.stream, board.chains.get(i)));
                }
                hung.add(new Layout.Hung(board.model, board.spot, chains));
            }
            runs.add(new Layout.Run(jack.controller, jack.jack, hung));
        }
        return new Layout(runs);
    }
}
