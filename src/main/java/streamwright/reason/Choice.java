package streamwright.reason;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import streamwright.plan.Rule;

/**
 * Which of many alternatives are worth telling. They are audited from the cheapest on, so that a rule which keeps a
 * cheaper one out is met before the ones that hold; what is dearer than those is not asked.
 */
final class Choice {
    private final Base base;

    Choice(Base base) {
        this.base = base;
    }

    /** The cheapest that hold, as many as asked, then the cheapest that break a rule: one, or more of other rules for want. */
    List<Outcome> of(List<Alternative> alternatives, int most) {
        List<Outcome> valid = new ArrayList<>();
        List<Supplier<Outcome>> broken = new ArrayList<>();
        for (Alternative alternative : cheapestFirst(alternatives)) {
            if (valid.size() == most) {
                break;
            }
            if (alternative.suspect() && base.clean()) {
                broken.add(() -> base.judge(alternative));
                continue;
            }
            Outcome outcome = base.judge(alternative);
            if (outcome.valid()) {
                valid.add(outcome);
            } else {
                broken.add(() -> outcome);
            }
        }
        List<Outcome> told = new ArrayList<>(valid);
        Set<Rule> rules = EnumSet.noneOf(Rule.class);
        for (Supplier<Outcome> next : broken) {
            if (told.size() > most) {
                break;
            }
            Outcome outcome = next.get();
            if (outcome.valid() || rules.add(outcome.broken().get(0).rule())) {
                told.add(outcome);
            }
        }
        return told;
    }

    /** The cheapest that holds, or else that breaks a rule; empty only for no alternatives at all. */
    List<Outcome> one(List<Alternative> alternatives) {
        for (Alternative alternative : cheapestFirst(alternatives)) {
            if (!alternative.suspect() || !base.clean()) {
                Outcome outcome = base.judge(alternative);
                if (outcome.valid()) {
                    return List.of(outcome);
                }
            }
        }
        return cheapestFirst(alternatives).stream().limit(1).map(base::judge).toList();
    }

    private static List<Alternative> cheapestFirst(List<Alternative> alternatives) {
        return alternatives.stream()
                .filter(alternative -> Double.isFinite(alternative.cost()))
                .sorted(Comparator.comparingDouble(Alternative::cost))
                .toList();
    }
}
