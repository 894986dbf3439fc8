package streamwright.solve;

import java.util.List;
import org.jspecify.annotations.Nullable;
import streamwright.layout.Layout;
import streamwright.plan.Rule;

/** How planning ended. */
public sealed interface Outcome {
    /**
     * A layout that keeps every rule.
     *
     * @param hand the cost of careful practice by hand, or NaN where that serves not every string
     * @param bound no plan costs less
     * @param interrupted whether the user ended it
     */
    record Found(Layout layout, double cost, double bound, double hand, boolean interrupted) implements Outcome {}

    /** Proved: no plan exists, each for this reason alone. */
    record Impossible(List<Obstruction> because) implements Outcome {
        public Impossible {
            because = List.copyOf(because);
        }
    }

    /** Ended before any plan was found, and nothing is proved. */
    record Stopped() implements Outcome {}

    /** A rule that a thing must break in every plan. */
    record Obstruction(Rule rule, String about, double figure, double limit, String text) {}

    /** Told as cost and bound move; the cost is infinite while there is no plan. */
    interface Progress {
        void moved(double seconds, double cost, double bound);

        /** A better plan than all before; may be asked for as long as planning runs. */
        default void found(Layout layout) {}
    }

    /** Nobody listens. */
    Progress SILENT = (seconds, cost, bound) -> {};

    /** The layout found, or null. */
    default @Nullable Layout layoutOrNull() {
        return this instanceof Found found ? found.layout : null;
    }
}
