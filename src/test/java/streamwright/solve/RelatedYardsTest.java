package streamwright.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.function.LongFunction;
import java.util.function.Predicate;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import streamwright.check.Audit;
import streamwright.layout.Assembly;
import streamwright.physics.Ground;
import streamwright.physics.GroundPaths;
import streamwright.yard.Yard;

/**
 * Seeded yards, and the same yards changed so that it is known what that does to the cheapest plan: whatever is said of
 * the two must agree. Gardens of 3 to 6 strings, which are proved soon, and beside them, in the long run, yards of 6 to 14
 * strings in which all rules bind: these are seldom proved, so that mostly the bound of one meets the cost of the other.
 */
class RelatedYardsTest {
    private static final int SHORT_RUN = 5 * Relation.values().length;
    private static final int LONG_RUN = Integer.getInteger("relatedYards", 600);
    private static final double SECONDS_MOST = 0.2;

    /** A cost is proved to 2e-5, and there are two. */
    private static final double ROUNDING = 5e-5;

    /** What the planner says of a yard: the cheapest plan costs from bound to cost, infinite where there is no plan. */
    private record Said(double bound, double cost, List<String> findings) {
        static Said of(Yard yard) {
            Ground ground = GroundPaths.of(yard);
            Budget budget = new Budget(0, 4, 1, 1, new CpuLimit(SECONDS_MOST));
            Outcome outcome = Planner.plan(yard, ground, budget, Outcome.SILENT);
            if (outcome instanceof Outcome.Found found) {
                List<String> findings = Audit.of(yard, Assembly.plan(yard, ground, found.layout())).list().stream()
                        .map(Object::toString)
                        .toList();
                return new Said(found.bound(), found.cost(), findings);
            }
            double none = Double.POSITIVE_INFINITY;
            return new Said(outcome instanceof Outcome.Impossible ? none : 0, none, List.of());
        }

        boolean decided() {
            return bound >= cost - ROUNDING;
        }
    }

    private record Pair(Relation relation, long seed, Said before, Said after) {
        static Pair of(Relation relation, long seed, Yard any) {
            Yard yard = relation.base(any);
            return new Pair(relation, seed, Said.of(yard), Said.of(relation.changed(yard, seed)));
        }

        /** All that cannot be true together. */
        List<String> wrong() {
            List<String> wrong = new ArrayList<>(before.findings);
            wrong.addAll(after.findings);
            double factor = relation.kind == Relation.Kind.TWICE ? 2 : 1;
            if (relation.kind != Relation.Kind.LOOSER && factor * before.bound > after.cost + ROUNDING) {
                wrong.add("a plan for " + after.cost + " after the change, none below " + before.bound + " before");
            }
            if (relation.kind != Relation.Kind.TIGHTER && after.bound > factor * before.cost + ROUNDING) {
                wrong.add("a plan for " + before.cost + " before the change, none below " + after.bound + " after");
            }
            return wrong.stream()
                    .map(text -> relation + " seed " + seed + ": " + text)
                    .toList();
        }

        /** Whether both have plans, each proved the cheapest: then the two costs are compared, not only bounds. */
        boolean decided() {
            return before.cost < Double.POSITIVE_INFINITY
                    && after.cost < Double.POSITIVE_INFINITY
                    && before.decided()
                    && after.decided();
        }

        /** Whether the change is proved to have made a difference. */
        boolean differs() {
            return before.bound > after.cost + ROUNDING || after.bound > before.cost + ROUNDING;
        }
    }

    private static List<Pair> pairs(int count, LongFunction<Yard> yards) {
        Relation[] all = Relation.values();
        List<Pair> pairs = LongStream.range(0, count)
                .parallel()
                .mapToObj(n -> Pair.of(all[(int) (n % all.length)], 10_000 + n, yards.apply(10_000 + n)))
                .toList();
        assertThat(pairs.stream().flatMap(pair -> pair.wrong().stream())).isEmpty();
        return pairs;
    }

    private static long count(List<Pair> pairs, Predicate<Pair> which) {
        return pairs.stream().filter(which).count();
    }

    private static void print(String yards, List<Pair> pairs) {
        for (Relation relation : Relation.values()) {
            List<Pair> its =
                    pairs.stream().filter(pair -> pair.relation == relation).toList();
            System.out.printf(
                    "%s: %-24s %4d, %4d proved cheapest before and after, %4d proved to differ%n",
                    yards, relation, its.size(), count(its, Pair::decided), count(its, Pair::differs));
        }
    }

    @Test
    void relatedGardensCostWhatTheirRelationSays() {
        List<Pair> pairs = pairs(SHORT_RUN, TinyGarden::of);
        // where nothing is proved little can contradict
        assertThat(count(pairs, Pair::decided)).isGreaterThan(SHORT_RUN / 4);
        // and where no change made a difference, none with the wrong sign could be seen
        assertThat(pairs.stream().filter(Pair::differs).filter(pair -> pair.relation.kind == Relation.Kind.TIGHTER))
                .hasSizeGreaterThan(SHORT_RUN / 20);
        assertThat(pairs.stream().filter(Pair::differs).filter(pair -> pair.relation.kind == Relation.Kind.LOOSER))
                .isNotEmpty();
    }

    @Test
    @Tag("bench")
    void manyRelatedYards() {
        print("gardens", pairs(LONG_RUN, TinyGarden::of));
        print("any", pairs(LONG_RUN, seed -> AnyYard.of(seed, 6, 14)));
    }
}
