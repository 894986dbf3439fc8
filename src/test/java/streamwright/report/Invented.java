package streamwright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import streamwright.layout.Assembly;
import streamwright.layout.Layout;
import streamwright.physics.GroundPaths;
import streamwright.plan.Board;
import streamwright.plan.Cable;
import streamwright.plan.Outputs;
import streamwright.plan.PanelUse;
import streamwright.plan.Plan;
import streamwright.plan.Reason;
import streamwright.plan.Reason.About;
import streamwright.plan.Reason.Because;
import streamwright.plan.Rule;
import streamwright.plan.Status;
import streamwright.plan.StreamUse;
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

/** Invented yards with plans made for them by hand. */
public final class Invented {
    public static final PixelKind RGB =
            new PixelKind("rgb", 3, 24, 1.25, 300, 0, 12, 9.5, 0.04, 0.05, 0.82, "invented");
    private static final BoardModel FOUR =
            BoardModel.ofPorts("four", List.of(1, 2, 3, 4), new Address.Switches(0, 15, 4), 25, 5);
    private static final ControllerModel SOURCE = new ControllerModel("source", 4, 4, 16, 1024, 65_535, 510);

    /** Boards on one cable so that no stream is over its 740 pixels. */
    private static final int BOARDS_A_CABLE = 12;

    private static final int PIXELS = 50;

    private Invented() {}

    /** A yard and a plan of it. */
    public record Planned(Yard yard, Plan plan) {}

    /** Boards in rows, each with four props of one string; names as the caller likes. */
    public static Planned rows(int strings, java.util.function.IntFunction<String> name) {
        List<Prop> props = new ArrayList<>();
        for (int s = 0; s < strings; s++) {
            Point feed = new Point(s / 4 % BOARDS_A_CABLE * 4 + s % 4, s / (4 * BOARDS_A_CABLE) * 3);
            PixelString string = new PixelString(name.apply(s), 1, PIXELS, feed, new Point(feed.x() + 0.8, feed.y()));
            props.add(Prop.ofStrings(name.apply(s), RGB, Follow.NONE, List.of(string)));
        }
        int boards = (strings + 3) / 4;
        int cables = (boards + BOARDS_A_CABLE - 1) / BOARDS_A_CABLE;
        List<Controller> controllers = new ArrayList<>();
        for (int c = 0; c * SOURCE.jacks() < cables; c++) {
            controllers.add(new Controller("hut " + (c + 1), SOURCE, new Point(-3, c * 12.0), 1, 1 + 200 * c));
        }
        Yard yard = yard(controllers, List.of(new BoardOffer(FOUR, Integer.MAX_VALUE, 0, 25)), props);
        List<Layout.Run> runs = new ArrayList<>();
        for (int cable = 0; cable < cables; cable++) {
            List<Layout.Hung> hung = new ArrayList<>();
            for (int b = cable * BOARDS_A_CABLE; b < Math.min(boards, (cable + 1) * BOARDS_A_CABLE); b++) {
                hung.add(hung(props, b));
            }
            runs.add(new Layout.Run(controllers.get(cable / SOURCE.jacks()), cable % SOURCE.jacks() + 1, hung));
        }
        Plan plan = Assembly.plan(yard, GroundPaths.of(yard), new Layout(runs)).proved(0, 1, 1);
        return new Planned(yard, plan.withReasons(reasons(plan)));
    }

    private static Layout.Hung hung(List<Prop> props, int board) {
        List<Layout.Chain> chains = new ArrayList<>();
        for (int port = 1; port <= 4 && board * 4 + port <= props.size(); port++) {
            chains.add(
                    new Layout.Chain(port, port, props.get(board * 4 + port - 1).strings()));
        }
        return new Layout.Hung(
                FOUR, Spot.unnamed(props.get(board * 4).strings().get(0).feed()), chains);
    }

    /** As long as real ones are. */
    private static List<Reason> reasons(Plan plan) {
        String text =
                "It hangs there by a lead of 0.30 m, and its stream carries 600 of 740 pixels: board B2 would cost"
                        + " 5.23 more; port 2 would break port-once (2 of 1 uses of one port); a board of its own would cost"
                        + " 25.00 more; a jumper from its neighbour would break follow-allowed.";
        List<Reason> reasons = new ArrayList<>();
        for (Board board : plan.boards()) {
            reasons.add(new Reason(About.board(board.id()), "there", List.of(Because.cost(1)), List.of(), text));
            board.ports()
                    .forEach(port -> port.strings()
                            .forEach(each -> reasons.add(new Reason(
                                    About.string(each.prop(), each.string()),
                                    "there",
                                    List.of(Because.rule(Rule.STREAM_LIMIT, 600, 740)),
                                    List.of(),
                                    text))));
        }
        return reasons;
    }

