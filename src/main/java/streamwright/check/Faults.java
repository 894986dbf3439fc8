package streamwright.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import streamwright.plan.Rule;

/** Collects broken rules. */
final class Faults {
    private final List<Finding> found = new ArrayList<>();

    /**
     * @param about the thing that breaks the rule
     * @param text what is wrong with it
     */
    void add(Rule rule, String about, double figure, double limit, String text) {
        found.add(new Finding(rule, about, figure, limit, about + ": " + text));
    }

    /** As above; channels and pixels beyond 2^53 exist in broken plans only, where the last digit does not matter. */
    void add(Rule rule, String about, long figure, long limit, String text) {
        add(rule, about, (double) figure, (double) limit, text);
    }

    /** In the order of the rules, and within a rule as found. */
    List<Finding> list() {
        return found.stream().sorted(Comparator.comparing(Finding::rule)).toList();
    }
}
