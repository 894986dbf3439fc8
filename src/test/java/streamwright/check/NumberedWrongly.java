package streamwright.check;

import java.util.List;
import java.util.OptionalInt;
import streamwright.plan.Rule;
import streamwright.yard.Address;

/** Channels and IDs. */
final class NumberedWrongly {
    private static final Scene LANE = Lane.scene();
    private static final Scene KEPT = Lane.kept();

    private NumberedWrongly() {}

    static List<Wrong> list() {
        return List.of(
                new Wrong(
                        Rule.CHANNEL_OVERLAP,
                        "shed jack 2 stream 1",
                        LANE.plan("cables.1.streams.0.startChannel", 624L).restated()),
                new Wrong(
                        Rule.CHANNEL_RANGE,
                        "shed jack 3 stream 4",
                        LANE.plan("cables.2.streams.2.startChannel", 65_500L).restated()),
                new Wrong(
                        Rule.CHANNEL_RANGE,
                        "shed jack 1 stream 1",
                        LANE.plan("cables.0.streams.0.startChannel", 0L).restated()),
                new Wrong(Rule.CHANNEL_RANGE, "shed jack 2 stream 1", LANE.plan("cables.1.streams.0.universe", 3)),
                new Wrong(Rule.CHANNEL_RANGE, "shed jack 2 stream 1", LANE.plan("cables.1.streams.0.slot", 114)),
                new Wrong(Rule.CHANNEL_RANGE, "arch 2", LANE.plan("boards.0.ports.0.strings.1.channel", 152L)),
                new Wrong(Rule.CHANNEL_RANGE, "B5 output 2", LANE.plan("boards.4.outputs.lines.1.channel", 882L)),
                new Wrong(Rule.CHANNEL_RANGE, "sign on stream 4", LANE.plan("boards.5.panels.0.parts.1.channel", 935L)),
                new Wrong(Rule.CHANNEL_KEEP, "heart", KEPT.yard("props.5.channel", OptionalInt.of(10_000))),
                new Wrong(Rule.CHANNEL_KEEP, "heart", KEPT.plan("boards.2.ports.0.strings.0.channel", 626L)),
                new Wrong(Rule.CHANNEL_KEEP, "heart", KEPT.yard("props.5.controller", "barn box")),
                new Wrong(
                        Rule.CHANNEL_KEEP,
                        "flood output 1",
                        KEPT.yard("props.7.channel", OptionalInt.of(881))
                                .yard("props.7.outputs", 1)
                                .planList("boards.4.outputs.lines", Scene.without(1))),
                new Wrong(Rule.CHANNEL_KEEP, "star", nullOnLamp()),
                new Wrong(Rule.ID_RANGE, "B1", LANE.plan("boards.0.boardId", 16)),
                new Wrong(Rule.ID_RANGE, "B1", LANE.plan("boards.0.boardId", -1)),
                new Wrong(Rule.ID_RANGE, "B4", LANE.plan("boards.3.boardId", 10)),
                new Wrong(Rule.ID_RANGE, "B1", LANE.plan("boards.0.boardId", null)),
                new Wrong(Rule.ID_RANGE, "B3", LANE.plan("boards.2.boardId", 1)),
                new Wrong(
                        Rule.ID_UNIQUE,
                        "shed jack 1",
                        LANE.plan("boards.1.boardId", 1).plan("boards.1.switches", "1000")),
                new Wrong(Rule.ID_SWITCHES, "B1", LANE.plan("boards.0.switches", "0001")),
                new Wrong(
                        Rule.ID_SWITCHES,
                        "B1",
                        LANE.plan("boards.0.switches", "10000").plan("boards.0.boardId", 3)),
                new Wrong(Rule.ID_SWITCHES, "B1", LANE.plan("boards.0.switches", null)),
                new Wrong(Rule.ID_SWITCHES, "B4", LANE.plan("boards.3.switches", "4")),
                new Wrong(Rule.ID_SWITCHES, "B3", LANE.plan("boards.2.switches", "0000")),
                new Wrong(
                        Rule.UNADDRESSED_ALONE,
                        "B6",
                        LANE.yard("boards.5.model.address", new Address.None())
                                .plan("boards.5.boardId", null)
                                .plan("boards.5.switches", null)));
    }

    /** The star's null takes channels 541 to 544. */
    private static Scene nullOnLamp() {
        return KEPT.yard("props.5.strings.0.pixels", 1)
                .yard("props.5.channel", OptionalInt.of(541))
                .plan("cables.1.streams.0.startChannel", 541L)
                .restated();
    }
}
