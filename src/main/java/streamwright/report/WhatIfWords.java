package streamwright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** What a comparison says in words: how rows differ and how much of that is proved, the knee, the first impossible row. */
public final class WhatIfWords {
    private static final double CENT = 0.005;

    private final List<WhatIf> rows;

    private WhatIfWords(List<WhatIf> rows) {
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

    private static double cost(WhatIf row) {
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
    private boolean boardsTell() {
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
        if (rows.stream().map(WhatIf::frameRate).distinct().count() > 1) {
            parts.add(Figures.plain(row.frameRate()) + " frames a second");
        }
        if (rows.stream().map(WhatIf::spare).distinct().count() > 1) {
            parts.add(Figures.plain(100 * row.spare()) + " % spare");
        }
        if (rows.stream().map(WhatIf::models).distinct().count() > 1) {
            parts.add(row.models());
        }
        return parts.isEmpty() ? "the row" : String.join(", ", parts);
    }

    /** The knee and the first row that cannot be, one sentence each; none where there is none. */
    public static List<String> remarks(List<WhatIf> rows) {
        WhatIfWords words = new WhatIfWords(rows);
        List<String> remarks = new ArrayList<>();
        List<WhatIf> found = rows.stream().filter(row -> row.cost() != null).toList();
        if (found.size() > 2) {
            words.knee(found, remarks);
        }
        rows.stream()
                .filter(row -> row.status().equals("impossible"))
                .reduce((one, last) -> nearer(one, last, found))
                .ifPresent(row ->
                        remarks.add("The first row that cannot be is " + words.name(row) + ": " + row.text() + "."));
        return remarks;
    }

    /** Of two impossible rows the one nearer to those that are possible, the later one if neither is. */
    private static WhatIf nearer(WhatIf one, WhatIf other, List<WhatIf> found) {
        return found.isEmpty() || away(one, found) < away(other, found) ? one : other;
    }

    private static double away(WhatIf row, List<WhatIf> found) {
        double least = Double.POSITIVE_INFINITY;
        for (WhatIf other : found) {
            double boards = Objects.requireNonNullElse(row.boards(), 0) - Objects.requireNonNullElse(other.boards(), 0);
            double rate = row.frameRate() / other.frameRate() - 1;
            least = Math.min(least, Math.abs(boards) + Math.abs(rate) + Math.abs(row.spare() - other.spare()));
        }
        return least;
    }

    /** Where the curve bends most: the row with the largest saving from the row before less that to the row behind. */
    private void knee(List<WhatIf> found, List<String> remarks) {
        WhatIf knee = null;
        double bend = CENT;
        double before = 0;
        double behind = 0;
        WhatIf one = null;
        WhatIf other = null;
        for (int i = 1; i + 1 < found.size(); i++) {
            double in = cost(found.get(i - 1)) - cost(found.get(i));
            double out = cost(found.get(i)) - cost(found.get(i + 1));
            if (in - out > bend) {
                bend = in - out;
                knee = found.get(i);
                before = in;
                behind = out;
                one = found.get(i - 1);
                other = found.get(i + 1);
            }
        }
        if (knee != null && one != null && other != null) {
            remarks.add("The knee is at %s: from %s to it %s, from it to %s %s."
                    .formatted(name(knee), name(one), changes(before), name(other), changes(behind)));
        }
    }

    private static String changes(double saving) {
        if (Math.abs(saving) < CENT) {
            return "nothing changes";
        }
        return saving > 0 ? Figures.money(saving) + " is saved" : Figures.money(-saving) + " is added";
    }
}
