package streamwright.check;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import streamwright.plan.Plan;
import streamwright.plan.Rule;

/**
 * What the audit found.
 *
 * @param list all broken rules in the order of {@link Rule}
 * @param restated the plan's decisions with every derived figure (lengths, channels, amps, sums, cost) as the audit
 *     computes it, unrounded; a figure that cannot be computed, such as a length without a way, is the plan's own
 */
public record Findings(List<Finding> list, Plan restated) {
    public Findings {
        list = List.copyOf(list);
    }

    public boolean clean() {
        return list.isEmpty();
    }

    /** The rules that are broken. */
    public Set<Rule> rules() {
        Set<Rule> rules = EnumSet.noneOf(Rule.class);
        list.forEach(finding -> rules.add(finding.rule()));
        return rules;
    }
}
