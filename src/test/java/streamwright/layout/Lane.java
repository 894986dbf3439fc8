package streamwright.layout;

import java.util.ArrayList;
import java.util.List;
import streamwright.physics.Ground;
import streamwright.yard.Address;
import streamwright.yard.BoardCount;
import streamwright.yard.BoardModel;
import streamwright.yard.BoardOffer;
import streamwright.yard.Controller;
import streamwright.yard.ControllerModel;
import streamwright.yard.Costs;
import streamwright.yard.Follow;
import streamwright.yard.PixelKind;
import streamwright.yard.PixelString;
import streamwright.yard.Point;
import streamwright.yard.Prop;
import streamwright.yard.Rules;
import streamwright.yard.Spot;
import streamwright.yard.Units;
import streamwright.yard.Work;
import streamwright.yard.Yard;

/** A small invented yard, its lengths, prices and amps worked out by hand in {@link AssemblyTest}. */
final class Lane {
    static final PixelKind RGB = new PixelKind("rgb", 3, 24, 1.25, 300, 0, 12, 9.5, 0.04, 0.05, 0.82, "invented");
    static final BoardModel FOUR =
            BoardModel.ofPorts("four", List.of(1, 2, 3, 4), new Address.Switches(0, 15, 4), 25, 5);
    static final Controller SHED = new Controller(
            "shed", new ControllerModel("source", 2, 4, 16, 1024, 65_535, 510), new Point(0, 0, 1), 1, 1);

    /** Open ground: the straight way. */
    static final Ground OPEN = (a, b) -> Math.hypot(a.x() - b.x(), a.y() - b.y()) + Math.abs(a.z() - b.z());

    static final PixelString GATE_1 = new PixelString("gate", 1, 60, new Point(4, 2), new Point(6, 2));
    static final PixelString GATE_2 = new PixelString("gate", 2, 60, new Point(6.5, 2), new Point(8.5, 2));
    static final PixelString LANTERN_1 = one("lantern 1", 40, new Point(5, 6), new Point(5, 6));
    static final PixelString LANTERN_2 = one("lantern 2", 40, new Point(7, 6), new Point(7, 6));
    static final PixelString WILLOW_1 = new PixelString("willow", 1, 80, new Point(12, 5), new Point(12, 5, 3));
    static final PixelString WILLOW_2 = new PixelString("willow", 2, 80, new Point(12, 5), new Point(12, 5, 3));
    static final PixelString WILLOW_3 = new PixelString("willow", 3, 80, new Point(12, 5), new Point(12, 5, 3));
    static final PixelString STAIR = one("stair", 70, new Point(14, 1), new Point(15, 1));

    private Lane() {}

    private static PixelString one(String prop, int pixels, Point feed, Point tail) {
        return new PixelString(prop, 1, pixels, feed, tail);
    }

    static Yard yard() {
        return yard(0.5, List.of(new BoardOffer(FOUR, Integer.MAX_VALUE, 1, 25)), List.of());
    }

    static Yard yard(double brightness, List<BoardOffer> boards, List<Spot> spots) {
        List<Prop> props = List.of(
                Prop.ofStrings("gate", RGB, Follow.PROP, List.of(GATE_1, GATE_2)),
                Prop.ofStrings("lantern 1", RGB, Follow.ANY, List.of(LANTERN_1)),
                Prop.ofStrings("lantern 2", RGB, Follow.ANY, List.of(LANTERN_2)),
                Prop.ofStrings("willow", RGB, Follow.NONE, List.of(WILLOW_1, WILLOW_2, WILLOW_3)),
                Prop.ofStrings("stair", RGB, Follow.NONE, List.of(STAIR)));
        return new Yard(
                "Example lane",
                Units.M,
                40,
                0.1,
                brightness,
                false,
                List.of(SHED),
                boards,
                BoardCount.FREE,
                spots,
                props,
                List.of(),
                Rules.defaults(Units.M),
                Costs.defaults(Units.M),
                Work.DEFAULTS);
    }

    static Layout layout() {
        return new Layout(List.of(new Layout.Run(SHED, 1, List.of(atGate(FOUR), atWillow(FOUR)))));
    }

    static Layout.Hung atGate(BoardModel model) {
        return new Layout.Hung(
                model,
                Spot.unnamed(new Point(4, 2)),
                List.of(
                        new Layout.Chain(1, 1, List.of(GATE_1, GATE_2)),
                        new Layout.Chain(2, 2, List.of(LANTERN_1, LANTERN_2))));
    }

    static Layout.Hung atWillow(BoardModel model) {
        return new Layout.Hung(
                model,
                Spot.unnamed(new Point(12, 5)),
                List.of(
                        new Layout.Chain(1, 1, List.of(STAIR)),
                        new Layout.Chain(2, 2, List.of(WILLOW_3)),
                        new Layout.Chain(3, 3, List.of(WILLOW_1)),
                        new Layout.Chain(4, 4, List.of(WILLOW_2))));
    }

    /** So many boards of a model on one cable, each with the same one string: a layout for labels only. */
    static Layout.Run cable(int jack, BoardModel model, int boards) {
        List<Layout.Hung> hung = new ArrayList<>();
        for (int b = 0; b < boards; b++) {
            hung.add(new Layout.Hung(
                    model, Spot.unnamed(new Point(4, 2)), List.of(new Layout.Chain(1, 1, List.of(STAIR)))));
        }
        return new Layout.Run(SHED, jack, hung);
    }
}
