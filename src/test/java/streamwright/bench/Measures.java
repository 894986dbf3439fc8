package streamwright.bench;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import streamwright.physics.Ground;
import streamwright.physics.Refresh;
import streamwright.physics.Runs;
import streamwright.yard.Controller;
import streamwright.yard.Costs;
import streamwright.yard.Follow;
import streamwright.yard.PixelKind;
import streamwright.yard.PixelString;
import streamwright.yard.Point;
import streamwright.yard.Prop;
import streamwright.yard.Rules;
import streamwright.yard.Spot;
import streamwright.yard.Yard;

/** Lengths, null pixels and limits of a yard of one pixel kind, by string and spot. */
final class Measures {
    final Yard yard;
    final Rules rules;
    final Costs costs;
    final List<PixelString> strings;
    final List<Spot> spots;
    private final Ground ground;
    private final Map<String, Prop> props;

    Measures(Yard yard, Ground ground) {
        this.yard = yard;
        this.ground = ground;
        rules = yard.rules();
        costs = yard.costs();
        strings = yard.strings();
        spots = yard.places();
        props = yard.props().stream().collect(Collectors.toMap(Prop::id, Function.identity()));
    }

    private Prop prop(int string) {
        return Objects.requireNonNull(props.get(strings.get(string).prop()));
    }

    PixelKind kind(int string) {
        return Objects.requireNonNull(prop(string).pixel());
    }

    double amps(int string) {
        return strings.get(string).pixels() * kind(string).amps() * yard.brightness();
    }

    double ampsMost() {
        return yard.boards().get(0).model().fuse() * rules.fuseLoad();
    }

    int limit(Controller controller) {
        return Refresh.limit(kind(0), yard.frameRate(), controller.model().streamMost(), yard.spare());
    }

    double hop(Point from, Point to) {
        return Runs.hop(rules, ground.path(from, to));
    }

    double lead(int spot, int string) {
        return Runs.lead(
                rules, ground.path(spots.get(spot).at(), strings.get(string).feed()));
    }

    double jumper(int from, int to) {
        return Runs.lead(
                rules, ground.path(strings.get(from).tail(), strings.get(to).feed()));
    }

    int leadNulls(double length) {
        return Runs.leadNulls(rules, length);
    }

    int jumperNulls(double length) {
        return Runs.jumperNulls(rules, length);
    }

    boolean mayFollow(int before, int after) {
        Follow first = prop(before).follow();
        return prop(before).equals(prop(after))
                ? first != Follow.NONE
                : first == Follow.ANY && prop(after).follow() == Follow.ANY;
    }
}
