package streamwright.check;

import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;
import streamwright.plan.Board;
import streamwright.plan.Cable;
import streamwright.plan.Injection;
import streamwright.plan.Outputs;
import streamwright.plan.PanelUse;
import streamwright.plan.Plan;
import streamwright.plan.PortUse;
import streamwright.plan.Status;
import streamwright.plan.StreamUse;
import streamwright.plan.StringUse;
import streamwright.plan.Supply;
import streamwright.plan.Totals;
import streamwright.yard.Address;
import streamwright.yard.BoardCount;
import streamwright.yard.BoardModel;
import streamwright.yard.BoardOffer;
import streamwright.yard.Controller;
import streamwright.yard.ControllerModel;
import streamwright.yard.Costs;
import streamwright.yard.Drives;
import streamwright.yard.Follow;
import streamwright.yard.Panel;
import streamwright.yard.PixelKind;
import streamwright.yard.PixelString;
import streamwright.yard.Point;
import streamwright.yard.Prop;
import streamwright.yard.Rules;
import streamwright.yard.Spot;
import streamwright.yard.Units;
import streamwright.yard.Work;
import streamwright.yard.Yard;

/**
 * A lane with one of everything, planned by hand. Wires run without slack or loops, and mostly along the axes, so that
 * every figure below can be worked out in one's head.
 */
final class Lane {
    static final PixelKind RGB =
            new PixelKind("rgb", 3, 24, 1.25, 300, 0, 12, 9.5, 0.04, 0.05, 0.82, "invented for this test");
    static final PixelKind RGBW =
            new PixelKind("rgbw", 4, 32, 1.25, 300, 80, 12, 9.5, 0.06, 0.05, 0.82, "invented for this test");
    private static final double INF = Double.POSITIVE_INFINITY;
    private static final Address BINARY = new Address.Switches(0, 15, 4);

    private Lane() {}

    static Scene scene() {
        return new Scene(yard(), plan());
    }

    static Yard yard() {
        return new Yard(
                "Test lane",
                Units.M,
                40,
                0.1,
                0.5,
                false,
                List.of(new Controller(
                        "shed", new ControllerModel("source", 4, 4, 16, 1024, 65535, 510), new Point(0, 0), 1, 1)),
                List.of(
                        offer(BoardModel.ofPorts("quad", List.of(1, 2, 3, 4), BINARY, 25, 5), 0),
                        offer(BoardModel.ofPorts("eight", List.of(1, 2, 3, 4, 1, 2, 3, 4), BINARY, 40, 5), 0),
                        offer(BoardModel.ofPorts("plain", List.of(1), new Address.None(), 10, 5), 0),
                        offer(BoardModel.ofPorts("dial", List.of(1, 0), new Address.Rotary(0, 9), 20, 5), 0),
                        offer(of("relay", Drives.OUTPUTS, 30, 4, 2, List.of()), 1),
                        offer(of("matrix", Drives.PANEL, 35, 0, 0, List.of(3, 4)), 0)),
                BoardCount.FREE,
                List.of(
                        new Spot("porch", new Point(10, 0), 2, 15, 25),
                        new Spot("gate", new Point(20, 0), 2, 0, INF),
                        new Spot("barn", new Point(0, 30), 2, 0, INF),
                        new Spot("mast", new Point(0, 10), 3, 0, INF)),
                props(),
                List.of(),
                new Rules(6, 3, 2, 60, 90, 1, 0, 0, 0.82, 1.31, 1.16, 0.02, 0.8),
                new Costs(0.5, 2, 3, 12, 6, 2),
                Work.DEFAULTS);
    }

