package streamwright.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import streamwright.solve.Continuations.Next;

/** The best continuation by dynamic programme beside all that there are. */
class ContinuationsTest {
    private static final double ROUNDING = 1e-9;
    private static final int MOST = 12;

    private record Chains(Next[][] next, int[] steps, int[] count, double[] worth, double[] charge) {
        static Chains of(SplittableRandom random, int items, int countMost, int dense) {
            Next[][] next = new Next[items][];
            for (int from = 0; from < items; from++) {
                List<Next> out = new ArrayList<>();
                for (int to = 0; to < items; to++) {
                    if (random.nextInt(3) < dense) {
                        out.add(new Next(to, random.nextDouble(3), 0));
                    }
                }
                next[from] = out.toArray(Next[]::new);
            }
            int[] steps = random.ints(items, 1, 5).toArray();
            int[] count = random.ints(items, 1, countMost + 1).toArray();
            double[] worth = random.doubles(items, 0, 4).toArray();
            double[] charge = new double[MOST + 1];
            for (int taken = 1; taken <= MOST; taken++) {
                charge[taken] = charge[taken - 1] + random.nextInt(2);
            }
            return new Chains(next, steps, count, worth, charge);
        }

        /** All items are scarce, so all are remembered as far as memory goes. */
        Memories memories() {
            boolean[] scarce = new boolean[next.length];
            Arrays.fill(scarce, true);
            return new Memories(next, count, scarce);
        }

        /** What the chain in hand can win at most by growing on, each item as often as there are strings of it. */
        double most(int last, int taken, int[] uses) {
            double best = 0;
            for (Next to : next[last]) {
                int longer = taken + steps[to.item()];
                if (longer <= MOST && uses[to.item()] < count[to.item()]) {
                    uses[to.item()]++;
                    double win = worth[to.item()] - to.cost() - (charge[longer] - charge[taken]);
                    best = Math.max(best, win + most(to.item(), longer, uses));
                    uses[to.item()]--;
                }
            }
            return best;
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 3, 6})
    void withFewItemsOfOneStringThatAllMayFollowEachOtherItIsExact(int items) {
        SplittableRandom random = new SplittableRandom(items);
        for (int run = 0; run < 100; run++) {
            Chains chains = Chains.of(random, items, 1, 3);
            Memories memories = chains.memories();
            Continuations continuations = new Continuations(chains.next, memories, chains.steps, MOST);
            continuations.price(chains.worth, chains.charge);
            for (int head = 0; head < items; head++) {
                int[] uses = new int[items];
                uses[head] = 1;
                double exact = chains.most(head, chains.steps[head], uses);
                assertThat(continuations.most(head, memories.begin(head), chains.steps[head]))
                        .isCloseTo(exact, within(ROUNDING));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {4, 7, 10})
    void withItemsThatRepeatItIsNeverTooLow(int items) {
        SplittableRandom random = new SplittableRandom(items);
        for (int run = 0; run < 30; run++) {
            Chains chains = Chains.of(random, items, 3, 2);
            Memories memories = chains.memories();
            Continuations continuations = new Continuations(chains.next, memories, chains.steps, MOST);
            continuations.price(chains.worth, chains.charge);
            for (int head = 0; head < items; head++) {
                int[] uses = new int[items];
                uses[head] = 1;
                double exact = chains.most(head, chains.steps[head], uses);
                double said = continuations.most(head, memories.begin(head), chains.steps[head]);
                assertThat(said).isGreaterThanOrEqualTo(exact - ROUNDING);
                assertThat(value(chains, continuations.best(head))).isCloseTo(said, within(ROUNDING));
            }
        }
    }

    /** What a chain wins behind its head. */
    private static double value(Chains chains, List<Integer> chain) {
        double win = 0;
        int taken = chains.steps[chain.get(0)];
        for (int i = 1; i < chain.size(); i++) {
            int item = chain.get(i);
            Next to = Arrays.stream(chains.next[chain.get(i - 1)])
                    .filter(next -> next.item() == item)
                    .findFirst()
                    .orElseThrow();
            int longer = taken + chains.steps[item];
            win += chains.worth[item] - to.cost() - (chains.charge[longer] - chains.charge[taken]);
            taken = longer;
        }
        return win;
    }
}
