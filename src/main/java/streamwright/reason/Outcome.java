package streamwright.reason;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import streamwright.check.Finding;
import streamwright.plan.Reason;
import streamwright.plan.Rule;

/**
 * What the audit says of an alternative.
 *
 * @param extraCost audited cost less that of the plan; below 0 where the alternative is cheaper
 * @param broken rules that it breaks and the plan does not
 */
record Outcome(Alternative alternative, double extraCost, List<Finding> broken) {
    Outcome {
        broken = List.copyOf(broken);
    }

    boolean valid() {
        return broken.isEmpty();
    }

    Outcome named(String what) {
        return new Outcome(alternative.named(what), extraCost, broken);
    }

    Reason.Instead instead() {
        return valid() ? new Reason.Instead(alternative.what(), extraCost, null) : each().get(0);
    }

    /** One entry for each rule broken, with the figure that lies farthest beyond the limit. */
    List<Reason.Instead> each() {
        if (valid()) {
            return List.of(instead());
        }
        Map<Rule, Finding> worst = new LinkedHashMap<>();
        broken.forEach(finding -> worst.merge(finding.rule(), finding, Outcome::worse));
        List<Reason.Instead> each = new ArrayList<>();
        worst.values()
                .forEach(finding -> each.add(new Reason.Instead(
                        alternative.what(),
                        null,
                        new Reason.Broken(finding.rule().label(), finding.figure(), finding.limit()))));
        return each;
    }

    private static Finding worse(Finding one, Finding other) {
        return excess(other) > excess(one) ? other : one;
    }

    private static double excess(Finding finding) {
        return Math.abs(finding.figure() - finding.limit()) / Math.max(1, Math.abs(finding.limit()));
    }
}
