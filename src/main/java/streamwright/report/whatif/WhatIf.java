package streamwright.report.whatif;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One row of a comparison.
 *
 * @param boards asked for, or those of the plan where none were asked for
 * @param models with {@code +} between them
 * @param status optimal, feasible, impossible or unknown
 * @param cost of the best plan; null where there is none
 * @param bound no plan of this row costs less
 * @param trunk length
 * @param lead length
 * @param fullestStream largest share used of any stream
 * @param pareto whether no other row beats it in boards, cost and fullest stream
 * @param breaks of an impossible row: the rule that no plan can keep
 * @param text one sentence
 */
public record WhatIf(
        @Nullable Integer boards,
        double frameRate,
        double spare,
        String models,
        String status,
        @Nullable Double cost,
        @Nullable Double bound,
        @Nullable Double gap,
        @Nullable Double trunk,
        @Nullable Double lead,
        @Nullable Integer cables,
        @Nullable Double fullestStream,
        boolean pareto,
        @Nullable Breaks breaks,
        String text) {

    /** A rule with the figure that no plan can avoid and the limit that it breaks. */
    public record Breaks(String rule, double figure, double limit) {}

    private static final double ROUNDING = 1e-9;

    /**
     * A row without a plan.
     *
     * @param breaks the rule that makes it impossible; null where nothing is known of it
     */
    public static WhatIf unplanned(
            @Nullable Integer boards,
            double frameRate,
            double spare,
            String models,
            @Nullable Breaks breaks,
            String text) {
        return new WhatIf(
                boards,
                frameRate,
                spare,
                models,
                breaks == null ? "unknown" : "impossible",
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                false,
                breaks,
                text);
    }

    /** The same rows with those marked that no other beats. */
    public static List<WhatIf> marked(List<WhatIf> rows) {
        List<WhatIf> marked = new ArrayList<>();
        for (WhatIf row : rows) {
            boolean worth = row.cost != null && rows.stream().noneMatch(other -> beats(other, row));
            marked.add(row.with(worth, row.text));
        }
        return marked;
    }

    private static boolean beats(WhatIf a, WhatIf b) {
        if (a.cost == null || b.cost == null || a.boards == null || b.boards == null) {
            return false;
        }
        double fullA = a.fullestStream == null ? 1 : a.fullestStream;
        double fullB = b.fullestStream == null ? 1 : b.fullestStream;
        boolean noWorse = a.boards <= b.boards && a.cost <= b.cost + ROUNDING && fullA <= fullB + ROUNDING;
        return noWorse && (a.boards < b.boards || a.cost < b.cost - ROUNDING || fullA < fullB - ROUNDING);
    }

    public WhatIf with(boolean newPareto, String newText) {
        return new WhatIf(
                boards,
                frameRate,
                spare,
                models,
                status,
                cost,
                bound,
                gap,
                trunk,
                lead,
                cables,
                fullestStream,
                newPareto,
                breaks,
                newText);
    }
}
