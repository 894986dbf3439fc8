package streamwright.plan.change;

import java.util.List;
import java.util.Map;
import java.util.Set;
import streamwright.plan.Change;
import streamwright.plan.Plan;
import streamwright.yard.Yard;

/**
 * The work between two plans of one yard, as the contract of the files counts it. Where its words leave a choice:
 * <ul>
 *   <li>a string that follows another string than before is a lead, like one that changed between first and following;
 *   <li>a hop that only the old plan has counts where both its ends are still there, else it is dead cable;
 *   <li>a port (a stream) counts as set anew only where it carries the same strings as before, since otherwise the
 *       string that came or went has been counted; a stream's window is its start channel and its pixels; a board's ID
 *       and ports only where the board itself did not move;
 *   <li>a string that the old plan has twice is compared with the nearer of its places, and unplugged from the other;
 *   <li>an injection is elsewhere at another pixel, and where its power comes from another board's supply;
 *   <li>a board that no longer works takes a board's minutes: it comes down, and where the plan after has a board of its
 *       name one like it is hung, at its place with the same leads and cables, or elsewhere.
 * </ul>
 * What is done but weighs nothing (dead cable, a terminator, a null pixel) is listed with 0 minutes.
 */
public final class Difference {
    private Difference() {}

    /**
     * The changes in an order that a crew can work.
     *
     * @param dead boards of the plan before that no longer work
     * @param broken of things (as the audit names them) what is wrong with them in the old plan
     */
    public static List<Change> between(
            Yard yard, Plan before, Plan after, Set<String> dead, Map<String, String> broken) {
        Compared all = compared(yard, before, after, dead);
        return WorkOrder.of(all.pieces, broken, all::say);
    }

    /** The minutes of all changes together. */
    public static double minutes(List<Change> changes) {
        return changes.stream().mapToDouble(Change::minutes).sum();
    }

    /**
     * The minutes between two plans.
     *
     * @param dead boards of the plan before that no longer work
     */
    public static double minutes(Yard yard, Plan before, Plan after, Set<String> dead) {
        return compared(yard, before, after, dead).pieces.stream()
                .mapToDouble(Piece::minutes)
                .sum();
    }

    private static Compared compared(Yard yard, Plan before, Plan after, Set<String> dead) {
        Compared all = new Compared(yard, before, after, dead);
        TrunkWork.collect(all);
        StringWork.collect(all);
        FixtureWork.collect(all);
        SettingWork.collect(all);
        return all;
    }
}
