package streamwright.bench;

import java.util.List;
import streamwright.yard.Controller;
import streamwright.yard.Costs;
import streamwright.yard.Obstacle;
import streamwright.yard.PixelString;
import streamwright.yard.Point;
import streamwright.yard.Prop;
import streamwright.yard.Rules;
import streamwright.yard.Units;
import streamwright.yard.Yard;

/** A yard in metres without spots, measured in feet, each length to a tenth. */
final class Feet {
    private Feet() {}

    static Yard of(Yard yard) {
        if (yard.units() != Units.M || yard.spotsNamed() || !yard.costs().equals(Costs.defaults(Units.M))) {
            throw new IllegalArgumentException(yard.name() + " is not in metres, or has spots or prices of its own");
        }
        return new Yard(
                yard.name(),
                Units.FT,
                yard.frameRate(),
                yard.spare(),
                yard.brightness(),
                yard.keepChannels(),
                yard.controllers().stream()
                        .map(c -> new Controller(c.id(), c.model(), feet(c.at()), c.firstChannel(), c.firstUniverse()))
                        .toList(),
                yard.boards(),
                yard.boardCount(),
                List.of(),
                yard.props().stream().map(Feet::feet).toList(),
                yard.obstacles().stream()
                        .map(o -> new Obstacle(
                                o.id(), o.ring().stream().map(Feet::feet).toList()))
                        .toList(),
                rules(yard.rules()),
                Costs.defaults(Units.FT),
                yard.work());
    }

    /** The limits that differ from the usual ones in metres, else the usual ones in feet. */
    private static Rules rules(Rules metres) {
        Rules before = Rules.defaults(Units.M);
        Rules usual = Rules.defaults(Units.FT);
        return new Rules(
                usual.leadData(),
                usual.jumperData(),
                metres.nullsMost(),
                metres.hopMost() == before.hopMost() ? usual.hopMost() : feet(metres.hopMost()),
                metres.cableMost() == before.cableMost() ? usual.cableMost() : feet(metres.cableMost()),
                usual.slack(),
                usual.trunkLoop(),
                usual.leadLoop(),
                usual.leadWireMm2(),
                usual.injectionWireMm2(),
                usual.wireFactor(),
                usual.connector(),
                usual.fuseLoad());
    }

    private static Prop feet(Prop prop) {
        return new Prop(
                prop.id(),
                prop.pixel(),
                prop.follow(),
                prop.tailGiven(),
                prop.copyOf(),
                prop.channel(),
                prop.controller(),
                prop.strings().stream()
                        .map(s -> new PixelString(s.prop(), s.number(), s.pixels(), feet(s.feed()), feet(s.tail())))
                        .toList(),
                prop.outputs(),
                prop.panel(),
                prop.at() == null ? null : feet(prop.at()));
    }

    private static Point feet(Point point) {
        return new Point(feet(point.x()), feet(point.y()), feet(point.z()));
    }

    private static double feet(double metres) {
        return Math.round(metres / Units.FT.metres() * 10) / 10.0;
    }
}