    private static List<Prop> props() {
        return List.of(
                Prop.ofStrings(
                        "arch",
                        RGB,
                        Follow.PROP,
                        List.of(
                                new PixelString("arch", 1, 50, new Point(10, 2), new Point(12, 2)),
                                new PixelString("arch", 2, 50, new Point(12, 3), new Point(14, 3)))),
                prop("bush", RGB, 40, new Point(20, 4), new Point(22, 4), null),
                prop("hedge", RGB, 30, new Point(23, 4), new Point(25, 4), null),
                prop("bush copy", RGB, 40, new Point(20, -4), new Point(22, -4), "bush"),
                prop("star", RGBW, 20, new Point(10, -9), new Point(10, -9), null),
                prop("heart", RGB, 60, new Point(0, 32), new Point(0, 34), null),
                prop("ball", RGB, 25, new Point(0, 12), new Point(0, 13), null),
                other("flood", null, 2, null, new Point(3, 10)),
                other("sign", RGB, 0, new Panel(8, 4), new Point(2, 10)));
    }

    static Prop prop(String id, PixelKind kind, int pixels, Point feed, Point tail, @Nullable String copyOf) {
        return new Prop(
                id,
                kind,
                Follow.ANY,
                true,
                copyOf,
                OptionalInt.empty(),
                null,
                List.of(new PixelString(id, 1, pixels, feed, tail)),
                0,
                null,
                null);
    }

    private static Prop other(String id, @Nullable PixelKind kind, int outputs, @Nullable Panel panel, Point at) {
        return new Prop(id, kind, Follow.NONE, false, null, OptionalInt.empty(), null, List.of(), outputs, panel, at);
    }

    private static BoardOffer offer(BoardModel model, int have) {
        return new BoardOffer(model, Integer.MAX_VALUE, have, model.price());
    }

    private static BoardModel of(
            String name, Drives drives, double price, int outputs, int hears, List<Integer> streams) {
        return new BoardModel(
                name, drives, List.of(), BINARY, price, INF, INF, Integer.MAX_VALUE, outputs, hears, streams);
    }

    static Plan plan() {
        return new Plan(
                1,
                "Test lane",
                Status.FEASIBLE,
                // trunk 30, leads 46, jumpers 6, cables 36, injection 6 + 11, boards 130 (the relay is owned), porch 15
                280,
                0,
                1,
                0,
                1,
                new Totals(6, 3, 8, 315, 1, 60, 23, 2),
                cables(),
                boards(),
                List.of(
                        supply("porch", new Point(10, 0), 2.6, 39, "B1"),
                        supply("gate", new Point(20, 0), 2.2, 33, "B2"),
                        supply("barn", new Point(0, 30), 1.2, 18, "B3"),
                        // 7.5 W rounded up
                        supply("mast", new Point(0, 10), 0.5, 8, "B4")),
                List.of(),
                List.of(),
                null,
                null);
    }

    private static Supply supply(String spot, Point at, double amps, int watts, String board) {
        return new Supply(at, spot, 12, amps, watts, List.of(board));
    }

    /** Limits: floor(24700 / 30) = 823 less a tenth; floor(24620 / 40) = 615 less a tenth. */
    private static List<Cable> cables() {
        return List.of(
                new Cable(
                        "shed",
                        1,
                        20,
                        List.of("B1", "B2"),
                        List.of(10.0, 10.0),
                        List.of(
                                new StreamUse(1, "rgb", 1, 180, 740, 1, 1),
                                new StreamUse(4, "rgbw", 541, 21, 553, 2, 31))),
                new Cable(
                        "shed",
                        2,
                        30,
                        List.of("B3"),
                        List.of(30.0),
                        List.of(new StreamUse(1, "rgb", 625, 60, 740, 2, 115))),
                new Cable(
                        "shed",
                        3,
                        10,
                        List.of("B4", "B5", "B6"),
                        List.of(10.0, 0.0, 0.0),
                        List.of(
                                new StreamUse(2, "rgb", 805, 27, 740, 2, 295),
                                new StreamUse(3, "rgb", 886, 16, 740, 2, 376),
                                new StreamUse(4, "rgb", 934, 16, 740, 2, 424))));
    }

