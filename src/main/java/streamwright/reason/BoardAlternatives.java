package streamwright.reason;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import streamwright.layout.Layout;
import streamwright.yard.BoardModel;
import streamwright.yard.BoardOffer;
import streamwright.yard.Spot;

/** One board elsewhere, of another model, taken down, elsewhere on its cable, on another cable, with another ID. */
final class BoardAlternatives {
    private static final int PLACES = 3;
    private static final int MODELS = 3;
    private static final int CABLES = 2;

    private final Base base;
    private final Nearby nearby;
    private final NewBoard newBoard;
    private final TakenDown takenDown;

    BoardAlternatives(Base base, Nearby nearby) {
        this.base = base;
        this.nearby = nearby;
        newBoard = new NewBoard(base, nearby);
        takenDown = new TakenDown(base, nearby);
    }

    /** Empty where it is the only board. */
    List<Alternative> down(Nearby.At at) {
        if (nearby.boards().size() < 2) {
            return List.of();
        }
        return List.of(base.alternative("taking it down", takenDown.of(at)));
    }

    List<Alternative> places(Nearby.At at) {
        List<Alternative> alternatives = new ArrayList<>();
        for (Spot spot : nearby.placesBeside(at.hung().spot().at(), PLACES)) {
            Layout changed = Edits.board(base.layout, at.cable(), at.board(), hung -> hung.at(spot));
            alternatives.add(base.alternative(nearby.name(spot), base.settle.all(changed)));
        }
        return alternatives;
    }

    List<Alternative> models(Nearby.At at) {
        return base.yard.boards().stream()
                .map(BoardOffer::model)
                .filter(model -> model.drives() == at.hung().model().drives()
                        && !model.equals(at.hung().model()))
                .limit(MODELS)
                .map(model -> base.alternative("a " + model.name() + " board", base.settle.all(modelled(at, model))))
                .toList();
    }

    /** Its chains, the largest first, on the new model's ports with most room; the ID is given anew. */
    private Layout modelled(Nearby.At at, BoardModel model) {
        Layout.Hung was = at.hung();
        Layout.Hung bare = new Layout.Hung(was.name(), null, model, was.spot(), List.of(), was.block(), was.panels());
        Layout layout = Edits.board(base.layout, at.cable(), at.board(), hung -> bare);
        List<Layout.Chain> chains = new ArrayList<>(at.hung().ports());
        chains.sort(Comparator.comparingLong(
                (Layout.Chain chain) -> -base.measures.pixels(bare.spot().at(), chain.strings())));
        for (Layout.Chain chain : chains) {
            Layout.Run run = layout.cables().get(at.cable());
            List<Plug> free = Plug.free(run, run.boards().get(at.board()));
            List<Plug> open =
                    free.isEmpty() ? Plug.all(model, run.controller().model().streams()) : free;
            Plug plug = Load.of(base.measures, run)
                    .roomiest(open, base.measures.kind(chain.strings().get(0)));
            layout = Edits.board(
                    layout,
                    at.cable(),
                    at.board(),
                    hung -> Edits.plus(hung, new Layout.Chain(plug.port(), plug.stream(), chain.strings())));
        }
        return layout;
    }

    /** The other positions on its cable, all else in its order. */
    List<Alternative> positions(Nearby.At at) {
        List<Alternative> alternatives = new ArrayList<>();
        for (int position = 0; position < at.run().boards().size(); position++) {
            if (position != at.board()) {
                int to = position;
                Layout changed = Edits.run(
                        base.layout,
                        at.cable(),
                        boards -> Edits.inserted(Edits.removed(boards, at.board()), to, at.hung()));
                alternatives.add(base.alternative("place " + (position + 1) + " on its cable", changed));
            }
        }
        return alternatives;
    }

    /** On the other cables that it lengthens least, and on a cable of its own. */
    List<Alternative> cables(Nearby.At at) {
        List<Alternative> alternatives = new ArrayList<>();
        record Way(int cable, double added) {}
        List<Way> ways = new ArrayList<>();
        for (int c = 0; c < base.layout.cables().size(); c++) {
            if (c != at.cable()) {
                Layout.Run run = base.layout.cables().get(c);
                ways.add(new Way(c, newBoard.added(run, at.hung().spot().at())));
            }
        }
        Layout without =
                Edits.run(base.layout, at.cable(), boards -> Edits.replaced(boards, at.board(), bare(at.hung())));
        ways.stream()
                .sorted(Comparator.comparingDouble(Way::added))
                .limit(CABLES)
                .forEach(way -> {
                    Layout changed =
                            Edits.run(without, way.cable, boards -> Edits.inserted(boards, boards.size(), at.hung()));
                    Layout.Run run = base.layout.cables().get(way.cable);
                    alternatives.add(base.alternative("the cable of " + Cables.name(run), base.settle.all(changed)));
                });
        OptionalInt jack = NewBoard.jack(base.layout, at.run().controller());
        if (at.run().boards().size() > 1 && jack.isPresent()) {
            Layout.Run own = new Layout.Run(at.run().controller(), jack.getAsInt(), List.of(at.hung()));
            alternatives.add(base.alternative(
                    "a cable of its own from " + Cables.name(own), base.settle.all(Edits.run(without, own))));
        }
        return alternatives;
    }

    private static Layout.Hung bare(Layout.Hung hung) {
        return hung.emptied();
    }

    /** The ID of another board of its cable, or else 0, at which boards are shipped; empty without an address. */
    List<Alternative> ids(Nearby.At at) {
        Integer id = at.hung().boardId();
        if (id == null) {
            return List.of();
        }
        for (Layout.Hung other : at.run().boards()) {
            Integer taken = other.boardId();
            if (taken != null && !taken.equals(id)) {
                return List.of(identified(at, taken, "ID " + taken + ", which is that of " + other.name()));
            }
        }
        return id == 0 ? List.of() : List.of(identified(at, 0, "ID 0, at which boards are shipped"));
    }

    private Alternative identified(Nearby.At at, int id, String what) {
        Layout.Hung old = at.hung();
        return base.alternative(
                what, Edits.board(base.layout, at.cable(), at.board(), hung -> old.named(old.name(), id)));
    }
}
