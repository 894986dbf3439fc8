package streamwright.reason;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import streamwright.layout.Layout;
import streamwright.yard.BoardOffer;
import streamwright.yard.Controller;
import streamwright.yard.Drives;
import streamwright.yard.PixelString;
import streamwright.yard.Point;
import streamwright.yard.Spot;

/** A further board: which model, and on which cable it adds least. */
final class NewBoard {
    private final Base base;
    private final Nearby nearby;

    NewBoard(Base base, Nearby nearby) {
        this.base = base;
        this.nearby = nearby;
    }

    /** A string alone on a new board at the place nearest to its feed; empty where the yard offers no board for it. */
    Optional<Alternative> alone(Layout without, PixelString string) {
        return model(without).map(offer -> {
            Spot spot = nearby.place(string.feed());
            List<Plug> plugs = Plug.all(offer.model(), 1);
            Layout.Hung hung = new Layout.Hung(
                    offer.model(),
                    spot,
                    List.of(new Layout.Chain(plugs.get(0).port(), plugs.get(0).stream(), List.of(string))));
            String where = spot.at().equals(string.feed()) ? "its feed" : nearby.name(spot);
            return base.alternative(
                    "a " + offer.model().name() + " board of its own at " + where,
                    base.settle.all(hung(without, hung)));
        });
    }

    /** The addressed pixel board that costs least, among those of which there may be more. */
    private Optional<BoardOffer> model(Layout layout) {
        return base.yard.boards().stream()
                .filter(offer ->
                        offer.model().drives() == Drives.PIXELS && offer.model().addressed())
                .min(Comparator.comparing((BoardOffer offer) -> used(layout, offer) >= offer.most())
                        .thenComparingDouble(offer -> used(layout, offer) < offer.have() ? 0 : offer.price()));
    }

    private static long used(Layout layout, BoardOffer offer) {
        return layout.cables().stream()
                .flatMap(run -> run.boards().stream())
                .filter(board ->
                        board.model().equals(offer.model()) && !board.ports().isEmpty())
                .count();
    }

    /** With a board at the end of the cable that it lengthens least, or on a free jack where that is cheaper. */
    Layout hung(Layout layout, Layout.Hung board) {
        record Way(int cable, double money) {}
        List<Way> ways = new ArrayList<>();
        for (int c = 0; c < layout.cables().size(); c++) {
            Layout.Run run = layout.cables().get(c);
            boolean full = run.boards().size() >= run.controller().model().boardsPerCable();
            double money = added(run, board.spot().at()) * base.yard.costs().trunk();
            // a full cable comes last, but comes: the audit then tells the rule
            ways.add(new Way(c, full ? money + 1e12 : money));
        }
        for (Controller controller : base.yard.controllers()) {
            double hop = base.measures.hop(controller.at(), board.spot().at());
            if (jack(layout, controller).isPresent()) {
                int k = -1 - base.yard.controllers().indexOf(controller);
                ways.add(new Way(
                        k, hop * base.yard.costs().trunk() + base.yard.costs().cable()));
            }
        }
        Way best = ways.stream().min(Comparator.comparingDouble(Way::money)).orElseThrow();
        if (best.cable >= 0) {
            return Edits.run(layout, best.cable, boards -> Edits.inserted(boards, boards.size(), board));
        }
        Controller controller = base.yard.controllers().get(-1 - best.cable);
        int jack = jack(layout, controller).getAsInt();
        return Edits.run(layout, new Layout.Run(controller, jack, List.of(board)));
    }

    /** The first jack of a controller that carries nothing. */
    static OptionalInt jack(Layout layout, Controller controller) {
        return IntStream.rangeClosed(1, controller.model().jacks())
                .filter(jack -> layout.cables().stream()
                        .noneMatch(run -> run.controller().equals(controller) && run.jack() == jack))
                .findFirst();
    }

    /** Length that a visit to a point adds to a cable at its best place. */
    double added(Layout.Run run, Point point) {
        double best = Double.POSITIVE_INFINITY;
        for (int place = 0; place <= run.boards().size(); place++) {
            best = Math.min(best, added(run, point, place));
        }
        return best;
    }

    private double added(Layout.Run run, Point point, int place) {
        Point from = place == 0
                ? run.controller().at()
                : run.boards().get(place - 1).spot().at();
        double there = base.measures.hop(from, point);
        if (place == run.boards().size()) {
            return there;
        }
        Point to = run.boards().get(place).spot().at();
        return there + base.measures.hop(point, to) - base.measures.hop(from, to);
    }
}
