package streamwright.cli;

import java.util.List;
import org.jspecify.annotations.Nullable;
import streamwright.yard.BoardOffer;

/** What one row asks for; {@code boards} is exact, null where any number will do. */
record Wish(@Nullable Integer boards, double frameRate, double spare, String models, List<BoardOffer> offers) {
    Wish {
        offers = List.copyOf(offers);
    }

    /** How unlike two rows are. */
    double away(Wish other) {
        int one = boards == null ? 0 : boards;
        int two = other.boards == null ? 0 : other.boards;
        return Math.abs(one - two)
                + 3 * Math.abs(frameRate / other.frameRate - 1)
                + 3 * Math.abs(spare - other.spare)
                + (models.equals(other.models) ? 0 : 5);
    }

    /** Whether every plan of the other row is one of this. */
    boolean allows(Wish other) {
        return (boards == null || boards.equals(other.boards))
                && frameRate <= other.frameRate
                && spare <= other.spare
                && offers.containsAll(other.offers);
    }
}
