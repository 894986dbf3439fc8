package streamwright.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Flows and cuts of small random graphs beside all 2^(n-2) cuts. */
class MinCutTest {
    private static final double ROUNDING = 1e-6;
    private static final int SOURCE = 0;
    private static final int SINK = 1;

    @ParameterizedTest
    @ValueSource(ints = {2, 3, 5, 7, 9})
    void flowIsTheSmallestCut(int nodes) {
        SplittableRandom random = new SplittableRandom(nodes);
        for (int run = 0; run < 200; run++) {
            double[][] room = new double[nodes][nodes];
            MinCut graph = new MinCut(nodes);
            for (int arc = 0; arc < nodes * (nodes + 2) / 3; arc++) {
                int from = random.nextInt(nodes);
                int to = random.nextInt(nodes);
                // whole numbers now and then, so that several cuts are smallest
                double more = random.nextBoolean() ? random.nextInt(3) : random.nextDouble(3);
                room[from][to] += more;
                graph.arc(from, to, more);
            }
            double least = Double.POSITIVE_INFINITY;
            for (int sinkSide = 0; sinkSide < 1 << nodes; sinkSide++) {
                if ((sinkSide & 1 << SOURCE) == 0 && (sinkSide & 1 << SINK) != 0) {
                    least = Math.min(least, cut(room, sinkSide));
                }
            }
            assertThat(graph.flow(SOURCE, SINK, least / 2)).isCloseTo(least / 2, within(ROUNDING));
            assertThat(graph.flow(SOURCE, SINK, least + 1)).isCloseTo(least, within(ROUNDING));
            int smallest = bits(graph.sinkSide(SINK));
            int largest = bits(graph.beyondSource(SOURCE));
            for (int sinkSide = 0; sinkSide < 1 << nodes; sinkSide++) {
                boolean parts = (sinkSide & 1 << SOURCE) == 0 && (sinkSide & 1 << SINK) != 0;
                if (parts && cut(room, sinkSide) < least + ROUNDING) {
                    assertThat(sinkSide & smallest)
                            .as("inside every smallest cut")
                            .isEqualTo(smallest);
                    assertThat(sinkSide | largest)
                            .as("outside every smallest cut")
                            .isEqualTo(largest);
                }
            }
            assertThat(cut(room, smallest)).isCloseTo(least, within(ROUNDING));
            assertThat(cut(room, largest)).isCloseTo(least, within(ROUNDING));
        }
    }

    /**
     * All flows by 2, 3; but 2 would reach the sink by 4, 5 as well, and so does 3 where its flow is taken back: of both
     * sets with the sink's own side, only that with 3 in it is entered by the arc to 2 alone.
     */
    @Test
    void theSinkIsAlsoReachedByTakingFlowBack() {
        MinCut graph = new MinCut(6);
        graph.arc(2, 3, 1);
        graph.arc(SOURCE, 2, 1);
        graph.arc(3, SINK, 1);
        graph.arc(2, 4, 1);
        graph.arc(4, 5, 1);
        graph.arc(5, SINK, 1);
        assertThat(graph.flow(SOURCE, SINK, 2)).isEqualTo(1);
        assertThat(graph.sinkSide(SINK)).containsExactly(false, true, true, true, true, true);
    }

    private static double cut(double[][] room, int sinkSide) {
        double sum = 0;
        for (int from = 0; from < room.length; from++) {
            for (int to = 0; to < room.length; to++) {
                sum += (sinkSide & 1 << from) == 0 && (sinkSide & 1 << to) != 0 ? room[from][to] : 0;
            }
        }
        return sum;
    }

    private static int bits(boolean[] side) {
        int bits = 0;
        for (int i = 0; i < side.length; i++) {
            bits |= side[i] ? 1 << i : 0;
        }
        return bits;
    }
}
