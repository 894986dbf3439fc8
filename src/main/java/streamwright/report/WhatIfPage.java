package streamwright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.function.ToDoubleFunction;

/** A comparison as a page of its own: cost against boards with the proved bounds as whiskers, cable against boards. */
public final class WhatIfPage {
    private static final int WIDTH = 640;
    private static final int HEIGHT = 300;
    private static final int LEFT = 70;
    private static final int RIGHT = 20;
    private static final int TOP = 20;
    private static final int BOTTOM = 45;
    private static final List<String> COLOURS =
            List.of("#1b6ca8", "#b5531c", "#3d7a37", "#7a3d78", "#6b6b1f", "#444444");

    private final String yard;
    private final String unit;
    private final List<WhatIf> rows;
    private final List<WhatIf> found;
    private final List<String> series;

    private WhatIfPage(String yard, String unit, List<WhatIf> rows) {
        this.yard = yard;
        this.unit = unit;
        this.rows = rows;
        found = rows.stream()
                .filter(row -> row.cost() != null && row.boards() != null)
                .toList();
        series = found.stream().map(this::name).distinct().toList();
    }

    /** The whole page; nothing in it is loaded from elsewhere. */
    public static String of(String yard, String unit, List<WhatIf> rows) {
        return new WhatIfPage(yard, unit, rows).page();
    }

    /** Rows that differ in boards alone are one series. */
    private String name(WhatIf row) {
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
        return parts.isEmpty() ? "all rows" : String.join(", ", parts);
    }

    private String page() {
        StringBuilder page = new StringBuilder();
        page.append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n<title>")
                .append(escaped("What if: " + yard))
                .append("</title>\n<style>\n")
                .append("body { font: 15px/1.4 sans-serif; max-width: 60em; margin: 2em auto; padding: 0 1em; }\n")
                .append("table { border-collapse: collapse; } th, td { padding: 0.2em 0.7em; text-align: right; }\n")
                .append("th:last-child, td:last-child { text-align: left; } tr.worth { font-weight: bold; }\n")
                .append("thead { border-bottom: 1px solid; } svg { max-width: 100%; height: auto; }\n")
                .append("</style>\n</head>\n<body>\n<h1>")
                .append(escaped("What if: " + yard))
                .append("</h1>\n");
        WhatIfWords.remarks(rows)
                .forEach(remark -> page.append("<p>").append(escaped(remark)).append("</p>\n"));
        if (!found.isEmpty()) {
            page.append(
                    "<h2>Cost against boards</h2>\n<p>A whisker goes down to what is proved: no plan costs less.</p>\n");
            page.append(plot("cost", row -> Objects.requireNonNullElse(row.cost(), 0.0), true));
            page.append("<h2>Cable against boards</h2>\n");
            page.append(plot("trunk " + unit, row -> Objects.requireNonNullElse(row.trunk(), 0.0), false));
            page.append(legend());
        }
        page.append("<h2>The rows</h2>\n").append(table());
        return page.append("</body>\n</html>\n").toString();
    }

    private String legend() {
        StringBuilder legend = new StringBuilder("<p>");
        for (int s = 0; s < series.size() && series.size() > 1; s++) {
            legend.append("<span style=\"color: %s\">&#9679;</span> %s ".formatted(colour(s), escaped(series.get(s))));
        }
        return legend.append("</p>\n").toString();
    }

    private static String colour(int series) {
        return COLOURS.get(series % COLOURS.size());
    }

