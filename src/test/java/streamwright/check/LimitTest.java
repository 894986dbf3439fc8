package streamwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import streamwright.plan.Rule;
import streamwright.yard.Address;
import streamwright.yard.BoardCount;
import streamwright.yard.PixelKind;
import streamwright.yard.Point;

/** Each limit well inside, just at, and just outside. */
class LimitTest {
    private static final Scene LANE = Lane.scene();

    /**
     * A limit set so that the lane's own figure is inside it, at it, and outside.
     *
     * @param set the scene with that limit
     */
    record Limit(Rule rule, Object inside, Object at, Object outside, Function<Object, Scene> set) {
        @Override
        public String toString() {
            return rule.label() + " at " + at;
        }
    }

    static Stream<Limit> limits() {
        return Stream.of(counts(), numbers(), lengths(), power()).flatMap(List::stream);
    }

    private static Function<Object, Scene> yard(String path) {
        return value -> LANE.yard(path, value).restated();
    }

    private static List<Limit> counts() {
        return List.of(
                // the arch has 100 pixels
                new Limit(Rule.PORT_PIXELS, 101, 100, 99, yard("boards.0.model.portMost")),
                new Limit(Rule.BOARDS_PER_CABLE, 4, 3, 2, yard("controllers.0.model.boardsPerCable")),
                new Limit(Rule.JACK_ONCE, 4, 3, 2, yard("controllers.0.model.jacks")),
                new Limit(Rule.SPOT_MOST, 4, 3, 2, yard("spots.3.most")),
                new Limit(Rule.BOARD_MOST, 2, 1, 0, yard("boards.0.most")),
                new Limit(Rule.BOARD_COUNT, 7, 6, 5, most -> LANE.yard("boardCount", new BoardCount(0, (int) most))),
                new Limit(Rule.BOARD_COUNT, 5, 6, 7, least -> LANE.yard("boardCount", new BoardCount((int) least, 9))),
                // the fullest stream has 180 pixels
                new Limit(
                        Rule.STREAM_LIMIT,
                        181,
                        180,
                        179,
                        most -> LANE.yard("spare", 0.0)
                                .yard("controllers.0.model.streamMost", most)
                                .restated()),
                // 180 pixels of 24 bits and 1.25 us take 5.4 ms, the quiet 0.3 ms: 5.7 ms are 1 / 175.44 s
                new Limit(
                        Rule.STREAM_LIMIT,
                        175.0,
                        1 / 0.0057,
                        176.0,
                        rate -> LANE.yard("spare", 0.0).yard("frameRate", rate).restated()));
    }

    private static List<Limit> numbers() {
        return List.of(
                new Limit(
                        Rule.ID_RANGE,
                        3,
                        2,
                        1,
                        most -> LANE.yard("boards.1.model.address", new Address.Switches(0, (int) most, 4))),
                new Limit(
                        Rule.ID_RANGE,
                        1,
                        2,
                        3,
                        least -> LANE.yard("boards.1.model.address", new Address.Switches((int) least, 15, 4))),
                new Limit(
                        Rule.ID_RANGE,
                        4,
                        3,
                        2,
                        most -> LANE.yard("boards.3.model.address", new Address.Rotary(0, (int) most))),
                // the last stream ends at 934 + 16 * 3 - 1
                new Limit(Rule.CHANNEL_RANGE, 982, 981, 980, yard("controllers.0.model.channelMost")),
                new Limit(Rule.CHANNEL_RANGE, 0, 1, 2, yard("controllers.0.firstChannel")),
                // it ends in the second universe
                new Limit(Rule.CHANNEL_RANGE, 63_997, 63_998, 63_999, yard("controllers.0.firstUniverse")),
                new Limit(
                        Rule.CHANNEL_OVERLAP,
                        626L,
                        625L,
                        624L,
                        start -> LANE.plan("cables.1.streams.0.startChannel", start)
                                .plan("cables.2.streams.0.startChannel", 1805L)
                                .restated()),
                new Limit(Rule.START_PIXEL, 102, 101, 100, LimitTest::bushAt));
    }

