package streamwright.check;

import java.util.List;
import streamwright.plan.PortUse;
import streamwright.plan.Rule;
import streamwright.plan.StreamUse;
import streamwright.plan.StringUse;
import streamwright.yard.Drives;
import streamwright.yard.Follow;
import streamwright.yard.PixelKind;
import streamwright.yard.Point;

/** What ports and streams carry. */
final class CarriedWrongly {
    private static final Scene LANE = Lane.scene();

    private CarriedWrongly() {}

    static List<Wrong> list() {
        return List.of(
                new Wrong(Rule.STRING_ONCE, "moon", withMoon()),
                new Wrong(
                        Rule.STRING_ONCE,
                        "heart 1",
                        LANE.yardList("props", Scene.without(5)).restated()),
                new Wrong(Rule.STRING_ONCE, "ball", ballTwice()),
                new Wrong(Rule.STRING_ONCE, "heart", LANE.plan("boards.2.ports.0.strings.0.pixels", 59)),
                new Wrong(
                        Rule.STRING_ONCE,
                        "B1 port 2",
                        LANE.planList("boards.0.ports", Scene.with(new PortUse(2, 2, 1, 0, List.of(), List.of())))),
                new Wrong(Rule.STRING_ONCE, "flood output 3", LANE.yard("props.7.outputs", 3)),
                new Wrong(Rule.STRING_ONCE, "flood output 2", LANE.yard("props.7.outputs", 1)),
                new Wrong(Rule.STRING_ONCE, "sign panel 1", LANE.yardList("props", Scene.without(8))),
                new Wrong(Rule.STRING_ONCE, "sign", LANE.yard("props.8.panel.rows", 5)),
                new Wrong(Rule.COPY_PICTURE, "bush", copyAt(105)),
                new Wrong(Rule.COPY_PICTURE, "bush", copyWithNull()),
                new Wrong(Rule.PORT_ONCE, "B2 port 1", LANE.plan("boards.1.ports.1.port", 1)),
                new Wrong(Rule.PORT_ONCE, "B4 port 3", LANE.plan("boards.3.ports.0.port", 3)),
                new Wrong(
                        Rule.PORT_ONCE,
                        "B5 output 5",
                        LANE.plan("boards.4.outputs.lines.1.output", 5).plan("boards.4.outputs.lines.1.channel", 884L)),
                new Wrong(
                        Rule.PORT_ONCE,
                        "B5 output 1",
                        LANE.plan("boards.4.outputs.lines.1.output", 1).plan("boards.4.outputs.lines.1.channel", 880L)),
                new Wrong(Rule.PORT_ONCE, "sign", LANE.yard("boards.5.model.drives", Drives.PIXELS)),
                new Wrong(Rule.PORT_STREAM, "B1 port 3", LANE.plan("boards.0.ports.1.port", 3)),
                new Wrong(Rule.PORT_STREAM, "B5 outputs", LANE.yard("boards.4.model.hears", 1)),
                new Wrong(Rule.PORT_STREAM, "sign", LANE.yard("boards.5.model.streams", List.of(4, 3))),
                new Wrong(
                        Rule.PORT_STREAM,
                        "shed jack 2 stream 2",
                        LANE.planList("cables.1.streams", Scene.with(new StreamUse(2, "rgb", 3000, 0, 740, 6, 450)))),
                new Wrong(
                        Rule.PORT_STREAM, "shed jack 2 stream 1", LANE.planList("cables.1.streams", Scene.without(0))),
                new Wrong(Rule.PORT_PIXELS, "B1 port 1", LANE.yard("boards.0.model.portMost", 99)),
                new Wrong(Rule.PIXEL_KIND, "shed jack 1 stream 1", LANE.yard("props.0.pixel", otherName())),
                new Wrong(
                        Rule.PIXEL_KIND,
                        "shed jack 2 stream 1",
                        LANE.plan("cables.1.streams.0.pixel", "rgbw")
                                .yard("props.4.pixel", Edit.set(Lane.RGBW, "name", "rgbv"))
                                .plan("cables.0.streams.1.pixel", "rgbv")),
                new Wrong(
                        Rule.STREAM_LIMIT,
                        "shed jack 1 stream 1",
                        LANE.yard("controllers.0.model.streamMost", 190).restated()),
                new Wrong(Rule.STREAM_LIMIT, "shed jack 2 stream 1", LANE.plan("cables.1.streams.0.limit", 741)),
                new Wrong(Rule.STREAM_LIMIT, "shed jack 2 stream 1", LANE.plan("cables.1.streams.0.pixels", 61)),
                new Wrong(
                        Rule.START_PIXEL,
                        "B3 port 1",
                        LANE.plan("boards.2.ports.0.startPixel", 2)
                                .plan("boards.2.ports.0.strings.0.firstPixel", 2)
                                .plan("cables.1.streams.0.startChannel", 3000L)
                                .restated()),
                new Wrong(
                        Rule.START_PIXEL,
                        "arch 2",
                        LANE.plan("boards.0.ports.0.strings.1.firstPixel", 52).restated()),
                new Wrong(Rule.START_PIXEL, "bush copy", copyAt(70)),
                new Wrong(
                        Rule.START_PIXEL,
                        "B5 outputs",
                        LANE.plan("boards.4.outputs.startPixel", 25).restated()),
                new Wrong(
                        Rule.START_PIXEL,
                        "B5 outputs",
                        LANE.plan("boards.4.outputs.pixels", 3)
                                .plan("cables.2.streams.0.startChannel", 3000L)
                                .restated()),
                new Wrong(Rule.FOLLOW_ALLOWED, "hedge", LANE.yard("props.2.follow", Follow.PROP)),
                new Wrong(Rule.FOLLOW_ALLOWED, "arch 2", LANE.yard("props.0.follow", Follow.NONE)));
    }

    private static Scene withMoon() {
        return LANE.yardList(
                "props", Scene.with(Lane.prop("moon", Lane.RGB, 9, new Point(1, 1), new Point(1, 1), null)));
    }

    private static Scene ballTwice() {
        StringUse ball = new StringUse("ball", 1, 0, 1, 25, 0, 2);
        return LANE.planList("boards.3.ports", Scene.with(new PortUse(1, 1, 1, 0, List.of(ball), List.of())))
                .planList("cables.2.streams", Scene.with(new StreamUse(1, "rgb", 2000, 0, 0, 0, 0)))
                .restated();
    }

    private static Scene copyAt(int first) {
        return LANE.plan("boards.1.ports.1.startPixel", first)
                .plan("boards.1.ports.1.strings.0.firstPixel", first)
                .restated();
    }

    /** Where its lead is longer, the copy needs a null that the bush does not have. */
    private static Scene copyWithNull() {
        return LANE.yard("props.3.strings.0.feed", new Point(20, -8))
                .plan("boards.1.ports.1.startPixel", 110)
                .plan("boards.1.ports.1.strings.0.nulls", 1)
                .restated();
    }

    private static PixelKind otherName() {
        return Edit.set(Lane.RGB, "name", "rgb of another maker");
    }
}
