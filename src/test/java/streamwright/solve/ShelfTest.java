package streamwright.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Things on a line against every way to put them. */
class ShelfTest {
    @Test
    void asFewMoveAsAnyWayMoves() {
        int placed = 0;
        int moved = 0;
        int none = 0;
        for (int seed = 0; seed < 400; seed++) {
            Random random = new Random(seed * 0x9E3779B97F4A7C15L);
            int end = 6 + random.nextInt(5);
            List<Shelf.Thing> things = new ArrayList<>();
            for (int i = 1 + random.nextInt(4); i > 0; i--) {
                long was = random.nextInt(4) == 0 ? Shelf.NOWHERE : 1 + random.nextInt(end);
                things.add(new Shelf.Thing(1 + random.nextInt(4), was, random.nextBoolean(), false));
            }
            int least = least(things, new long[things.size()], 0, end);
            Shelf.Placed found = Shelf.place(things, 1, end);
            if (least == Integer.MAX_VALUE) {
                none++;
                assertThat(found).as("seed %d", seed).isNull();
                continue;
            }
            placed++;
            moved += least > 0 ? 1 : 0;
            Shelf.Placed there = Objects.requireNonNull(found, "seed " + seed);
            assertThat(there.exact()).isTrue();
            assertThat(there.moved()).as("seed %d", seed).isEqualTo(least);
            assertThat(moves(things, there.at())).as("seed %d", seed).isEqualTo(least);
            assertThat(apart(things, there.at(), things.size())).isTrue();
        }
        assertThat(placed).isGreaterThan(100);
        assertThat(moved).isGreaterThan(30);
        assertThat(none).isGreaterThan(30);
    }

    private static int least(List<Shelf.Thing> things, long[] at, int next, int end) {
        if (next == things.size()) {
            return moves(things, at);
        }
        int least = Integer.MAX_VALUE;
        for (int begin = 1; begin + things.get(next).length() - 1 <= end; begin++) {
            at[next] = begin;
            if (apart(things, at, next + 1)) {
                least = Math.min(least, least(things, at, next + 1, end));
            }
        }
        return least;
    }

    private static boolean apart(List<Shelf.Thing> things, long[] at, int count) {
        for (int i = 0; i < count; i++) {
            for (int j = 0; j < i; j++) {
                if (at[i] < at[j] + things.get(j).length()
                        && at[j] < at[i] + things.get(i).length()) {
                    return false;
                }
            }
        }
        return Arrays.stream(at, 0, count).allMatch(begin -> begin >= 1);
    }

    private static int moves(List<Shelf.Thing> things, long[] at) {
        int moves = 0;
        for (int i = 0; i < at.length; i++) {
            moves += things.get(i).counts() && at[i] != things.get(i).was() ? 1 : 0;
        }
        return moves;
    }
}
