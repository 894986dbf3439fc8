package streamwright.check;

import java.util.List;
import org.jspecify.annotations.Nullable;
import streamwright.plan.Board;
import streamwright.yard.BoardModel;
import streamwright.yard.BoardOffer;
import streamwright.yard.Point;
import streamwright.yard.Spot;

/**
 * A board.
 *
 * @param offer null where the yard offers no such model
 * @param place null where no board may hang
 */
record SeenBoard(
        Board board, @Nullable BoardOffer offer, @Nullable Spot place, List<SeenPort> ports) {
    String label() {
        return board.id();
    }

    @Nullable
    BoardModel model() {
        return offer == null ? null : offer.model();
    }

    /** The place as the yard has it, else as the plan says. */
    Point at() {
        return place == null ? board.at() : place.at();
    }

    Jack jack() {
        return new Jack(board.controller(), board.jack());
    }

    /** Of all its stretches. */
    double amps() {
        return ports.stream().mapToDouble(SeenPort::allAmps).sum();
    }
}
