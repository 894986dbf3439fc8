package streamwright.reason;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import streamwright.check.Audit;
import streamwright.layout.Layout;
import streamwright.physics.Ground;
import streamwright.plan.Board;
import streamwright.plan.Cable;
import streamwright.plan.Plan;
import streamwright.plan.Reason;
import streamwright.yard.PixelString;
import streamwright.yard.Prop;
import streamwright.yard.Yard;

/** The reasons of a plan. */
public final class Reasons {
    private final Facts facts;
    private final Base base;
    private final Nearby nearby;
    private final StringAlternatives strings;
    private final BoardAlternatives boards;
    private final FixtureAlternatives fixtures;
    private final Cables cables;
    private final Choice choice;
    private final YardAlternatives yard;
    private final BooleanSupplier stop;

    private Reasons(Yard yard, Ground ground, Plan plan, BooleanSupplier stop) {
        this.stop = stop;
        // the audit restates a plan without its bound's meaning changed
        facts = new Facts(yard, Audit.of(yard, plan).restated());
        base = new Base(yard, ground, plan);
        nearby = new Nearby(base.measures, base.layout);
        strings = new StringAlternatives(base, nearby);
        boards = new BoardAlternatives(base, nearby);
        fixtures = new FixtureAlternatives(base, nearby);
        cables = new Cables(base);
        choice = new Choice(base);
        this.yard = new YardAlternatives(base, choice);
    }

    /** The same without a stop. */
    public static List<Reason> of(Yard yard, Ground ground, Plan plan) {
        return of(yard, ground, plan, () -> false);
    }

    /**
     * One reason for the yard, each cable, board, string, prop of outputs and panel of the plan, in that order. An alternative changes
     * one decision; what hangs on it moves along (pixels renumbered, streams repacked, the cable rerouted), and the
     * audit says what it costs more or breaks. An extra cost below 0 says that the alternative is cheaper. Alternatives
     * are those that a builder would try, not all there are: a plan has cheaper neighbours where none is told.
     *
     * @param stop asked before each decision: once it says true, those left get their figures without alternatives
     */
    public static List<Reason> of(Yard yard, Ground ground, Plan plan, BooleanSupplier stop) {
        return explained(yard, ground, plan, stop).stream()
                .map(Explained::reason)
                .toList();
    }

    /** A reason with the alternatives that it tells of, carried out. */
    record Explained(Reason reason, List<Outcome> outcomes) {}

    static List<Explained> explained(Yard yard, Ground ground, Plan plan, BooleanSupplier stop) {
        return new Reasons(yard, ground, plan, stop).all();
    }

    private List<Explained> all() {
        List<Explained> below = new ArrayList<>();
        for (Cable cable : facts.plan.cables()) {
            below.add(cable(cable));
        }
        Map<String, Nearby.At> places = new HashMap<>();
        nearby.boards()
                .forEach(at -> places.putIfAbsent(String.valueOf(at.hung().name()), at));
        for (Board board : facts.plan.boards()) {
            below.add(board(board, Optional.ofNullable(places.get(board.id()))));
        }
        for (PixelString string : facts.yard.strings()) {
            facts.use(string).ifPresent(use -> below.add(string(string, use)));
        }
        for (Prop prop : facts.yard.props()) {
            if (prop.strings().isEmpty()) {
                FixtureReason.board(facts, prop).ifPresent(board -> below.add(fixture(prop, board)));
            }
        }
        List<Explained> all = new ArrayList<>();
        all.add(yard());
        all.addAll(below);
        return all;
    }

    private Explained string(PixelString string, Facts.Use use) {
        Seat seat = base.seats().get(string);
        if (seat == null || stop.getAsBoolean()) {
            return new Explained(StringReason.of(facts, base.measures, string, use, List.of()), List.of());
        }
        StringAlternatives.Asked asked = strings.of(seat);
        asked.ownBoard().ifPresent(yard::boardMore);
        List<Alternative> alternatives = new ArrayList<>(asked.elsewhere());
        asked.ownBoard().ifPresent(alternatives::add);
        List<Outcome> best = choice.of(alternatives, 2);
        return new Explained(StringReason.of(facts, base.measures, string, use, best), best);
    }

    private Explained fixture(Prop prop, Board board) {
        List<Outcome> best = stop.getAsBoolean() ? List.of() : choice.of(fixtures.of(prop), 2);
        return new Explained(FixtureReason.of(facts, base.measures, prop, board, best), best);
    }

    private Explained board(Board board, Optional<Nearby.At> where) {
        if (where.isEmpty() || stop.getAsBoolean()) {
            return new Explained(BoardReason.of(facts, nearby, board, List.of(), List.of()), List.of());
        }
        Nearby.At at = where.get();
        List<Outcome> down = choice.one(boards.down(at));
        down.forEach(outcome -> yard.boardFewer(board.id(), outcome));
        List<Outcome> told = new ArrayList<>(choice.one(boards.places(at)));
        told.addAll(down);
        told.addAll(choice.one(boards.models(at)));
        List<Outcome> outcomes = new ArrayList<>(told);
        outcomes.addAll(choice.one(boards.positions(at)));
        outcomes.addAll(choice.one(boards.cables(at)));
        outcomes.addAll(choice.one(boards.ids(at)));
        return new Explained(BoardReason.of(facts, nearby, board, outcomes, told), outcomes);
    }

    private Explained cable(Cable cable) {
        int at = cableIndex(cable);
        if (at < 0 || stop.getAsBoolean()) {
            return new Explained(CableReason.of(facts, cable, List.of()), List.of());
        }
        String name = cable.controller() + " jack " + cable.jack();
        List<Outcome> merged = cables.merged(at).stream().map(base::judge).toList();
        merged.forEach(outcome -> yard.cableFewer(name, outcome));
        choice.one(cables.split(at)).forEach(yard::cableMore);
        List<Outcome> outcomes = new ArrayList<>();
        cables.orders(at).forEach(order -> outcomes.add(base.judge(order)));
        outcomes.addAll(merged);
        if (merged.isEmpty()) {
            cables.jacks(at).forEach(jack -> outcomes.add(base.judge(jack)));
        }
        return new Explained(CableReason.of(facts, cable, outcomes), outcomes);
    }

    private int cableIndex(Cable cable) {
        for (int c = 0; c < base.layout.cables().size(); c++) {
            Layout.Run run = base.layout.cables().get(c);
            if (run.jack() == cable.jack() && run.controller().id().equals(cable.controller())) {
                return c;
            }
        }
        return -1;
    }

    /** Its own settings are few, so they are asked even after the stop. */
    private Explained yard() {
        List<Outcome> outcomes = yard.all();
        return new Explained(YardReason.of(facts, outcomes), outcomes);
    }
}
