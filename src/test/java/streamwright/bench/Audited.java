package streamwright.bench;

import org.jspecify.annotations.Nullable;
import streamwright.check.Audit;
import streamwright.layout.Assembly;
import streamwright.layout.Layout;
import streamwright.physics.Ground;
import streamwright.plan.Plan;
import streamwright.yard.Yard;

/** What a layout costs as the audit states it, whoever made it. */
final class Audited {
    private Audited() {}

    /** Not a number where there is no plan. */
    static double cost(Yard yard, Ground ground, @Nullable Layout layout) {
        if (layout == null) {
            return Double.NaN;
        }
        Plan plan = Assembly.plan(yard, ground, layout);
        if (!Audit.of(yard, plan).clean()) {
            throw new AssertionError(yard.name() + ": " + Audit.of(yard, plan).list());
        }
        return plan.cost();
    }
}
