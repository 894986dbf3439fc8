package streamwright.reason;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import streamwright.layout.Layout;
import streamwright.yard.Follow;
import streamwright.yard.Point;
import streamwright.yard.Spot;
import streamwright.yard.Yard;

class TourTest {
    private static final Yard YARD = Row.yard(List.of(RandomYard.FOUR), Follow.NONE, Row.ball("a", 10, 1));
    private static final Measures MEASURES = new Measures(YARD, Row.OPEN);

    private static Layout.Run cable(long seed, int boards) {
        Random random = new Random(seed);
        List<Layout.Hung> hung = new ArrayList<>();
        for (int b = 0; b < boards; b++) {
            Point at = new Point(random.nextInt(30), random.nextInt(30));
            hung.add(new Layout.Hung("B" + b, b, RandomYard.FOUR, Spot.unnamed(at), List.of()));
        }
        return new Layout.Run(Row.SHED, 1, hung);
    }

    private static double length(Layout.Run run) {
        double length = 0;
        Point from = run.controller().at();
        for (Layout.Hung board : run.boards()) {
            length += MEASURES.hop(from, board.spot().at());
            from = board.spot().at();
        }
        return length;
    }

    private static double shortest(Point from, List<Layout.Hung> left) {
        double best = left.isEmpty() ? 0 : Double.POSITIVE_INFINITY;
        for (Layout.Hung next : left) {
            List<Layout.Hung> rest = new ArrayList<>(left);
            rest.remove(next);
            Point at = next.spot().at();
            best = Math.min(best, MEASURES.hop(from, at) + shortest(at, rest));
        }
        return best;
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void upToEightBoardsTheOrderIsTheShortestOfAll(long seed) {
        Layout.Run run = cable(seed, 2 + (int) seed % 6);
        Layout.Run best = Tour.best(MEASURES, run);
        assertThat(best.boards()).containsExactlyInAnyOrderElementsOf(run.boards());
        assertThat(length(best)).isCloseTo(shortest(run.controller().at(), run.boards()), within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void beyondThatItIsNeverLongerAndNoBoardIsLost(long seed) {
        Layout.Run run = cable(seed, 14);
        Layout.Run best = Tour.best(MEASURES, run);
        assertThat(best.boards()).containsExactlyInAnyOrderElementsOf(run.boards());
        assertThat(length(best)).isLessThan(length(run));
        // the better of forward and back along the best order is itself
        List<Layout.Hung> back = new ArrayList<>(best.boards());
        Collections.reverse(back);
        assertThat(length(best)).isLessThanOrEqualTo(length(new Layout.Run(Row.SHED, 1, back)) + 1e-9);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void theNextOrderVisitsOtherPlaces(long seed) {
        Layout.Run best = Tour.best(MEASURES, cable(seed, 5));
        Layout.Run next = Tour.next(MEASURES, best);
        assertThat(next.boards()).isNotEqualTo(best.boards()).containsExactlyInAnyOrderElementsOf(best.boards());
        assertThat(length(next)).isGreaterThanOrEqualTo(length(best) - 1e-9);
    }
}
