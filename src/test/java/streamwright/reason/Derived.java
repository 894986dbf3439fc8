package streamwright.reason;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import streamwright.plan.Board;
import streamwright.plan.Cable;
import streamwright.plan.Plan;
import streamwright.plan.PortUse;
import streamwright.plan.Reason;
import streamwright.plan.Rule;
import streamwright.plan.StreamUse;
import streamwright.plan.StringUse;
import streamwright.yard.BoardOffer;
import streamwright.yard.Yard;

/** The figures of reasons once more, read from an audited plan in the plainest way. */
final class Derived {
    private final Yard yard;
    private final Plan plan;
    private final List<Reason.Because> because = new ArrayList<>();

    private Derived(Yard yard, Plan plan) {
        this.yard = yard;
        this.plan = plan;
    }

    static List<Reason.Because> because(Yard yard, Plan plan, Reason.About about) {
        Derived derived = new Derived(yard, plan);
        if (about.prop() != null) {
            derived.string(about);
        } else if (about.board() != null) {
            derived.board(about.board());
        } else if (about.controller() != null) {
            derived.cable(Objects.requireNonNull(about.jack()));
        } else {
            derived.yard();
        }
        return derived.because;
    }

    private void rule(Rule rule, double figure, double limit) {
        because.add(Reason.Because.rule(rule, figure, limit));
    }

    private void string(Reason.About about) {
        for (Board board : plan.boards()) {
            for (PortUse port : board.ports()) {
                for (StringUse use : port.strings()) {
                    if (use.prop().equals(about.prop()) && Objects.equals(use.string(), about.string())) {
                        boolean lead = use.equals(port.strings().get(0));
                        // 6 and 2 nulls of 3, or a jumper of 3 with 2 nulls: the default rules
                        rule(Rule.LENGTH, use.length(), lead ? 12 : 9);
                        rule(Rule.LEAD_NULLS, use.nulls(), 2);
                        StreamUse stream = stream(board, port.stream());
                        rule(Rule.STREAM_LIMIT, stream.pixels(), stream.limit());
                        rule(Rule.FUSE, port.amps(), 4);
                        because.add(Reason.Because.cost(use.length() * 1.9));
                    }
                }
            }
        }
    }

    private StreamUse stream(Board board, int number) {
        return cableOf(board.jack()).streams().stream()
                .filter(stream -> stream.stream() == number)
                .findFirst()
                .orElseThrow();
    }

    private Cable cableOf(int jack) {
        return plan.cables().stream()
                .filter(cable -> cable.jack() == jack)
                .findFirst()
                .orElseThrow();
    }

    private void board(String name) {
        Board board = plan.boards().stream()
                .filter(each -> each.id().equals(name))
                .findFirst()
                .orElseThrow();
        Cable cable = cableOf(board.jack());
        double hop = cable.hops().get(cable.boards().indexOf(name));
        rule(Rule.PORT_ONCE, board.ports().size(), 4);
        rule(Rule.HOP_LENGTH, hop, 60);
        if (board.spot() != null) {
            int there = (int) plan.boards().stream()
                    .filter(other -> Objects.equals(other.spot(), board.spot()))
                    .count();
            rule(Rule.SPOT_MOST, there, 3);
        }
        BoardOffer offer = yard.boards().get(0);
        double price = plan.boards().size() > offer.have() ? offer.price() : 0;
        double wire = board.ports().stream()
                .flatMap(port -> port.strings().stream())
                .mapToDouble(StringUse::length)
                .sum();
        because.add(Reason.Because.cost(price + hop * 0.6 + wire * 1.9));
    }

    private void cable(int jack) {
        Cable cable = cableOf(jack);
        rule(Rule.CABLE_LENGTH, cable.length(), 90);
        rule(Rule.BOARDS_PER_CABLE, cable.boards().size(), 16);
        rule(
                Rule.HOP_LENGTH,
                cable.hops().stream().max(Comparator.naturalOrder()).orElseThrow(),
                60);
        fullest(List.of(cable));
        because.add(Reason.Because.cost(cable.length() * 0.6 + 12));
    }

    private void fullest(List<Cable> cables) {
        // one kind, so one limit: the fullest is the one with most pixels
        int pixels = cables.stream()
                .flatMap(cable -> cable.streams().stream())
                .mapToInt(StreamUse::pixels)
                .max()
                .orElseThrow();
        rule(Rule.STREAM_LIMIT, pixels, 740);
    }

    private void yard() {
        because.add(Reason.Because.cost(plan.cost()));
        rule(Rule.COST, plan.cost(), plan.bound());
        fullest(plan.cables());
        int used =
                plan.boards().stream().mapToInt(board -> board.ports().size()).sum();
        rule(Rule.PORT_ONCE, used, 4 * plan.boards().size());
        because.add(new Reason.Because(
                Rule.BOARD_COUNT.label(), (double) plan.boards().size(), null, null));
        rule(Rule.JACK_ONCE, plan.cables().size(), 60);
    }
}
