package streamwright.reason;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Which of many outcomes are worth telling. */
final class Choice {
    private static final Comparator<Outcome> CHEAPEST = Comparator.comparingDouble(Outcome::extraCost);

    private Choice() {}

    /** The cheapest that hold, then the cheapest of those that break a rule: the one whose rule binds. */
    static List<Outcome> of(List<Outcome> outcomes, int valid, int broken) {
        return Stream.concat(some(outcomes, true, valid), some(outcomes, false, broken))
                .toList();
    }

    /** The cheapest that holds, or else that breaks a rule; empty only for no outcomes at all. */
    static List<Outcome> one(List<Outcome> outcomes) {
        List<Outcome> valid = of(outcomes, 1, 0);
        return valid.isEmpty() ? of(outcomes, 0, 1) : valid;
    }

    private static Stream<Outcome> some(List<Outcome> outcomes, boolean valid, int most) {
        return outcomes.stream()
                .filter(outcome -> outcome.valid() == valid)
                .sorted(CHEAPEST)
                .limit(most);
    }
}
