package streamwright.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import streamwright.physics.Feed;
import streamwright.physics.Ground;
import streamwright.physics.Power;
import streamwright.yard.BoardModel;
import streamwright.yard.BoardOffer;
import streamwright.yard.Controller;
import streamwright.yard.Drives;
import streamwright.yard.Follow;
import streamwright.yard.PixelKind;
import streamwright.yard.PixelString;
import streamwright.yard.Point;
import streamwright.yard.Prop;
import streamwright.yard.Rules;
import streamwright.yard.Spot;
import streamwright.yard.Yard;

/** What the contract says of one wire, one port and one stream, worked out anew and apart from the planner. */
final class Measured {
    private static final double ROUNDING = 1e-9;

    final Yard yard;
    final List<PixelString> strings;
    final List<Spot> spots;
    final List<BoardOffer> offers;
    private final Ground ground;
    private final Map<String, Prop> props;

    Measured(Yard yard, Ground ground) {
        this.yard = yard;
        this.ground = ground;
        strings = yard.strings();
        spots = yard.places();
        offers = yard.boards().stream()
                .filter(offer -> offer.model().drives() == Drives.PIXELS)
                .toList();
        props = yard.props().stream().collect(Collectors.toMap(Prop::id, Function.identity()));
    }

    PixelKind kind(int string) {
        return Objects.requireNonNull(prop(string).pixel());
    }

    private Prop prop(int string) {
        return Objects.requireNonNull(props.get(strings.get(string).prop()));
    }

    double draw(int string) {
        return strings.get(string).pixels() * kind(string).amps() * yard.brightness();
    }

    /** Pixels of a stream: refresh limit, then the controller's own, then less the spare share. */
    long limit(Controller controller, PixelKind kind) {
        double refresh = Math.floor(
                (1e6 / yard.frameRate() - kind.reset() - kind.prefix()) / (kind.bits() * kind.bitTime()) + ROUNDING);
        return (long) Math.floor(Math.min(refresh, controller.model().streamMost()) * (1 - yard.spare()) + ROUNDING);
    }

    double hop(Point from, Point to) {
        Rules rules = yard.rules();
        return rules.slack() * ground.path(from, to) + 2 * rules.trunkLoop();
    }

    boolean hopHolds(double length) {
        return length <= yard.rules().hopMost() + ROUNDING;
    }

    boolean cableHolds(double length) {
        return length <= yard.rules().cableMost() + ROUNDING;
    }

    private double wire(Point from, Point to) {
        Rules rules = yard.rules();
        return rules.slack() * ground.path(from, to) + rules.leadLoop();
    }

    private boolean mayFollow(int before, int after) {
        Follow first = prop(before).follow();
        Follow then = prop(after).follow();
        return prop(before).equals(prop(after)) ? first != Follow.NONE : first == Follow.ANY && then == Follow.ANY;
    }

    /** Strings that follow one another on a port of a model at a spot; cost of lead, jumpers and injections. */
    record Link(List<Integer> strings, long pixels, PixelKind kind, double amps, double cost) {}

    /** Empty where a rule forbids it. */
    Optional<Link> link(int spot, BoardModel model, List<Integer> order) {
        Rules rules = yard.rules();
        Point board = spots.get(spot).at();
        double cost = 0;
        long pixels = 0;
        double amps = 0;
        double[] lengths = new double[order.size()];
        double[] wires = new double[order.size()];
        int[] lit = new int[order.size()];
        PixelKind kind = kind(order.get(0));
        for (int i = 0; i < order.size(); i++) {
            int string = order.get(i);
            Point feed = strings.get(string).feed();
            if (!kind(string).equals(kind) || (i > 0 && !mayFollow(order.get(i - 1), string))) {
                return Optional.empty();
            }
            wires[i] = wire(board, feed);
            lengths[i] = i == 0 ? wires[i] : wire(strings.get(order.get(i - 1)).tail(), feed);
            double nulls = i == 0
                    ? Math.ceil(Math.max(0, lengths[i] - rules.leadData()) / rules.jumperData() - ROUNDING)
                    : Math.max(0, Math.ceil(lengths[i] / rules.jumperData() - ROUNDING) - 1);
            if (nulls > rules.nullsMost()) {
                return Optional.empty();
            }
            lit[i] = strings.get(string).pixels();
            pixels += (long) nulls + lit[i];
            amps += draw(string);
            cost += lengths[i] * (i == 0 ? yard.costs().lead() : yard.costs().jumper());
        }
        if (pixels > model.portMost()) {
            return Optional.empty();
        }
        Optional<Feed> feed = Power.of(yard, kind, model.fuse()).feed(lengths[0], lit, lengths, wires, lit.length);
        double wired = cost;
        long taken = pixels;
        double drawn = amps;
        return feed.map(power -> new Link(List.copyOf(order), taken, kind, drawn, wired + power.cost()));
    }

    /** Every order of every set of strings that may share a port of a model at a spot; at most the mask's strings. */
    List<Link> links(int spot, BoardModel model) {
        List<Link> found = new ArrayList<>();
        grow(spot, model, new ArrayList<>(), found);
        return found;
    }

    private void grow(int spot, BoardModel model, List<Integer> order, List<Link> found) {
        for (int next = 0; next < strings.size(); next++) {
            if (!order.contains(next)) {
                order.add(next);
                // a longer order may hold where its begin does not: its injections differ
                link(spot, model, order).ifPresent(found::add);
                grow(spot, model, order, found);
                order.remove(order.size() - 1);
            }
        }
    }

    static int mask(List<Integer> strings) {
        return strings.stream().mapToInt(string -> 1 << string).sum();
    }
}
