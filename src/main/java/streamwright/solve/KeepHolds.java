package streamwright.solve;

import java.util.List;
import java.util.Map;
import java.util.Set;
import streamwright.plan.Change;
import streamwright.plan.Plan;
import streamwright.plan.change.Difference;
import streamwright.yard.Yard;

/** Whether a repaired plan leaves alone what is to be kept. */
final class KeepHolds {
    private KeepHolds() {}

    /** A dead board may be replaced by one like it even where boards are kept. */
    static boolean of(Yard yard, Plan old, Plan plan, Set<Keep> keep) {
        if (keep.isEmpty()) {
            return true;
        }
        List<Change> changes = Difference.between(yard, old, plan, Set.of(), Map.of());
        return (!keep.contains(Keep.CABLES) || none(changes, "hop"))
                && (!keep.contains(Keep.BOARDS) || none(changes, "board"))
                && (!keep.contains(Keep.PORTS) || changes.stream().noneMatch(KeepHolds::replugged))
                && (!keep.contains(Keep.CHANNELS) || sameChannels(old, plan));
    }

    private static boolean none(List<Change> changes, String kind) {
        return changes.stream().noneMatch(change -> change.kind().equals(kind) && change.minutes() > 0);
    }

    /** What was on no port before may be put on any. */
    private static boolean replugged(Change change) {
        boolean plug = change.kind().equals("lead") || change.kind().equals("replug");
        return plug && change.from() != null && change.to() != null && change.minutes() > 0;
    }

    private static boolean sameChannels(Plan old, Plan plan) {
        Map<String, Long> before = Lying.channels(old);
        return Lying.channels(plan).entrySet().stream()
                .allMatch(each -> each.getValue().equals(before.getOrDefault(each.getKey(), each.getValue())));
    }
}
