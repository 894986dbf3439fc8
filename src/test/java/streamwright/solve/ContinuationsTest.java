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

    /**
     * @param stretch steps that one place of power feeds at most
     * @param injection price of one on each item
     */
    private record Chains(Next[][] next, int[] steps, int[] count, double[] worth, int stretch, double[] injection) {
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
            double[] injection = random.doubles(items, 0, 3).toArray();
            return new Chains(next, steps, count, worth, random.nextInt(2, MOST + 2), injection);
        }

        Continuations continuations(Memories memories) {
            int[] pixels = new int[next.length];
            Arrays.fill(pixels, stretch);
            PowerSteps power = new PowerSteps(steps, pixels, 1, MOST);
            Continuations continuations = new Continuations(next, memories, steps, MOST, power);
            Arrivals come = new Arrivals(next, steps, MOST);
            for (int head = 0; head < next.length; head++) {
                come.begin(head, 0);
            }
            come.grow(worth, new double[next.length][MOST + 1], Double.POSITIVE_INFINITY);
            continuations.price(worth, injection, come);
            return continuations;
        }

        /** Steps behind the last place of power at the end of a head that needs no injection. */
        int since(int head) {
            return stretch > MOST - 1 ? 0 : steps[head];
        }

        /** All items are scarce, so all are remembered as far as memory goes. */
        Memories memories() {
            boolean[] scarce = new boolean[next.length];
            Arrays.fill(scarce, true);
            return new Memories(next, count, scarce, 8);
        }

        /** What the chain in hand can win at most by growing on, each item as often as there are strings of it. */
        double most(List<Integer> chain, int taken, int[] uses) {
            double best = 0;
            for (Next to : next[chain.get(chain.size() - 1)]) {
                int longer = taken + steps[to.item()];
                if (longer <= MOST && uses[to.item()] < count[to.item()]) {
                    uses[to.item()]++;
                    chain.add(to.item());
                    best = Math.max(best, Math.max(win(chain), most(chain, longer, uses)));
                    chain.remove(chain.size() - 1);
                    uses[to.item()]--;
                }
            }
            return best;
        }

        /** What a chain wins behind its head. */
        double win(List<Integer> chain) {
            double win = -power(chain);
            for (int i = 1; i < chain.size(); i++) {
                int item = chain.get(i);
                Next to = Arrays.stream(next[chain.get(i - 1)])
                        .filter(one -> one.item() == item)
                        .findFirst()
                        .orElseThrow();
                win += worth[item] - to.cost();
            }
            return win;
        }

        /** The cheapest places of power behind the head, each pixel tried, none farther than a stretch from the last. */
        private double power(List<Integer> chain) {
            int length = chain.stream().mapToInt(item -> steps[item]).sum();
            int[] on = new int[length];
            int filled = 0;
            for (int item : chain) {
                Arrays.fill(on, filled, filled + steps[item], item);
                filled += steps[item];
            }
            double[] least = new double[length];
            double best = length <= stretch ? 0 : Double.POSITIVE_INFINITY;
            for (int place = 0; place < length; place++) {
                least[place] = place == 0 ? 0 : Double.POSITIVE_INFINITY;
                for (int last = Math.max(0, place - stretch); last < place && place >= steps[chain.get(0)]; last++) {
                    least[place] = Math.min(least[place], least[last] + price(on, place, steps[chain.get(0)]));
                }
                if (length - place <= stretch) {
                    best = Math.min(best, least[place]);
                }
            }
            return best;
        }

        /** One between two strings counts as on either, but none as on the head. */
        private double price(int[] on, int place, int head) {
            double here = injection[on[place]];
            return place > head ? Math.min(here, injection[on[place - 1]]) : here;
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void withFewItemsOfOneStringThatAllMayFollowEachOtherItIsExact(int items) {
        SplittableRandom random = new SplittableRandom(items);
        for (int run = 0; run < 100; run++) {
            Chains chains = Chains.of(random, items, 1, 3);
            Memories memories = chains.memories();
            Continuations continuations = chains.continuations(memories);
            for (int head = 0; head < items; head++) {
                if (chains.steps[head] > chains.stretch) {
                    continue;
                }
                int[] uses = new int[items];
                uses[head] = 1;
                double exact = chains.most(new ArrayList<>(List.of(head)), chains.steps[head], uses);
                assertThat(continuations.most(head, memories.begin(head), chains.steps[head], chains.since(head)))
                        .isCloseTo(exact, within(ROUNDING));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {4, 6, 8})
    void withItemsThatRepeatItIsNeverTooLow(int items) {
        SplittableRandom random = new SplittableRandom(items);
        for (int run = 0; run < 30; run++) {
            Chains chains = Chains.of(random, items, 3, 2);
            Memories memories = chains.memories();
            Continuations continuations = chains.continuations(memories);
            for (int head = 0; head < items; head++) {
                if (chains.steps[head] > chains.stretch) {
                    continue;
                }
                int[] uses = new int[items];
                uses[head] = 1;
                double exact = chains.most(new ArrayList<>(List.of(head)), chains.steps[head], uses);
                double said = continuations.most(head, memories.begin(head), chains.steps[head], chains.since(head));
                assertThat(said).isGreaterThanOrEqualTo(exact - ROUNDING);
                assertThat(chains.win(continuations.best(head, chains.since(head))))
                        .isCloseTo(said, within(ROUNDING));
            }
        }
    }
}
