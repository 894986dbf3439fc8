package streamwright.report.whatif;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import streamwright.report.Figures;
import streamwright.report.page.Grid;
import streamwright.report.page.Page;
import streamwright.report.page.Part;
import streamwright.report.page.Plot;

/** A comparison as a page of its own: cost against boards with the proved bounds as whiskers, cable against boards. */
public final class WhatIfPage {
    private final String unit;
    private final List<WhatIf> rows;
    private final List<WhatIf> found;

    private WhatIfPage(String unit, List<WhatIf> rows) {
        this.unit = unit;
        this.rows = rows;
        found = rows.stream()
                .filter(row -> row.cost() != null && row.boards() != null)
                .toList();
    }

    /**
     * Makes the page.
     *
     * @param unit of the yard's lengths
     */
    public static Page of(String yard, String unit, List<WhatIf> rows) {
        WhatIfPage page = new WhatIfPage(unit, rows);
        return new Page(yard, "what if", page.block(), page.parts());
    }

    private Map<String, String> block() {
        Map<String, String> block = new LinkedHashMap<>();
        block.put("rows", Figures.plain((long) rows.size()));
        block.put("with a plan", Figures.plain((long) found.size()));
        block.put("proved optimal", Figures.plain(count("optimal")));
        block.put("impossible", Figures.plain(count("impossible")));
        return block;
    }

    private long count(String status) {
        return rows.stream().filter(row -> row.status().equals(status)).count();
    }

    private List<Part> parts() {
        List<Part> parts = new ArrayList<>();
        List<String> remarks = WhatIfRemarks.of(rows);
        if (!remarks.isEmpty()) {
            parts.add(Part.prose("answer", "What it comes to", remarks));
        }
        if (!found.isEmpty()) {
            parts.add(new Plot("boards", "cost", series(WhatIf::cost, WhatIf::bound))
                    .part(
                            "cost",
                            "Cost against boards",
                            "A whisker goes down to what is proved: no plan of that row costs less. A row without a"
                                    + " whisker has nothing proved. Filled marks are worth having: no other row beats"
                                    + " them in boards, cost and fullest stream."));
            parts.add(new Plot("boards", "trunk, " + unit, series(WhatIf::trunk, row -> null))
                    .part(
                            "cable",
                            "Cable against boards",
                            "Trunk of the best plan found for each row; leads are in the table."));
        }
        List<List<String>> cells = rows.stream().map(WhatIfTable::cells).toList();
        parts.add(new Grid(WhatIfTable.HEADINGS, cells)
                .part("rows", "The rows", "Costs in the yard's money, trunk and leads in " + unit + "."));
        return parts;
    }

    private interface Figure {
        @Nullable
        Double of(WhatIf row);
    }

    private List<Plot.Series> series(Figure height, Figure low) {
        Map<String, List<Plot.Dot>> series = new LinkedHashMap<>();
        for (WhatIf row : found) {
            series.computeIfAbsent(WhatIfWords.apartFromBoards(rows, row), name -> new ArrayList<>())
                    .add(dot(row, height, low));
        }
        List<Plot.Series> joined = new ArrayList<>();
        series.forEach((name, dots) -> joined.add(new Plot.Series(name, dots.size() > 1, dots)));
        return joined;
    }

    private static Plot.Dot dot(WhatIf row, Figure height, Figure low) {
        double up = Objects.requireNonNullElse(height.of(row), 0.0);
        double proved = Objects.requireNonNullElse(low.of(row), 0.0);
        double boards = Objects.requireNonNullElse(row.boards(), 0);
        return new Plot.Dot(boards, up, proved > 0 ? proved : Double.NaN, Figures.length(up), row.pareto());
    }
}
