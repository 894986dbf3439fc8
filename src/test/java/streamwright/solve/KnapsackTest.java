package streamwright.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class KnapsackTest {
    /** Held against every choice there is. */
    @Test
    void nothingIsWorthMoreThanTheBest() {
        SplittableRandom random = new SplittableRandom(4);
        for (int run = 0; run < 2_000; run++) {
            int things = 1 + random.nextInt(5);
            int room = 5 + random.nextInt(40);
            int most = 1 + random.nextInt(6);
            int[] size = random.ints(things, 1, 20).toArray();
            int[] count = random.ints(things, 0, 4).toArray();
            long[] value = random.longs(things, 0, 30).toArray();
            long best = most(size, count, value, room, most, 0);
            List<int[]> found = Knapsack.best(size, count, value, room, most, 0, Knapsack.EXACT);
            String all = Arrays.toString(size) + Arrays.toString(count) + Arrays.toString(value) + room + "/" + most;
            if (best == 0) {
                assertThat(found).as(all).isEmpty();
                continue;
            }
            assertThat(worth(found.get(found.size() - 1), value)).as(all).isEqualTo(best);
            assertThat(Knapsack.best(size, count, value, room, most, best, Knapsack.EXACT))
                    .as("above the best of %s", all)
                    .isEmpty();
            for (int[] pieces : found) {
                fits(pieces, size, count, room, most);
            }
            for (int[] pieces : Knapsack.best(size, count, value, room, most, 0, 3)) {
                fits(pieces, size, count, room, most);
                assertThat(worth(pieces, value)).isBetween(1L, best);
            }
        }
    }

    private static void fits(int[] pieces, int[] size, int[] count, int room, int most) {
        int load = 0;
        for (int k = 0; k < pieces.length; k++) {
            assertThat(pieces[k]).isBetween(0, count[k]);
            load += pieces[k] * size[k];
        }
        assertThat(load).isLessThanOrEqualTo(room);
        assertThat(Arrays.stream(pieces).sum()).isLessThanOrEqualTo(most);
    }

    private static long worth(int[] pieces, long[] value) {
        long worth = 0;
        for (int k = 0; k < pieces.length; k++) {
            worth += pieces[k] * value[k];
        }
        return worth;
    }

    private static long most(int[] size, int[] count, long[] value, int room, int most, int thing) {
        if (thing == size.length) {
            return 0;
        }
        long best = 0;
        for (int n = 0; n <= Math.min(count[thing], most) && n * size[thing] <= room; n++) {
            best = Math.max(
                    best, n * value[thing] + most(size, count, value, room - n * size[thing], most - n, thing + 1));
        }
        return best;
    }
}
