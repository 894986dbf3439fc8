package streamwright.reason.impasse;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import streamwright.yard.PixelString;
import streamwright.yard.Point;
import streamwright.yard.Prop;
import streamwright.yard.Rules;
import streamwright.yard.Yard;

/**
 * The figures of a yard's rules. A limit of length without which anything goes is let go whole; of what a length or a
 * wire comes to, such as {@code slack}, only what is dearer than usual, and back to what is usual.
 */
final class RuleLimits {
    private static final double TENTH = 0.1;
    private static final double TWENTIETH = 0.05;
    private static final double HUNDREDTH = 0.01;

    /** As many as a yard file may ask for. */
    private static final double NULLS_MOST = 1_000_000;

    /** What says how far apart things may be. */
    private static final Set<RuleFigure> LENGTHS = EnumSet.range(RuleFigure.LEAD_DATA, RuleFigure.LEAD_LOOP);

    private final Yard yard;
    private final Rules rules;
    private final List<Claim> all = new ArrayList<>();

    private RuleLimits(Yard yard) {
        this.yard = yard;
        rules = yard.rules();
    }

    static List<Claim> of(Yard yard) {
        RuleLimits limits = new RuleLimits(yard);
        limits.lengths();
        limits.usual();
        return limits.all;
    }

    private void lengths() {
        String unit = yard.units().symbol();
        double far = farthest();
        add(RuleFigure.LEAD_DATA, unit, far, TENTH);
        add(RuleFigure.JUMPER_DATA, unit, far, TENTH);
        double nulls = rules.jumperData() > 0 ? Math.ceil(far / rules.jumperData()) : 0;
        add(RuleFigure.NULLS_MOST, "", Math.max(Math.min(nulls, NULLS_MOST), rules.nullsMost()), 1);
        add(RuleFigure.HOP_MOST, unit, far, TENTH);
        add(RuleFigure.CABLE_MOST, unit, far * Math.max(2, Limits.things(yard)), TENTH);
    }

    private void usual() {
        String unit = yard.units().symbol();
        usual(RuleFigure.SLACK, "", -TWENTIETH);
        usual(RuleFigure.TRUNK_LOOP, unit, -TENTH);
        usual(RuleFigure.LEAD_LOOP, unit, -TENTH);
        usual(RuleFigure.LEAD_WIRE, "mm2", TENTH);
        usual(RuleFigure.INJECTION_WIRE, "mm2", TENTH);
        usual(RuleFigure.WIRE_FACTOR, "", -TWENTIETH);
        usual(RuleFigure.CONNECTOR, "ohm", -HUNDREDTH);
        usual(RuleFigure.FUSE_LOAD, "", TWENTIETH);
    }

    private void usual(RuleFigure figure, String unit, double step) {
        double usual = figure.of(Rules.defaults(yard.units()));
        if (Math.signum(step) * (usual - figure.of(rules)) > 0) {
            add(figure, unit, usual, step);
        }
    }

    private void add(RuleFigure figure, String unit, double loosest, double step) {
        double from = figure.of(rules);
        if (Math.abs(from - loosest) > 1e-9) {
            Lever lever = new Lever(
                    figure.field(),
                    unit,
                    from,
                    loosest,
                    step,
                    (draft, value) -> draft.rules = figure.with(draft.rules, value));
            Claim claim = Claim.of(lever, Candidate.figure(lever));
            all.add(LENGTHS.contains(figure) ? claim.ofPlace() : claim);
        }
    }

    /** Longer than any run of this yard: over all of it and around everything. */
    private double farthest() {
        List<Point> points = new ArrayList<>();
        for (Prop prop : yard.props()) {
            for (PixelString string : prop.strings()) {
                points.add(string.feed());
                points.add(string.tail());
            }
            Stream.ofNullable(prop.at()).forEach(points::add);
        }
        yard.spots().forEach(spot -> points.add(spot.at()));
        yard.controllers().forEach(controller -> points.add(controller.at()));
        double round = 0;
        for (var obstacle : yard.obstacles()) {
            List<Point> ring = obstacle.ring();
            for (int i = 0; i < ring.size(); i++) {
                Point next = ring.get((i + 1) % ring.size());
                round += Math.hypot(
                        next.x() - ring.get(i).x(), next.y() - ring.get(i).y());
            }
        }
        double across = Math.hypot(
                span(points.stream().mapToDouble(Point::x)),
                span(points.stream().mapToDouble(Point::y)));
        double path = across + round + span(points.stream().mapToDouble(Point::z));
        double run = rules.slack() * path + 2 * rules.trunkLoop() + rules.leadLoop();
        return Math.ceil(Math.max(
                run,
                Math.max(
                        rules.hopMost(), Math.max(rules.cableMost(), Math.max(rules.leadData(), rules.jumperData())))));
    }

    private static double span(DoubleStream values) {
        var all = values.summaryStatistics();
        return all.getCount() == 0 ? 0 : all.getMax() - all.getMin();
    }
}
