package streamwright.report.whatif;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import streamwright.report.Figures;

/** What is said of each row of a comparison: how it differs from the cheapest, and how much of that is proved. */
public final class WhatIfWords {
    static final double CENT = 0.005;

    private final List<WhatIf> rows;

    WhatIfWords(List<WhatIf> rows) {
        this.rows = rows;
    }

    /** The rows with a sentence each. */
    public static List<WhatIf> told(List<WhatIf> rows) {
        WhatIfWords words = new WhatIfWords(rows);
        return rows.stream().map(row -> row.with(row.pareto(), words.row(row))).toList();
    }

    private String row(WhatIf row) {
        if (row.cost() == null) {
            return row.text();
        }
        WhatIf cheapest = cheapest();
        double more = row.cost() - cost(cheapest);
        if (more < CENT) {
            if (!row.equals(cheapest)) {
                return "costs the same as " + name(cheapest);
            }
            double sure = secondBound(row);
            return sure > row.cost() + CENT
                    ? "the cheapest row, proved: every other costs at least " + Figures.money(sure - row.cost())
                            + " more"
                    : "the cheapest row found";
        }
        double sure = Objects.requireNonNullElse(row.bound(), 0.0) - cost(cheapest);
        return Figures.money(more) + " more than " + name(cheapest) + ", "
                + (sure > CENT
                        ? "of which " + Figures.money(Math.min(sure, more)) + " is proved"
                        : "which the search leaves open: no difference is proved");
    }

    /** The least that any other row costs, by its bound. */
    private double secondBound(WhatIf row) {
        double least = Double.POSITIVE_INFINITY;
        for (WhatIf other : rows) {
            if (!other.equals(row) && !other.status().equals("impossible")) {
                least = Math.min(least, Objects.requireNonNullElse(other.bound(), 0.0));
            }
        }
        return least == Double.POSITIVE_INFINITY ? 0 : least;
    }

    static double cost(WhatIf row) {
        return Objects.requireNonNullElse(row.cost(), Double.POSITIVE_INFINITY);
    }

    private WhatIf cheapest() {
        WhatIf best = rows.get(0);
        for (WhatIf row : rows) {
            best = cost(row) < cost(best) ? row : best;
        }
        return best;
    }

    /** Whether rows are alike but for their boards. */
    boolean boardsTell() {
        return rows.stream()
                        .map(row -> List.of(row.frameRate(), row.spare(), row.models()))
                        .distinct()
                        .count()
                < rows.size();
    }

    /** A row by what tells it from the others. */
    String name(WhatIf row) {
        List<String> parts = new ArrayList<>();
        if (boardsTell() && row.boards() != null) {
            parts.add(Figures.count(row.boards(), "board"));
        }
        parts.addAll(otherwise(row));
        return parts.isEmpty() ? "the row" : String.join(", ", parts);
    }

    /** What rows have in common that differ in their boards alone. */
    static String apartFromBoards(List<WhatIf> rows, WhatIf row) {
        List<String> parts = new WhatIfWords(rows).otherwise(row);
        return parts.isEmpty() ? "all rows" : String.join(", ", parts);
    }

    /** What tells a row from others, its boards apart. */
    private List<String> otherwise(WhatIf row) {
        List<String> parts = new ArrayList<>();
        if (rows.stream().map(WhatIf::frameRate).distinct().count() > 1) {
            parts.add(Figures.plain(row.frameRate()) + " frames a second");
        }
        if (rows.stream().map(WhatIf::spare).distinct().count() > 1) {
            parts.add(Figures.plain(100 * row.spare()) + " % spare");
        }
        if (rows.stream().map(WhatIf::models).distinct().count() > 1) {
            parts.add(row.models());
        }
        return parts;
    }
}
