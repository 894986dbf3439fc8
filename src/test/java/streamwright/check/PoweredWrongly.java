package streamwright.check;

import java.util.List;
import streamwright.plan.Injection;
import streamwright.plan.Rule;
import streamwright.plan.Status;
import streamwright.plan.Supply;
import streamwright.yard.PixelKind;
import streamwright.yard.Point;

/** Amps, volts, sums and cost. */
final class PoweredWrongly {
    private static final Scene LANE = Lane.scene();

    private PoweredWrongly() {}

    static List<Wrong> list() {
        PixelKind hungry = Edit.set(Lane.RGB, "voltsLow", 11.6);
        PixelKind high = Edit.set(Lane.RGBW, "volts", 24.0);
        return List.of(
                // 80 % of 2.4 A for the 2 A of the arch
                new Wrong(Rule.FUSE, "B1 port 1", LANE.yard("boards.0.model.fuse", 2.4)),
                new Wrong(Rule.FUSE, "B1 port 4", LANE.plan("boards.0.ports.1.amps", 0.61)),
                new Wrong(Rule.FUSE, "B2 port 1 injection at hedge pixel 31", injectedAt("hedge", 31)),
                new Wrong(Rule.FUSE, "B2 port 1 injection at bush pixel 1", injectedAt("bush", 1)),
                new Wrong(Rule.FUSE, "B2 port 1 injection at heart pixel 7", injectedAt("heart", 7)),
                new Wrong(
                        Rule.FUSE,
                        "B2 port 1 injection at hedge pixel 11",
                        LANE.planList("boards.1.ports.0.injections", Scene.with(new Injection("hedge", 1, 11)))
                                .restated()),
                // 60 pixels behind the injection draw 1.2 A, by 80 % of 1.2 A
                new Wrong(
                        Rule.FUSE,
                        "B2 port 1 injection at bush pixel 11",
                        LANE.plan("boards.1.ports.0.injections", List.of(new Injection("bush", 1, 11)))
                                .yard("boards.1.model.fuse", 1.2)
                                .restated()),
                new Wrong(Rule.VOLTS, "B1 port 1", LANE.swap(Lane.RGB, hungry)),
                new Wrong(Rule.BOARD_VOLTS, "B1", LANE.swap(Lane.RGBW, high)),
                new Wrong(
                        Rule.BOARD_VOLTS,
                        "supply of B3",
                        LANE.plan("supplies.2.volts", 5.0).restated()),
                new Wrong(Rule.BOARD_AMPS, "B2", LANE.yard("boards.1.model.ampsMost", 2.1)),
                new Wrong(Rule.SPOT_AMPS, "porch", LANE.yard("spots.0.ampsMost", 2.5)),
                new Wrong(Rule.SPOT_AMPS, "supply of B3", LANE.plan("supplies.2.amps", 1.3)),
                new Wrong(Rule.SPOT_AMPS, "supply of B4", LANE.plan("supplies.3.watts", 7)),
                new Wrong(Rule.SPOT_AMPS, "B3", LANE.planList("supplies", Scene.without(2))),
                new Wrong(
                        Rule.SPOT_AMPS,
                        "supply of no board",
                        LANE.planList(
                                "supplies", Scene.with(new Supply(new Point(0, 30), "barn", 12, 0, 0, List.of())))),
                new Wrong(Rule.SPOT_AMPS, "supply of B3", LANE.plan("supplies.2.at", new Point(0, 31))),
                new Wrong(Rule.SPOT_AMPS, "supply of B3", LANE.plan("supplies.2.spot", "mast")),
                new Wrong(Rule.TOTALS, "boards", LANE.plan("totals.boards", 5)),
                new Wrong(Rule.TOTALS, "cables", LANE.plan("totals.cables", 4)),
                new Wrong(Rule.TOTALS, "strings", LANE.plan("totals.strings", 9)),
                new Wrong(Rule.TOTALS, "pixels", LANE.plan("totals.pixels", 316L)),
                new Wrong(Rule.TOTALS, "nulls", LANE.plan("totals.nulls", 0)),
                new Wrong(Rule.TOTALS, "trunk", LANE.plan("totals.trunk", 60.002)),
                new Wrong(Rule.TOTALS, "lead", LANE.plan("totals.lead", 22.998)),
                new Wrong(Rule.TOTALS, "jumper", LANE.plan("totals.jumper", 2.002)),
                new Wrong(Rule.COST, "cost", LANE.plan("cost", 280.01)),
                new Wrong(Rule.COST, "bound", LANE.plan("bound", 280.01)),
                new Wrong(
                        Rule.COST, "status", LANE.plan("status", Status.OPTIMAL).plan("bound", 279.98)));
    }

    private static Scene injectedAt(String prop, int pixel) {
        return LANE.planList("boards.1.ports.0.injections", Scene.with(new Injection(prop, 1, pixel)))
                .restated();
    }
}
