package streamwright.check;

import java.util.List;
import streamwright.plan.Cable;
import streamwright.plan.Rule;
import streamwright.yard.BoardCount;
import streamwright.yard.Obstacle;
import streamwright.yard.Point;

/** Boards, cables, places and lengths. */
final class CabledWrongly {
    private static final Scene LANE = Lane.scene();

    private CabledWrongly() {}

    static List<Wrong> list() {
        return List.of(
                new Wrong(Rule.BOARDS_PER_CABLE, "shed jack 3", LANE.yard("controllers.0.model.boardsPerCable", 2)),
                new Wrong(Rule.JACK_ONCE, "shed jack 3", LANE.yard("controllers.0.model.jacks", 2)),
                new Wrong(
                        Rule.JACK_ONCE,
                        "B2",
                        LANE.planList("cables.0.boards", Scene.with("B2")).restated()),
                new Wrong(Rule.JACK_ONCE, "shed jack 3", twoCablesInOneJack()),
                new Wrong(
                        Rule.JACK_ONCE,
                        "B3",
                        LANE.planList("cables", Scene.without(1)).restated()),
                new Wrong(
                        Rule.JACK_ONCE,
                        "shed jack 4",
                        LANE.planList("cables", Scene.with(new Cable("shed", 4, 0, List.of(), List.of(), List.of())))
                                .restated()),
                new Wrong(
                        Rule.JACK_ONCE,
                        "B9",
                        LANE.planList("cables.0.boards", Scene.with("B9"))
                                .plan("boards.1.terminator", false)
                                .restated()),
                new Wrong(Rule.LEAD_NULLS, "star", LANE.yard("rules.leadData", 9.5)),
                new Wrong(Rule.LEAD_NULLS, "star", LANE.yard("rules.nullsMost", 0)),
                new Wrong(Rule.LEAD_NULLS, "sign", LANE.yard("props.8.at", new Point(6.5, 10))),
                new Wrong(
                        Rule.LEAD_NULLS,
                        "hedge",
                        LANE.yard("props.2.strings.0.feed", new Point(25.5, 4)).restated()),
                new Wrong(Rule.HOP_LENGTH, "shed jack 2 to B3", LANE.yard("rules.hopMost", 29.9)),
                new Wrong(Rule.CABLE_LENGTH, "shed jack 2", LANE.yard("rules.cableMost", 29.9)),
                new Wrong(Rule.OBSTACLE, "heart", LANE.yardList("obstacles", Scene.with(square(0, 32, 1)))),
                new Wrong(Rule.OBSTACLE, "heart", LANE.yard("obstacles", moat())),
                new Wrong(Rule.SPOT_MOST, "mast", LANE.yard("spots.3.most", 2)),
                new Wrong(
                        Rule.SPOT_MOST, "B1", LANE.plan("boards.0.spot", "roof").restated()),
                new Wrong(Rule.SPOT_MOST, "B2", LANE.plan("boards.1.spot", null).restated()),
                new Wrong(
                        Rule.SPOT_MOST,
                        "B2",
                        LANE.plan("boards.1.at", new Point(20, 0, 1)).plan("supplies.1.boards", List.of("B2"))),
                new Wrong(Rule.BOARD_MOST, "quad", LANE.yard("boards.0.most", 0)),
                new Wrong(
                        Rule.BOARD_MOST,
                        "huge",
                        LANE.plan("boards.1.model", "huge").restated()),
                new Wrong(Rule.BOARD_COUNT, "yard", LANE.yard("boardCount", new BoardCount(0, 5))),
                new Wrong(Rule.BOARD_COUNT, "yard", LANE.yard("boardCount", new BoardCount(7, 9))),
                new Wrong(Rule.TERMINATOR_LAST, "B1", LANE.plan("boards.0.terminator", true)),
                new Wrong(Rule.TERMINATOR_LAST, "B3", LANE.plan("boards.2.terminator", false)),
                new Wrong(Rule.LENGTH, "arch 2", LANE.plan("boards.0.ports.0.strings.1.length", 1.002)),
                new Wrong(Rule.LENGTH, "B1 to B2", LANE.plan("cables.0.hops.1", 10.002)),
                new Wrong(Rule.LENGTH, "shed jack 1", LANE.plan("cables.0.length", 20.002)),
                new Wrong(Rule.LENGTH, "shed jack 1", LANE.planList("cables.0.hops", Scene.without(1))));
    }

    /** B4 on one, B5 and B6 on the other. */
    private static Scene twoCablesInOneJack() {
        Cable second = new Cable("shed", 3, 0, List.of("B5", "B6"), List.of(), List.of());
        return LANE.plan("cables.2.boards", List.of("B4"))
                .plan("boards.3.terminator", true)
                .planList("cables", Scene.with(second))
                .restated();
    }

    private static Obstacle square(double x, double y, double half) {
        return new Obstacle(
                "pond",
                List.of(
                        new Point(x - half, y - half),
                        new Point(x + half, y - half),
                        new Point(x + half, y + half),
                        new Point(x - half, y + half)));
    }

    /** Four overlapping walls around the heart. */
    private static List<Obstacle> moat() {
        return List.of(
                wall("south", -1, 31, 1, 31.5),
                wall("north", -1, 32.5, 1, 33),
                wall("west", -1, 31, -0.5, 33),
                wall("east", 0.5, 31, 1, 33));
    }

    private static Obstacle wall(String id, double west, double south, double east, double north) {
        return new Obstacle(
                id,
                List.of(
                        new Point(west, south),
                        new Point(east, south),
                        new Point(east, north),
                        new Point(west, north)));
    }
}