    /** The arch takes pixels 1 to 100 of the stream. */
    private static Scene bushAt(Object start) {
        int first = (int) start;
        return LANE.plan("boards.1.ports.0.startPixel", first)
                .plan("boards.1.ports.0.strings.0.firstPixel", first)
                .plan("boards.1.ports.0.strings.1.firstPixel", first + 40)
                .planList("boards.1.ports", Scene.without(1))
                .yardList("props", Scene.without(3))
                .restated();
    }

    private static List<Limit> lengths() {
        return List.of(
                new Limit(Rule.HOP_LENGTH, 30.1, 30.0, 29.99, yard("rules.hopMost")),
                new Limit(Rule.CABLE_LENGTH, 30.1, 30.0, 29.99, yard("rules.cableMost")),
                // the star's 9 m: one null up to 6 + 3 m
                new Limit(Rule.LEAD_NULLS, 8.9, 9.0, 9.01, LimitTest::starAway),
                new Limit(Rule.LEAD_NULLS, 6.1, 6.0 + 1e-5, 5.99, LimitTest::starAway),
                new Limit(Rule.LEAD_NULLS, 2, 1, 0, yard("rules.nullsMost")),
                // jumpers of 3 m need no null
                new Limit(
                        Rule.LEAD_NULLS,
                        2.9,
                        3.0,
                        3.01,
                        gap -> LANE.yard("props.0.strings.1.feed", new Point(12 + (double) gap, 2))
                                .restated()),
                // to the panel
                new Limit(
                        Rule.LEAD_NULLS,
                        5.9,
                        6.0,
                        6.01,
                        away -> LANE.yard("props.8.at", new Point((double) away, 10))));
    }

    private static Scene starAway(Object away) {
        return LANE.yard("props.4.strings.0.feed", new Point(10, -(double) away))
                .restated();
    }

    private static List<Limit> power() {
        // the arch: 2 m of lead, 49 steps of 5 cm, 1 m of jumper, 49 steps; 100 pixels of 0.02 A
        double loop = 2 * 0.017241 * 1.16 / 0.82;
        double ends = 2.0 * (2 * loop + 0.02) + 1.0 * (1 * loop + 0.02);
        double within = 0.05 * loop * 0.02 * (sum(51, 99) + sum(1, 49));
        double volts = 12 - ends - within;
        return List.of(
                // 80 % of the fuse for 2 A
                new Limit(Rule.FUSE, 2.6, 2.5, 2.49, yard("boards.0.model.fuse")),
                new Limit(Rule.FUSE, 0.41, 0.4, 0.39, yard("rules.fuseLoad")),
                new Limit(Rule.VOLTS, volts - 0.1, volts, volts + 0.001, low -> {
                    PixelKind kind = Edit.set(Lane.RGB, "voltsLow", low);
                    return LANE.swap(Lane.RGB, kind);
                }),
                // 1.0 and 0.8 A through its ports, 0.4 A through its injection
                new Limit(Rule.BOARD_AMPS, 2.3, 2.2, 2.19, yard("boards.1.model.ampsMost")),
                new Limit(Rule.SPOT_AMPS, 2.7, 2.6, 2.59, yard("spots.0.ampsMost")));
    }

    private static double sum(int from, int to) {
        return (from + to) * (to - from + 1) / 2.0;
    }

    @ParameterizedTest
    @MethodSource("limits")
    void holdsInsideAndAtButNotOutside(Limit limit) {
        assertThat(limit.set().apply(limit.inside()).audit().list())
                .as("inside")
                .isEmpty();
        assertThat(limit.set().apply(limit.at()).audit().list()).as("at").isEmpty();
        assertThat(limit.set().apply(limit.outside()).audit().list())
                .as("outside")
                .isNotEmpty()
                .extracting(Finding::rule)
                .containsOnly(limit.rule());
    }
}