    private static List<Board> boards() {
        return List.of(
                board(
                        "B1",
                        "quad",
                        "porch",
                        1,
                        1,
                        "1000",
                        false,
                        List.of(
                                new PortUse(
                                        1,
                                        1,
                                        1,
                                        2.0,
                                        List.of(
                                                new StringUse("arch", 1, 0, 1, 50, 1, 2),
                                                new StringUse("arch", 2, 0, 51, 50, 151, 1)),
                                        List.of()),
                                // 9 m from the board: one null pixel
                                new PortUse(
                                        4, 4, 1, 0.6, List.of(new StringUse("star", 1, 1, 2, 20, 545, 9)), List.of()))),
                board(
                        "B2",
                        "eight",
                        "gate",
                        1,
                        2,
                        "0100",
                        true,
                        List.of(
                                // 40 + 10 pixels from the port, 20 by the injection
                                new PortUse(
                                        1,
                                        1,
                                        111,
                                        1.0,
                                        List.of(
                                                new StringUse("bush", 1, 0, 111, 40, 331, 4),
                                                new StringUse("hedge", 1, 0, 151, 30, 451, 1)),
                                        List.of(new Injection("hedge", 1, 11))),
                                new PortUse(
                                        5,
                                        1,
                                        111,
                                        0.8,
                                        List.of(new StringUse("bush copy", 1, 0, 111, 40, 331, 4)),
                                        List.of()))),
                board(
                        "B3",
                        "plain",
                        "barn",
                        2,
                        null,
                        null,
                        true,
                        List.of(new PortUse(
                                1, 1, 1, 1.2, List.of(new StringUse("heart", 1, 0, 1, 60, 625, 2)), List.of()))),
                board(
                        "B4",
                        "dial",
                        "mast",
                        3,
                        3,
                        "3",
                        false,
                        List.of(new PortUse(
                                2, 2, 1, 0.5, List.of(new StringUse("ball", 1, 0, 1, 25, 805, 2)), List.of()))),
                new Board(
                        "B5",
                        "relay",
                        "mast",
                        new Point(0, 10),
                        "shed",
                        3,
                        4,
                        "0010",
                        false,
                        List.of(),
                        // four channels take two pixels of three
                        new Outputs(
                                2,
                                26,
                                2,
                                880,
                                List.of(new Outputs.Line(1, "flood", 1, 880), new Outputs.Line(2, "flood", 2, 881))),
                        List.of()),
                new Board(
                        "B6",
                        "matrix",
                        "mast",
                        new Point(0, 10),
                        "shed",
                        3,
                        5,
                        "1010",
                        true,
                        List.of(),
                        null,
                        List.of(new PanelUse(
                                "sign",
                                1,
                                List.of(new PanelUse.Part(3, 1, 16, 886), new PanelUse.Part(4, 1, 16, 934))))));
    }

    private static Board board(
            String id,
            String model,
            String spot,
            int jack,
            @Nullable Integer boardId,
            @Nullable String switches,
            boolean terminator,
            List<PortUse> ports) {
        Map<String, Point> at = Map.of(
                "porch",
                new Point(10, 0),
                "gate",
                new Point(20, 0),
                "barn",
                new Point(0, 30),
                "mast",
                new Point(0, 10));
        return new Board(
                id,
                model,
                spot,
                at.getOrDefault(spot, new Point(0, 0)),
                "shed",
                jack,
                boardId,
                switches,
                terminator,
                ports,
                null,
                List.of());
    }

    /** The same lane with a show that is sequenced already, at the channels at which the plan has it. */
    static Scene kept() {
        Yard yard = Edit.set(yard(), "keepChannels", true);
        int[] channels = {1, 331, 451, 331, 545, 625, 805, 880, 886};
        for (int i = 0; i < channels.length; i++) {
            yard = Edit.set(yard, "props." + i + ".channel", OptionalInt.of(channels[i]));
        }
        // the panel's two halves lie side by side
        return new Scene(yard, plan());
    }
}
