package streamwright.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import streamwright.physics.GroundPaths;
import streamwright.yard.Address;
import streamwright.yard.BoardModel;
import streamwright.yard.BoardOffer;
import streamwright.yard.Yard;

/** The coefficients of the cuts by their theorems: that no plan breaks them also holds of cuts that say too little. */
class CutTest {
    private static final int CONTROLLERS = 2;

    /** W is the first and third of three spots; nodes 0 and 1 are controllers, 2 to 4 the spots. */
    private static final boolean[] INSIDE = {true, false, true};

    private static void weighsArcsInto(Row row, double weight) {
        double[][] expected = {
            {weight, 0, weight}, {weight, 0, weight}, {0, 0, 0}, {weight, 0, weight}, {0, 0, 0},
        };
        double[][] sums = new double[CONTROLLERS + INSIDE.length][INSIDE.length];
        row.addArcs(0.5, sums);
        row.addArcs(0.5, sums);
        assertThat(sums).isDeepEqualTo(expected);
        for (int from = 0; from < expected.length; from++) {
            for (int to = 0; to < INSIDE.length; to++) {
                assertThat(row.arc(from, to)).as("%d to %d", from, to).isEqualTo(expected[from][to]);
            }
        }
        assertThat(row.hasArcs()).isTrue();
        isCutFrom(row, 0);
    }

    private static void isCutFrom(Row row, double low) {
        assertThat(row.cut()).isTrue();
        assertThat(row.low()).isEqualTo(low);
        assertThat(row.high()).isEqualTo(Double.POSITIVE_INFINITY);
    }

    /** Each of 3 strings of item 1 that is served from W needs an arc into W: the sum of three rows. */
    @Test
    void whatIsServedFromASetNeedsAnArcIntoIt() {
        Row row = Cut.connected(INSIDE, CONTROLLERS, 1, 3);
        weighsArcsInto(row, 3);
        assertThat(row.onlyItem()).isEqualTo(1);
        assertThat(new double[] {row.item(1, 0), row.item(1, 1), row.item(1, 2), row.item(0, 0)})
                .containsExactly(-1, 0, -1, 0);
    }

    @Test
    void aUsedSpotNeedsAnArcIntoItsSet() {
        Row row = Cut.reached(INSIDE, CONTROLLERS, 2);
        weighsArcsInto(row, 1);
        assertThat(new double[] {row.used(0), row.used(1), row.used(2)}).containsExactly(0, 0, -1);
    }

    @Test
    void stringsAreServedFromUsedSpotsAlone() {
        Row row = Cut.usedSpot(1, 4, 2);
        isCutFrom(row, 0);
        assertThat(row.onlyItem()).isEqualTo(1);
        assertThat(new double[] {row.item(1, 2), row.item(1, 1), row.item(0, 2)})
                .containsExactly(-1, 0, 0);
        assertThat(new double[] {row.used(2), row.used(1)}).containsExactly(4, 0);
    }

    /** With boards of 4 and of 2 ports. */
    private static Site site() {
        Yard garden = TinyGarden.of(1);
        Yard yard = Changed.with(
                garden, "boards", List.of(offer("four", List.of(1, 2, 3, 4)), offer("two", List.of(1, 2))));
        return new Site(yard, GroundPaths.of(yard));
    }

    private static BoardOffer offer(String name, List<Integer> ports) {
        BoardModel model = BoardModel.ofPorts(name, ports, new Address.Switches(0, 15, 4), 20, 5);
        return new BoardOffer(model, Integer.MAX_VALUE, 0, model.price());
    }

    /**
     * Seven strings on boards of at most four ports need two boards of four, or of one with a board of two the rest of
     * three weighs two thirds: times the rest, {@code 3 four + 2 two + s >= 3 * 2} with s the strings that lead nowhere
     * in W, of which {@code heads = 7 - s} are counted.
     */
    @Test
    void sevenStringsNeedTwoBoardsOfFour() {
        Site site = site();
        Row row = Cut.wholeBoards(INSIDE, new boolean[] {true, false}, 7, site, 0, 4);
        isCutFrom(row, 3 * 2 - 7);
        assertThat(new double[] {row.board(0, 0), row.board(0, 1), row.board(2, 0), row.board(1, 0)})
                .containsExactly(3, 2, 3, 0);
        assertThat(new double[] {row.head(0, 0), row.head(0, 1), row.head(1, 0)})
                .containsExactly(-1, 0, 0);
        assertThat(row.hasHeads()).isTrue();
        // two boards of four serve them, one does not
        assertThat(2 * row.board(0, 0) + 7 * row.head(0, 0)).isGreaterThanOrEqualTo(row.low());
        assertThat(row.board(0, 0) + 7 * row.head(0, 0)).isLessThan(row.low());
        assertThat(row.board(0, 0) + row.board(0, 1) + 6 * row.head(0, 0)).isGreaterThanOrEqualTo(row.low());
    }

    /** Five: the rest of one finds room on any board. */
    @Test
    void fiveStringsNeedAnyTwoBoards() {
        Row row = Cut.wholeBoards(INSIDE, new boolean[] {true, false}, 5, site(), 0, 4);
        isCutFrom(row, 2 - 5);
        assertThat(new double[] {row.board(0, 0), row.board(0, 1)}).containsExactly(1, 1);
    }

    @Test
    void boardsOfOtherGroupsDoNotCount() {
        Row row = Cut.wholeBoards(INSIDE, new boolean[] {true, false}, 5, site(), 1, 4);
        assertThat(new double[] {row.board(0, 0), row.board(0, 1)}).containsExactly(0, 0);
    }

    /** Item 0 takes a quarter of a stream a string, item 1 a tenth; the cables have the streams of the best controller. */
    @Test
    void whatIsServedFromASetComesThroughItsCables() {
        Site site = site();
        Row row = Cut.carried(new boolean[site.spots.length], site, new Items(site), new double[] {0.25, 0.1});
        assertThat(row.onlyItem()).isEqualTo(Row.ALL);
        assertThat(row.item(0, 0)).isZero();
        boolean[] inside = new boolean[site.spots.length];
        inside[0] = true;
        Row into = Cut.carried(inside, site, new Items(site), new double[] {0.25, 0.1});
        assertThat(new double[] {into.item(0, 0), into.item(1, 0), into.item(0, 1)})
                .containsExactly(-0.25, -0.1, 0);
        assertThat(into.arc(0, 0)).isEqualTo(site.streams[0]);
        assertThat(into.arc(0, 1)).isZero();
    }
}
