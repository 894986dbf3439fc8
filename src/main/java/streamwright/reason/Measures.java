package streamwright.reason;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import streamwright.layout.Layout;
import streamwright.physics.Ground;
import streamwright.physics.Refresh;
import streamwright.physics.Runs;
import streamwright.yard.Controller;
import streamwright.yard.Follow;
import streamwright.yard.PixelKind;
import streamwright.yard.PixelString;
import streamwright.yard.Point;
import streamwright.yard.Prop;
import streamwright.yard.Yard;

/** Lengths, sizes and names in a yard, by which alternatives are sought; what they are worth is the audit's to say. */
final class Measures {
    private record Carried(Controller controller, PixelKind kind) {}

    final Yard yard;
    private final Ground ground;
    private final Map<String, Prop> props = new HashMap<>();
    private final Map<Carried, Integer> limits = new HashMap<>();

    Measures(Yard yard, Ground ground) {
        this.yard = yard;
        this.ground = ground;
        yard.props().forEach(prop -> props.put(prop.id(), prop));
    }

    double hop(Point from, Point to) {
        return Runs.hop(yard.rules(), ground.path(from, to));
    }

    /** Of a lead or jumper. */
    double wire(Point from, Point to) {
        return Runs.lead(yard.rules(), ground.path(from, to));
    }

    /** As the crow flies, for telling what is near. */
    static double straight(Point from, Point to) {
        return Math.hypot(from.x() - to.x(), from.y() - to.y()) + Math.abs(from.z() - to.z());
    }

    PixelKind kind(PixelString string) {
        return Objects.requireNonNull(prop(string).pixel());
    }

    /** Pixels that a stream of this controller may carry. */
    int limit(Controller controller, PixelKind kind) {
        return limits.computeIfAbsent(
                new Carried(controller, kind),
                carried ->
                        Refresh.limit(kind, yard.frameRate(), controller.model().streamMost(), yard.spare()));
    }

    /** Pixels of a chain, nulls included. */
    long pixels(Point board, List<PixelString> strings) {
        long pixels = 0;
        Point from = board;
        for (int s = 0; s < strings.size(); s++) {
            PixelString string = strings.get(s);
            double length = wire(from, string.feed());
            pixels += string.pixels()
                    + (s == 0 ? Runs.leadNulls(yard.rules(), length) : Runs.jumperNulls(yard.rules(), length));
            from = string.tail();
        }
        return pixels;
    }

    /** Share of a stream that a chain takes. */
    double share(Layout.Run run, Layout.Hung board, Layout.Chain chain) {
        return share(
                run, kind(chain.strings().get(0)), (double) pixels(board.spot().at(), chain.strings()));
    }

    double share(Layout.Run run, PixelKind kind, double pixels) {
        return pixels / Math.max(limit(run.controller(), kind), 1e-9);
    }

    /** Whether one string may come after another on a port. */
    boolean mayFollow(PixelString before, PixelString string) {
        Follow first = prop(before).follow();
        return before.prop().equals(string.prop())
                ? first != Follow.NONE
                : first == Follow.ANY && prop(string).follow() == Follow.ANY;
    }

    String label(PixelString string) {
        return string.label(prop(string).several());
    }

    /** The same by name, whether or not the yard has it. */
    String label(String prop, int string) {
        Prop known = props.get(prop);
        return known != null && !known.several() ? prop : prop + " " + string;
    }

    private Prop prop(PixelString string) {
        return Objects.requireNonNull(props.get(string.prop()));
    }
}