    /** One board of mains outputs, one that drives a panel, and between them one with a single string. */
    public static Planned mainsAndPanel() {
        BoardModel mains = new BoardModel(
                "mains",
                Drives.OUTPUTS,
                List.of(),
                new Address.Switches(0, 15, 4),
                120,
                Double.POSITIVE_INFINITY,
                2,
                Integer.MAX_VALUE,
                16,
                1,
                List.of());
        BoardModel matrix = new BoardModel(
                "matrix",
                Drives.PANEL,
                List.of(),
                new Address.Rotary(0, 9),
                39,
                Double.POSITIVE_INFINITY,
                Double.POSITIVE_INFINITY,
                Integer.MAX_VALUE,
                0,
                BoardModel.ANY,
                List.of(1, 2));
        Prop flood = new Prop(
                "flood",
                null,
                Follow.NONE,
                false,
                null,
                OptionalInt.empty(),
                null,
                List.of(),
                4,
                null,
                new Point(4, 1));
        Prop sign = new Prop(
                "sign",
                RGB,
                Follow.NONE,
                false,
                null,
                OptionalInt.empty(),
                null,
                List.of(),
                0,
                new Panel(10, 8),
                new Point(12, 1));
        PixelString one = new PixelString("arch", 1, PIXELS, new Point(8, 0), new Point(9, 0));
        Prop arch = Prop.ofStrings("arch", RGB, Follow.NONE, List.of(one));
        Controller hut = new Controller("hut", SOURCE, new Point(0, 0), 1, 1);
        Yard yard = yard(
                List.of(hut),
                List.of(
                        new BoardOffer(mains, 9, 0, 120),
                        new BoardOffer(FOUR, 9, 0, 25),
                        new BoardOffer(matrix, 9, 0, 39)),
                List.of(flood, arch, sign));
        Plan strings = Assembly.plan(
                yard(List.of(hut), yard.boards(), List.of(arch)),
                GroundPaths.of(yard),
                new Layout(List.of(new Layout.Run(
                        hut,
                        1,
                        List.of(new Layout.Hung(
                                FOUR,
                                Spot.unnamed(new Point(8, 0)),
                                List.of(new Layout.Chain(1, 1, List.of(one)))))))));
        Board four = strings.boards().get(0);
        Outputs outputs = new Outputs(
                1,
                51,
                2,
                151,
                List.of(
                        new Outputs.Line(1, "flood", 1, 151),
                        new Outputs.Line(2, "flood", 2, 152),
                        new Outputs.Line(3, "flood", 3, 153),
                        new Outputs.Line(4, "flood", 4, 154)));
        PanelUse panel =
                new PanelUse("sign", 1, List.of(new PanelUse.Part(1, 53, 40, 157), new PanelUse.Part(2, 1, 40, 277)));
        Board first = board("B2", "mains", new Point(4, 0), 2, "0100", List.of(), outputs, List.of(), false);
        Board last = board("B3", "matrix", new Point(12, 0), 3, "3", List.of(), null, List.of(panel), true);
        Board middle = board("B1", "four", four.at(), 1, "1000", four.ports(), null, List.of(), false);
        Cable cable = new Cable(
                "hut",
                1,
                19.2,
                List.of("B2", "B1", "B3"),
                List.of(6.4, 6.4, 6.4),
                List.of(new StreamUse(1, "rgb", 1, 92, 740, 1, 1), new StreamUse(2, "rgb", 277, 40, 740, 1, 277)));
        Totals totals = new Totals(3, 1, 1, 50, 0, 19.2, 0.3, 0);
        return new Planned(
                yard,
                new Plan(
                        Plan.FORMAT,
                        "mixed",
                        Status.FEASIBLE,
                        208.09,
                        0,
                        1,
                        1,
                        1,
                        totals,
                        List.of(cable),
                        List.of(first, middle, last),
                        List.of(),
                        List.of(),
                        List.of(),
                        null,
                        null));
    }

    private static Board board(
            String id,
            String model,
            Point at,
            int boardId,
            String switches,
            List<streamwright.plan.PortUse> ports,
            @org.jspecify.annotations.Nullable Outputs outputs,
            List<PanelUse> panels,
            boolean last) {
        return new Board(id, model, null, at, "hut", 1, boardId, switches, last, ports, outputs, panels);
    }

    private static Yard yard(List<Controller> controllers, List<BoardOffer> boards, List<Prop> props) {
        return new Yard(
                "Invented rows",
                Units.M,
                40,
                0.1,
                0.5,
                false,
                controllers,
                boards,
                BoardCount.FREE,
                List.of(),
                props,
                List.of(),
                Rules.defaults(Units.M),
                Costs.defaults(Units.M),
                Work.DEFAULTS);
    }
}
