package streamwright.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import streamwright.check.Audit;
import streamwright.layout.Assembly;
import streamwright.physics.GroundPaths;
import streamwright.plan.Plan;
import streamwright.yard.Controller;
import streamwright.yard.Costs;
import streamwright.yard.PixelString;
import streamwright.yard.Point;
import streamwright.yard.Prop;
import streamwright.yard.Rules;
import streamwright.yard.Spot;
import streamwright.yard.Units;
import streamwright.yard.Yard;

/** A foot is 0.3048 m exactly (international yard and pound agreement, 1959): only the figures of lengths differ. */
class FeetTest {
    @ParameterizedTest
    @ValueSource(longs = {2, 4, 7, 8, 10, 12})
    void aYardInFeetHasThePlanOfTheSameYardInMetres(long seed) {
        Yard metres = MixedYards.of(seed);
        Yard feet = inFeet(metres);
        Outcome inMetres = Planner.plan(metres, GroundPaths.of(metres), Budget.effort(1), Outcome.SILENT);
        Outcome inFeet = Planner.plan(feet, GroundPaths.of(feet), Budget.effort(1), Outcome.SILENT);
        assertThat(inFeet.getClass()).isEqualTo(inMetres.getClass());
        if (inMetres instanceof Outcome.Found one && inFeet instanceof Outcome.Found other) {
            assertThat(other.cost()).isCloseTo(one.cost(), Offset.offset(1e-6));
            Plan plan = Assembly.plan(feet, GroundPaths.of(feet), other.layout());
            assertThat(Audit.of(feet, plan).list()).isEmpty();
            Plan same = Assembly.plan(metres, GroundPaths.of(metres), one.layout());
            assertThat(plan.totals().trunk() * 0.3048).isCloseTo(same.totals().trunk(), Offset.offset(1e-6));
            assertThat(plan.totals().boards()).isEqualTo(same.totals().boards());
        }
    }

    private static Yard inFeet(Yard yard) {
        List<Spot> spots = yard.spots().stream()
                .map(spot -> new Spot(spot.id(), feet(spot.at()), spot.most(), spot.price(), spot.ampsMost()))
                .toList();
        List<Controller> controllers = yard.controllers().stream()
                .map(c -> new Controller(c.id(), c.model(), feet(c.at()), c.firstChannel(), c.firstUniverse()))
                .toList();
        return new Yard(
                yard.name(),
                Units.FT,
                yard.frameRate(),
                yard.spare(),
                yard.brightness(),
                yard.keepChannels(),
                controllers,
                yard.boards(),
                yard.boardCount(),
                spots,
                yard.props().stream().map(FeetTest::feet).toList(),
                List.of(),
                Rules.defaults(Units.FT),
                Costs.defaults(Units.FT),
                yard.work());
    }

    private static Prop feet(Prop prop) {
        List<PixelString> strings = prop.strings().stream()
                .map(s -> new PixelString(s.prop(), s.number(), s.pixels(), feet(s.feed()), feet(s.tail())))
                .toList();
        return new Prop(
                prop.id(),
                prop.pixel(),
                prop.follow(),
                prop.tailGiven(),
                prop.copyOf(),
                prop.channel(),
                prop.controller(),
                strings,
                prop.outputs(),
                prop.panel(),
                prop.at() == null ? null : feet(prop.at()));
    }

    private static Point feet(Point metres) {
        return new Point(metres.x() / 0.3048, metres.y() / 0.3048, metres.z() / 0.3048);
    }
}
