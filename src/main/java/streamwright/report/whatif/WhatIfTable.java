package streamwright.report.whatif;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import streamwright.report.Figures;

/** The rows of a comparison as cells of text, and as comma-separated values. */
public final class WhatIfTable {
    /** Those that start with {@code >} stand over figures. */
    public static final List<String> HEADINGS = List.of(
            ">boards",
            ">frames/s",
            ">spare %",
            "models",
            "worth it",
            "status",
            ">cost",
            ">no plan below",
            ">gap %",
            ">trunk",
            ">leads",
            ">cables",
            ">fullest %",
            "in words");

    private static final String COLUMNS =
            "boards,frameRate,spare,models,status,cost,bound,gap,trunk,lead,cables,fullestStream,pareto,text";

    private WhatIfTable() {}

    /** One text for each of {@link #HEADINGS}. */
    public static List<String> cells(WhatIf row) {
        List<String> cells = new ArrayList<>();
        cells.add(row.boards() == null ? "" : Figures.plain((long) row.boards()));
        cells.add(Figures.plain(row.frameRate()));
        cells.add(Figures.plain(100 * row.spare()));
        cells.add(row.models());
        cells.add(row.pareto() ? "*" : "");
        cells.add(row.status());
        cells.add(row.cost() == null ? "" : Figures.money(row.cost()));
        cells.add(row.bound() == null ? "" : Figures.money(row.bound()));
        cells.add(row.gap() == null ? "" : Figures.percentUp(row.gap()).replace(" %", ""));
        cells.add(row.trunk() == null ? "" : Figures.length(row.trunk()));
        cells.add(row.lead() == null ? "" : Figures.length(row.lead()));
        cells.add(row.cables() == null ? "" : Figures.plain((long) row.cables()));
        cells.add(row.fullestStream() == null ? "" : Figures.length(100 * row.fullestStream()));
        cells.add(row.text());
        return cells;
    }

    /** With a heading line; figures with a decimal point. */
    public static String csv(List<WhatIf> rows) {
        return rows.stream().map(WhatIfTable::line).collect(Collectors.joining("\n", COLUMNS + "\n", "\n"));
    }

    private static String line(WhatIf row) {
        List<@Nullable Object> values = new ArrayList<>();
        values.add(row.boards());
        values.add(row.frameRate());
        values.add(row.spare());
        values.add(row.models());
        values.add(row.status());
        values.add(row.cost());
        values.add(row.bound());
        values.add(row.gap());
        values.add(row.trunk());
        values.add(row.lead());
        values.add(row.cables());
        values.add(row.fullestStream());
        values.add(row.pareto());
        values.add(row.text());
        return values.stream().map(WhatIfTable::quoted).collect(Collectors.joining(","));
    }

    private static String quoted(@Nullable Object value) {
        if (value == null) {
            return "";
        }
        String text = value.toString();
        return text.contains(",") || text.contains("\"") ? "\"" + text.replace("\"", "\"\"") + "\"" : text;
    }
}
