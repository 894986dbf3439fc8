package streamwright.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Numbers of cables and boards told apart, beside each pair of numbers by itself. */
class CountsTest {
    private static final int MOST = 5;

    /** Every plan is in one part and no more; a solution with a part of a cable or a board is in none. */
    @Test
    void everyPlanIsInOnePart() {
        int told = 0;
        int broken = 0;
        for (Counts all : every()) {
            for (double cables = all.leastCables(); cables <= all.mostCables(); cables += 0.25) {
                for (double boards = all.leastBoards(); boards <= all.mostBoards(); boards += 0.25) {
                    double u = cables;
                    double k = boards;
                    List<Counts> parts = all.apart(u, k, false);
                    assertThat(parts).noneMatch(part -> holds(part, u, k));
                    broken += parts.isEmpty() ? 0 : 1;
                    List<Counts> fixed = all.apart(u, k, true);
                    for (List<Counts> some : List.of(parts, fixed)) {
                        if (!some.isEmpty()) {
                            keepsEveryPlan(all, some);
                            assertThat(some).doesNotContain(all);
                            told++;
                        }
                    }
                }
            }
        }
        assertThat(broken).isGreaterThan(1_000);
        assertThat(told).isGreaterThan(2 * broken);
    }

    private static void keepsEveryPlan(Counts all, List<Counts> parts) {
        for (int cables = 0; cables <= MOST; cables++) {
            for (int boards = 0; boards <= MOST; boards++) {
                int u = cables;
                int k = boards;
                assertThat(parts.stream().filter(part -> holds(part, u, k)))
                        .as("%s: %d cables, %d boards", all, u, k)
                        .hasSize(holds(all, u, k) ? 1 : 0);
            }
        }
    }

    /** Only what has one number of each is not told apart where it should be. */
    @Test
    void whatIsFixedStaysWhole() {
        int fixed = 0;
        for (Counts all : every()) {
            boolean one = all.leastCables() == all.mostCables() && all.leastBoards() == all.mostBoards();
            assertThat(all.apart(all.leastCables(), all.mostBoards(), true).isEmpty())
                    .as("%s", all)
                    .isEqualTo(one);
            fixed += one ? 1 : 0;
        }
        assertThat(fixed).isEqualTo(MOST * MOST);
    }

    /** Solutions come with rounding. */
    @Test
    void nearlyWholeIsWhole() {
        Counts all = new Counts(1, 4, 1, 4);
        assertThat(all.apart(2 - 1e-8, 3 + 1e-8, false)).isEmpty();
        assertThat(all.apart(2 - 1e-4, 3, false)).containsExactly(new Counts(1, 1, 1, 4), new Counts(2, 4, 1, 4));
        assertThat(all.apart(1 - 1e-4, 4 + 1e-4, false)).isEmpty();
        assertThat(all.apart(2, 3 - 1e-8, true))
                .containsExactly(new Counts(1, 1, 1, 4), new Counts(2, 2, 1, 4), new Counts(3, 4, 1, 4));
    }

    private static List<Counts> every() {
        List<Counts> every = new ArrayList<>();
        for (int a = 1; a <= MOST; a++) {
            for (int b = a; b <= MOST; b++) {
                for (int c = 1; c <= MOST; c++) {
                    for (int d = c; d <= MOST; d++) {
                        every.add(new Counts(a, b, c, d));
                    }
                }
            }
        }
        return every;
    }

    private static boolean holds(Counts counts, double cables, double boards) {
        return cables >= counts.leastCables()
                && cables <= counts.mostCables()
                && boards >= counts.leastBoards()
                && boards <= counts.mostBoards();
    }
}
