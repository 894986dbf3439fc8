package streamwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import streamwright.plan.Board;
import streamwright.plan.Plan;
import streamwright.yard.Point;
import streamwright.yard.Rules;
import streamwright.yard.Spot;
import streamwright.yard.Units;
import streamwright.yard.Yard;

/** A plan may be written to 0.001 and no finer; places rounded like that are still the places. */
class RoundedTest {
    private static final Scene LANE = Lane.scene();

    private static Scene crooked() {
        Rules rules = Edit.set(Rules.defaults(Units.M), "slack", 1.0 + Math.PI / 30);
        // the star needs one null pixel here too
        rules = Edit.set(rules, "leadData", 7.5);
        return LANE.yard("rules", rules).restated();
    }

    private static @Nullable Object rounded(@Nullable Object value) {
        return value instanceof Double number ? Math.rint(number * 1000) / 1000 : value;
    }

    @Test
    void lengthsAreComparedAsWritten() {
        Scene whole = crooked();
        assertThat(whole.audit().list()).isEmpty();
        Plan written = Edit.each(whole.plan(), RoundedTest::rounded);
        assertThat(written).isNotEqualTo(whole.plan());
        assertThat(Audit.of(whole.yard(), written).list()).isEmpty();
    }

    @Test
    void placesAreFoundAsWritten() {
        Point feed = new Point(20 + 1 / 3.0, -2 / 3.0, 0.0625);
        Yard yard = Edit.set(LANE.yard(), "spots", List.of());
        Places places = new Places(Edit.set(yard, "props.0.strings.1.feed", feed));
        Board board = Edit.set(LANE.plan().boards().get(0), "spot", null);
        assertThat(places.of(Edit.set(board, "at", new Point(20.333, -0.667, 0.063))))
                .isEqualTo(Spot.unnamed(feed));
        assertThat(places.of(Edit.set(board, "at", new Point(20.333, -0.667, 0.065))))
                .isNull();
    }

    @Test
    void theNearestOfTwoPlacesIsMeant() {
        Yard yard = Edit.set(LANE.yard(), "spots", List.of());
        for (Point off : List.of(new Point(0.001, 0, 0), new Point(0, 0.001, 0), new Point(0, 0, 0.001))) {
            Point one = new Point(100, 100, 10);
            Point other = new Point(100 + off.x(), 100 + off.y(), 10 + off.z());
            Yard close = Edit.set(Edit.set(yard, "props.0.strings.0.feed", one), "props.0.strings.1.feed", other);
            Places places = new Places(close);
            Board board = Edit.set(LANE.plan().boards().get(0), "spot", null);
            assertThat(places.of(Edit.set(board, "at", beyond(one, off, -0.4)))).isEqualTo(Spot.unnamed(one));
            assertThat(places.of(Edit.set(board, "at", beyond(one, off, 0.4)))).isEqualTo(Spot.unnamed(one));
            assertThat(places.of(Edit.set(board, "at", beyond(one, off, 0.6)))).isEqualTo(Spot.unnamed(other));
            assertThat(places.of(Edit.set(board, "at", beyond(one, off, 1.4)))).isEqualTo(Spot.unnamed(other));
        }
    }

    private static Point beyond(Point from, Point off, double times) {
        return new Point(from.x() + times * off.x(), from.y() + times * off.y(), from.z() + times * off.z());
    }
}
