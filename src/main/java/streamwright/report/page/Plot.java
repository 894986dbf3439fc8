package streamwright.report.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import streamwright.report.Figures;

/**
 * Figures against figures: series told apart by the shape of their marks, each dot with a stem down to what is proved.
 *
 * @param across and up: what the axes mean, with unit
 */
public record Plot(String across, String up, List<Series> series) {
    static final double WIDTH = 720;
    static final double HEIGHT = 380;
    static final double LEFT = 74;
    static final double BOTTOM = 330;
    private static final double RIGHT = 690;
    private static final double TOP = 24;
    private static final int TICKS = 6;

    public Plot {
        series = List.copyOf(series);
    }

    /** Dots that belong together, joined in their order by a line if {@code joined}. */
    public record Series(String name, boolean joined, List<Dot> dots) {
        public Series {
            dots = List.copyOf(dots);
        }
    }

    /**
     * One result.
     *
     * @param low what no result can go below; NaN where nothing is proved
     * @param label beside the mark, may be empty
     * @param strong whether no other result is better in every way
     */
    public record Dot(double x, double y, double low, String label, boolean strong) {}

    /** The plot as a part of a page, with what is to be said of it. */
    public Part part(String id, String heading, String sentence) {
        return Part.of(id, heading, "plot", Map.of("plot", this, "sentence", sentence));
    }

    double x(double value) {
        return place(value, ticksAcross(), LEFT, RIGHT);
    }

    double y(double value) {
        return place(value, ticksUp(), BOTTOM, TOP);
    }

    List<Double> ticksAcross() {
        return ticks(dots().stream().map(Dot::x).toList());
    }

    List<Double> ticksUp() {
        List<Double> values = new ArrayList<>(dots().stream().map(Dot::y).toList());
        dots().stream().map(Dot::low).filter(Double::isFinite).forEach(values::add);
        return ticks(values);
    }

    String text(double value) {
        return Figures.plain(value);
    }

    /** How far below a dot its label's line is: on the side of its mark that the way to the next dot leaves free. */
    static double labelBelow(Series series, int dot) {
        List<Dot> dots = series.dots();
        boolean up = series.joined()
                && dot + 1 < dots.size()
                && dots.get(dot + 1).y() > dots.get(dot).y();
        return up ? 16 : -6;
    }

    /** The path of a mark about the origin: another shape for each series. */
    String mark(int index) {
        return switch (index % 4) {
            case 0 -> "M-5 0A5 5 0 1 0 5 0A5 5 0 1 0 -5 0Z";
            case 1 -> "M-4.6 -4.6H4.6V4.6H-4.6Z";
            case 2 -> "M0 -6L5.6 4.4H-5.6Z";
            default -> "M0 -6.4L6.4 0L0 6.4L-6.4 0Z";
        };
    }

    private List<Dot> dots() {
        return series.stream().flatMap(each -> each.dots().stream()).toList();
    }

    private static double place(double value, List<Double> ticks, double from, double to) {
        double first = ticks.get(0);
        double last = ticks.get(ticks.size() - 1);
        return from + (value - first) / (last - first) * (to - from);
    }

    /** Round numbers from just below the least value to just above the most. */
    private static List<Double> ticks(List<Double> values) {
        double least = values.stream().mapToDouble(Double::doubleValue).min().orElse(0);
        double most = values.stream().mapToDouble(Double::doubleValue).max().orElse(1);
        double wide = most > least ? most - least : Math.max(1, Math.abs(most));
        boolean whole = values.stream().allMatch(value -> value == Math.rint(value));
        double power = Math.pow(10, Math.floor(Math.log10(wide / TICKS)));
        double step = power
                * (wide / TICKS / power > 5 ? 10 : wide / TICKS / power > 2 ? 5 : wide / TICKS / power > 1 ? 2 : 1);
        // there is no half a board
        step = whole ? Math.max(1, step) : step;
        List<Double> ticks = new ArrayList<>();
        double first = Math.floor(least / step - 0.2) * step;
        for (int i = 0; ticks.isEmpty() || ticks.get(i - 1) < most + step * 0.2 || i < 2; i++) {
            ticks.add(first + i * step);
        }
        return ticks;
    }
}
