package streamwright.report.page;

import java.util.ArrayList;
import java.util.List;

/**
 * One stream as a tape measure of its pixels, cut into rows of equal length.
 *
 * @param anchor id of the element
 * @param title e.g. {@code shed 1, stream 3}
 * @param kind of its pixels
 * @param used position of the last used pixel
 * @param span pixels to a row
 */
record Tape(
        String anchor,
        String title,
        int cable,
        String kind,
        int used,
        int limit,
        String begins,
        int span,
        List<Row> rows,
        List<String> spoken) {
    /** Drawing units of a row, its ends left out. */
    static final double WIDTH = 700;

    static final double MARGIN = 14;
    private static final int ROWS_MOST = 3;
    private static final int[] SPANS = {50, 100, 200, 250, 500, 1000, 2000, 2500, 5000};

    Tape {
        rows = List.copyOf(rows);
        spoken = List.copyOf(spoken);
    }

    /**
     * Part of the tape.
     *
     * @param first its first pixel
     * @param usedTo where the used part ends, in drawing units; {@code limitAt} where the tape ends
     */
    record Row(
            int first,
            double usedTo,
            double limitAt,
            boolean ends,
            List<Tick> ticks,
            List<Span> spans,
            List<Double> nulls,
            double height) {
        Row {
            ticks = List.copyOf(ticks);
            spans = List.copyOf(spans);
            nulls = List.copyOf(nulls);
        }
    }

    /** A line of the measure; {@code text} empty where it has no number. */
    record Tick(double x, int length, String text) {}

    /** Whose pixels lie there: a dimension line, its ends arrowed where the string begins or ends in this row. */
    record Span(
            double from,
            double to,
            boolean begins,
            boolean ends,
            int level,
            double textX,
            String text,
            String target) {}

    /** Pixels of one thing, from first to last lit one, with so many null pixels before them. */
    record Piece(String label, String place, String target, int first, int last, int nulls) {}

    static Tape of(
            String anchor,
            String title,
            int cable,
            String kind,
            int used,
            int limit,
            String begins,
            List<Piece> pieces) {
        int span = span(Math.max(limit, used));
        List<Row> rows = new ArrayList<>();
        for (int first = 1; first <= Math.max(limit, used); first += span) {
            rows.add(row(first, span, used, limit, pieces));
        }
        List<String> spoken = pieces.stream()
                .map(piece -> piece.label() + " on " + piece.place() + ": "
                        + Names.span("pixel", piece.first(), piece.last()))
                .toList();
        return new Tape(anchor, title, cable, kind, used, limit, begins, span, rows, spoken);
    }

    int left() {
        return Math.max(0, limit - used);
    }

    long percent() {
        return limit > 0 ? Math.round(100.0 * used / limit) : 100;
    }

    private static int span(int pixels) {
        for (int span : SPANS) {
            if (span * ROWS_MOST >= pixels) {
                return span;
            }
        }
        return (pixels + ROWS_MOST - 1) / ROWS_MOST;
    }

    private static Row row(int first, int span, int used, int limit, List<Piece> pieces) {
        int last = first + span - 1;
        double unit = WIDTH / span;
        int end = Math.min(last, Math.max(limit, used));
        List<Tick> ticks = ticks(first, end, unit, span);
        List<Span> spans = new ArrayList<>();
        List<Double> nulls = new ArrayList<>();
        List<Double> filled = new ArrayList<>();
        for (Piece piece : pieces) {
            for (int n = Math.max(first, piece.first() - piece.nulls()); n < piece.first() && n <= last; n++) {
                nulls.add(MARGIN + (n - first + 0.5) * unit);
            }
            if (piece.last() >= first && piece.first() <= last) {
                spans.add(span(piece, first, last, unit, filled));
            }
        }
        double usedTo = MARGIN + Math.max(0, Math.min(used, last) - first + 1) * unit;
        double limitAt = MARGIN + Math.max(0, Math.min(Math.max(limit, used), last) - first + 1) * unit;
        return new Row(first, usedTo, limitAt, limit <= last, ticks, spans, nulls, 40 + 19.0 * filled.size());
    }

    private static List<Tick> ticks(int first, int end, double unit, int span) {
        int small = span <= 250 ? 10 : span <= 1000 ? 50 : span / 20;
        int numbered = small * 5;
        List<Tick> ticks = new ArrayList<>();
        for (int pixel = first - 1; pixel <= end; pixel += small) {
            boolean number = pixel % numbered == 0;
            ticks.add(new Tick(
                    MARGIN + (pixel - first + 1) * unit, number ? 12 : 6, number ? Integer.toString(pixel) : ""));
        }
        return ticks;
    }

    /** Its line goes below those that its text would meet. */
    private static Span span(Piece piece, int first, int last, double unit, List<Double> filled) {
        double from = MARGIN + Math.max(0, piece.first() - first) * unit;
        double to = MARGIN + Math.min(last, piece.last()) * unit - (first - 1) * unit;
        String both = piece.label() + "  " + piece.place();
        String text =
                Svg.width(both, 9.5) <= to - from || Svg.width(piece.label(), 9.5) > to - from ? both : piece.label();
        double wide = Svg.width(text, 9.5);
        double textX = wide <= to - from ? (from + to - wide) / 2 : Math.min(from, MARGIN * 2 + WIDTH - wide);
        double right = Math.max(to, textX + wide);
        int level = 0;
        while (level < filled.size() && filled.get(level) > Math.min(from, textX) + 1) {
            level++;
        }
        if (level == filled.size()) {
            filled.add(right);
        } else {
            filled.set(level, right);
        }
        return new Span(from, to, piece.first() >= first, piece.last() <= last, level, textX, text, piece.target());
    }
}
