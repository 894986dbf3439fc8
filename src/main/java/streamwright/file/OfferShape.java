package streamwright.file;

import streamwright.yard.BoardModel;
import streamwright.yard.BoardOffer;

/** A board model that the plan may use. */
final class OfferShape extends Referring<BoardOffer> {
    private final Field<BoardModel> model = required(
            "model", new Named<>("a board model", around.library().boards(), around.whole()), "the board model");
    private final Field<Integer> most =
            optional("most", Whole.of(0, Integer.MAX_VALUE), "most that may be used; default no limit");
    private final Field<Integer> have =
            optional("have", Whole.of(0, Integer.MAX_VALUE), 0, "already owned: these cost nothing");
    private final Field<Double> price =
            optional("price", Numeral.fromZero(), "of each further one; default the model's price");

    OfferShape(Around around) {
        super("a board offer", around);
    }

    /** An offer of any number at the model's price. */
    static BoardOffer plain(BoardModel model) {
        return new BoardOffer(model, Integer.MAX_VALUE, 0, model.price());
    }

    @Override
    protected BoardOffer build(Values values) {
        BoardModel offered = values.get(model);
        return new BoardOffer(
                offered, values.get(most, Integer.MAX_VALUE), values.get(have), values.get(price, offered.price()));
    }
}
