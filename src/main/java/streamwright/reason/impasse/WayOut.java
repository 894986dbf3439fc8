package streamwright.reason.impasse;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Changes of the yard with which it has a plan; one was found and audited.
 *
 * @param cost of the best plan found for the changed yard
 * @param bound no plan for it costs less
 */
public record WayOut(List<Change> changes, double cost, double bound, String text) {
    public WayOut {
        changes = List.copyOf(changes);
    }

    /**
     * One change.
     *
     * @param what as the yard file names it
     * @param from the figure as it is; null where it is no figure
     * @param to the figure as it would be
     */
    public record Change(
            String what, @Nullable Double from, @Nullable Double to) {}
}
