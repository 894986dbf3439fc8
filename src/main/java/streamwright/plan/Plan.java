package streamwright.plan;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A plan file, field for field.
 *
 * @param bound no plan for this yard under these rules can cost less
 * @param gap (cost - bound) / cost
 * @param seconds spent
 * @param work minutes of a repair, null for a new plan; {@code workBound} likewise
 */
public record Plan(
        int format,
        String yard,
        Status status,
        double cost,
        double bound,
        double gap,
        double seconds,
        long seed,
        Totals totals,
        List<Cable> cables,
        List<Board> boards,
        List<Supply> supplies,
        List<Reason> reasons,
        List<Change> changes,
        @Nullable Double work,
        @Nullable Double workBound) {
    public static final int FORMAT = 1;

    public Plan {
        cables = List.copyOf(cables);
        boards = List.copyOf(boards);
        supplies = List.copyOf(supplies);
        reasons = List.copyOf(reasons);
        changes = List.copyOf(changes);
    }

    /** The same plan with what is proved of it: optimal where bound and cost agree to the cent. */
    public Plan proved(double newBound, double newSeconds, long newSeed) {
        double held = Math.min(newBound, cost);
        Status proof = Math.round(100 * cost) == Math.round(100 * held) ? Status.OPTIMAL : Status.FEASIBLE;
        double open = cost > 0 ? (cost - held) / cost : 0;
        return new Plan(
                format,
                yard,
                proof,
                cost,
                held,
                open,
                newSeconds,
                newSeed,
                totals,
                cables,
                boards,
                supplies,
                reasons,
                changes,
                work,
                workBound);
    }

    /** The same plan as a repair: its changes in working order, their minutes, and what is proved of these. */
    public Plan repairs(List<Change> newChanges, double newWork, double newWorkBound) {
        return new Plan(
                format,
                yard,
                status,
                cost,
                bound,
                gap,
                seconds,
                seed,
                totals,
                cables,
                boards,
                supplies,
                reasons,
                newChanges,
                newWork,
                newWorkBound);
    }

    /** The same plan with other boards; what else it says is left as it is. */
    public Plan withBoards(List<Board> newBoards) {
        return new Plan(
                format, yard, status, cost, bound, gap, seconds, seed, totals, cables, newBoards, supplies, reasons,
                changes, work, workBound);
    }

    public Plan withReasons(List<Reason> newReasons) {
        return new Plan(
                format,
                yard,
                status,
                cost,
                bound,
                gap,
                seconds,
                seed,
                totals,
                cables,
                boards,
                supplies,
                newReasons,
                changes,
                work,
                workBound);
    }
}
