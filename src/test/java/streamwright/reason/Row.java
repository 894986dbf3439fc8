package streamwright.reason;

import java.util.ArrayList;
import java.util.List;
import streamwright.layout.Assembly;
import streamwright.layout.Layout;
import streamwright.physics.Ground;
import streamwright.plan.Plan;
import streamwright.plan.Reason;
import streamwright.yard.BoardCount;
import streamwright.yard.BoardModel;
import streamwright.yard.BoardOffer;
import streamwright.yard.Controller;
import streamwright.yard.ControllerModel;
import streamwright.yard.Costs;
import streamwright.yard.Follow;
import streamwright.yard.PixelString;
import streamwright.yard.Point;
import streamwright.yard.Prop;
import streamwright.yard.Rules;
import streamwright.yard.Spot;
import streamwright.yard.Units;
import streamwright.yard.Work;
import streamwright.yard.Yard;

/**
 * Yards along one line, without slack or loops, so that every length is a difference of two numbers. Trunk costs 1 a
 * metre, lead 2, jumper 3, a cable 10, a board 25.
 */
final class Row {
    static final Ground OPEN = (a, b) -> Math.hypot(a.x() - b.x(), a.y() - b.y()) + Math.abs(a.z() - b.z());
    static final Controller SHED =
            new Controller("shed", new ControllerModel("source", 3, 4, 4, 1024, 65_535, 510), new Point(0, 0), 1, 1);

    private Row() {}

    /** A string that ends where it begins. */
    static PixelString ball(String id, int pixels, double x) {
        return new PixelString(id, 1, pixels, new Point(x, 0), new Point(x, 0));
    }

    static Yard yard(List<BoardModel> models, Follow follow, PixelString... strings) {
        List<Prop> props = new ArrayList<>();
        for (PixelString string : strings) {
            props.add(Prop.ofStrings(string.prop(), RandomYard.RGB, follow, List.of(string)));
        }
        return new Yard(
                "Row",
                Units.M,
                40,
                0.1,
                0.5,
                false,
                List.of(SHED),
                models.stream()
                        .map(model -> new BoardOffer(model, Integer.MAX_VALUE, 0, model.price()))
                        .toList(),
                BoardCount.FREE,
                List.of(),
                props,
                List.of(),
                new Rules(6, 3, 2, 60, 90, 1, 0, 0, 0.82, 1.31, 1.16, 0.02, 0.8),
                new Costs(1, 2, 3, 10, 6, 2),
                Work.DEFAULTS);
    }

    static Layout.Hung board(BoardModel model, double x, Layout.Chain... chains) {
        return new Layout.Hung(model, Spot.unnamed(new Point(x, 0)), List.of(chains));
    }

    static Layout.Chain chain(int port, PixelString... strings) {
        return new Layout.Chain(port, port, List.of(strings));
    }

    static Layout.Run cable(int jack, Layout.Hung... boards) {
        return new Layout.Run(SHED, jack, List.of(boards));
    }

    static Plan plan(Yard yard, Layout.Run... cables) {
        return Assembly.plan(yard, OPEN, new Layout(List.of(cables)));
    }

    static Reason reason(Yard yard, Plan plan, Reason.About about) {
        return Reasons.of(yard, OPEN, plan).stream()
                .filter(reason -> reason.about().equals(about))
                .findFirst()
                .orElseThrow();
    }

    static Reason.Instead instead(Reason reason, String what) {
        List<Reason.Instead> found = reason.instead().stream()
                .filter(each -> each.what().equals(what))
                .toList();
        return found.isEmpty() ? new Reason.Instead("only " + reason.instead(), null, null) : found.get(0);
    }
}