    private String plot(String what, ToDoubleFunction<WhatIf> height, boolean whiskers) {
        int least = found.stream().mapToInt(WhatIfPage::boards).min().orElse(0);
        int most = found.stream().mapToInt(WhatIfPage::boards).max().orElse(1);
        double low = Double.POSITIVE_INFINITY;
        double high = 0;
        for (WhatIf row : found) {
            low = Math.min(low, whiskers ? bound(row) : height.applyAsDouble(row));
            high = Math.max(high, height.applyAsDouble(row));
        }
        double margin = Math.max(1, 0.1 * (high - low));
        Axes axes = new Axes(least - 1, most + 1, Math.max(0, low - margin), high + margin);
        StringBuilder svg = new StringBuilder();
        svg.append("<svg viewBox=\"0 0 %d %d\" width=\"%d\" role=\"img\" aria-label=\"%s against boards\">%n"
                .formatted(WIDTH, HEIGHT, WIDTH, escaped(what)));
        svg.append(axes.frame(what, least, most));
        for (int s = 0; s < series.size(); s++) {
            String name = series.get(s);
            List<WhatIf> line =
                    found.stream().filter(row -> name(row).equals(name)).toList();
            StringBuilder points = new StringBuilder();
            for (WhatIf row : line) {
                double x = axes.x(boards(row));
                double y = axes.y(height.applyAsDouble(row));
                points.append(point(x)).append(',').append(point(y)).append(' ');
                if (whiskers) {
                    double down = axes.y(bound(row));
                    svg.append("<path d=\"M%s %sV%sM%s %sh8\" stroke=\"%s\" fill=\"none\"/>%n"
                            .formatted(point(x), point(y), point(down), point(x - 4), point(down), colour(s)));
                }
                svg.append("<circle cx=\"%s\" cy=\"%s\" r=\"%s\" fill=\"%s\"><title>%s</title></circle>%n"
                        .formatted(
                                point(x),
                                point(y),
                                row.pareto() ? "5" : "3",
                                colour(s),
                                escaped(Figures.count(boards(row), "board") + ", " + name + ": "
                                        + Figures.money(height.applyAsDouble(row)))));
            }
            svg.append("<polyline points=\"%s\" fill=\"none\" stroke=\"%s\" stroke-opacity=\"0.4\"/>%n"
                    .formatted(points.toString().strip(), colour(s)));
        }
        return svg.append("</svg>\n").toString();
    }

    private static int boards(WhatIf row) {
        return Objects.requireNonNullElse(row.boards(), 0);
    }

    private static double bound(WhatIf row) {
        return Objects.requireNonNullElse(row.bound(), 0.0);
    }

    private static String point(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }

    /** Boards to the right, money or metres upwards. */
    private record Axes(int left, int right, double low, double high) {
        double x(int boards) {
            return LEFT + (WIDTH - LEFT - RIGHT) * (boards - left) / (double) (right - left);
        }

        double y(double value) {
            return HEIGHT - BOTTOM - (HEIGHT - TOP - BOTTOM) * (value - low) / (high - low);
        }

        String frame(String what, int least, int most) {
            StringBuilder frame = new StringBuilder();
            frame.append("<path d=\"M%d %dV%dH%d\" stroke=\"#444\" fill=\"none\"/>%n"
                    .formatted(LEFT, TOP, HEIGHT - BOTTOM, WIDTH - RIGHT));
            int step = Math.max(1, (most - least) / 12);
            for (int boards = least; boards <= most; boards += step) {
                frame.append("<text x=\"%s\" y=\"%d\" font-size=\"12\" text-anchor=\"middle\">%d</text>%n"
                        .formatted(point(x(boards)), HEIGHT - BOTTOM + 16, boards));
            }
            for (int tick = 0; tick <= 4; tick++) {
                double value = low + (high - low) * tick / 4;
                frame.append("<text x=\"%d\" y=\"%s\" font-size=\"12\" text-anchor=\"end\">%s</text>%n"
                        .formatted(LEFT - 6, point(y(value) + 4), Figures.length(value)));
            }
            frame.append("<text x=\"%d\" y=\"%d\" font-size=\"12\" text-anchor=\"middle\">boards</text>%n"
                    .formatted((LEFT + WIDTH - RIGHT) / 2, HEIGHT - 8));
            frame.append(
                    "<text x=\"14\" y=\"%d\" font-size=\"12\" transform=\"rotate(-90 14 %d)\" text-anchor=\"middle\">%s</text>%n"
                            .formatted(HEIGHT / 2, HEIGHT / 2, escaped(what)));
            return frame.toString();
        }
    }

    private String table() {
        StringBuilder table = new StringBuilder("<table>\n<thead><tr>");
        for (String heading : WhatIfTable.HEADINGS) {
            table.append("<th>").append(escaped(heading)).append("</th>");
        }
        table.append("</tr></thead>\n<tbody>\n");
        for (WhatIf row : rows) {
            table.append(row.pareto() ? "<tr class=\"worth\">" : "<tr>");
            for (String cell : WhatIfTable.cells(row)) {
                table.append("<td>").append(escaped(cell)).append("</td>");
            }
            table.append("</tr>\n");
        }
        return table.append("</tbody>\n</table>\n").toString();
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
