package streamwright.report.page;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Which labels can be read at which zoom: a label shows from the zoom on at which it covers no other that shows already.
 * Labels keep their size on the screen, so places move apart as one zooms in.
 */
final class Clutter {
    /** Zooms at which labels may join, from the whole yard on. */
    static final int[] ZOOMS = {1, 2, 4, 8};

    /** Windows are wider and narrower than the drawing, so zooms between those are looked at too: so many to a doubling. */
    private static final int BETWEEN = 4;

    /** Side of the squares by which boxes are looked up, about the size of a label. */
    private static final double CELL = 50;

    /** More than there are squares in a column of any drawing. */
    private static final long ROW = 1_000_000;

    private record Box(double x, double y, double width, double height) {
        boolean meets(Box other) {
            return x < other.x + other.width
                    && other.x < x + width
                    && y < other.y + other.height
                    && other.y < y + height;
        }

        /** Whether some share of the line, from 0 at its begin to 1 at its end, lies between all four sides. */
        boolean crossedBy(Line line) {
            double dx = line.x2 - line.x1;
            double dy = line.y2 - line.y1;
            double[] along = {-dx, dx, -dy, dy};
            double[] room = {line.x1 - x, x + width - line.x1, line.y1 - y, y + height - line.y1};
            double from = 0;
            double to = 1;
            for (int side = 0; side < along.length; side++) {
                if (along[side] == 0 && room[side] < 0) {
                    return false;
                }
                if (along[side] < 0) {
                    from = Math.max(from, room[side] / along[side]);
                } else if (along[side] > 0) {
                    to = Math.min(to, room[side] / along[side]);
                }
            }
            return from <= to;
        }
    }

    /** A box that wants to stand at a place; on the screen its lower left corner is {@code dx} and {@code dy} off. */
    record Wish(double x, double y, double dx, double dy, double width, double height) {
        /** The square about a dot, whose middle is {@code dx} and {@code dy} off its place. */
        static Wish dot(double x, double y, double dx, double dy, double radius) {
            return new Wish(x, y, dx - radius, dy + radius, 2 * radius, 2 * radius);
        }

        Box box(double zoom) {
            return new Box(x * zoom + dx, y * zoom + dy - height, width, height);
        }
    }

    private record Line(double x1, double y1, double x2, double y2) {}

    private final List<Map<Long, List<Box>>> taken = new ArrayList<>();
    private final Map<Long, Set<Line>> drawn = new HashMap<>();

    Clutter() {
        for (int step = 0; step <= BETWEEN * (ZOOMS.length - 1); step++) {
            taken.add(new HashMap<>());
        }
    }

    /** The zoom of a step, {@code BETWEEN} of which make a doubling. */
    private static double zoom(int step) {
        return Math.pow(2, (double) step / BETWEEN);
    }

    /** Beside a place, above and below it, then aslant: where the lower left corner of a label may be. */
    static Stream<double[]> around(double wide, double gap) {
        return Stream.of(
                new double[] {gap, 4},
                new double[] {-gap - wide, 4},
                new double[] {-wide / 2, -gap},
                new double[] {-wide / 2, gap + 9},
                new double[] {gap, -gap},
                new double[] {gap, gap + 9},
                new double[] {-gap - wide, -gap},
                new double[] {-gap - wide, gap + 9});
    }

    /** Something that no label may cover, whatever the zoom. */
    void keepFree(Wish wish) {
        take(wish, 0);
    }

    /** A straight stretch that labels cover only where there is no better place. */
    void draw(double x1, double y1, double x2, double y2) {
        Line line = new Line(x1, y1, x2, y2);
        int steps = 1 + (int) (Math.hypot(x2 - x1, y2 - y1) / (CELL / 4));
        for (int i = 0; i <= steps; i++) {
            long column = (long) Math.floor((x1 + (x2 - x1) * i / steps) / CELL);
            long row = (long) Math.floor((y1 + (y2 - y1) * i / steps) / CELL);
            drawn.computeIfAbsent(column * ROW + row, any -> new LinkedHashSet<>())
                    .add(line);
        }
    }

    /** Whether it can stand there when the whole yard is seen, in a window as wide as the drawing. */
    boolean open(Wish wish) {
        return free(wish.box(zoom(0)), taken.get(0));
    }

    /** Whether it can in windows up to half as wide again, too. */
    boolean openInAnyWindow(Wish wish) {
        return IntStream.rangeClosed(0, BETWEEN / 2).allMatch(step -> free(wish.box(zoom(step)), taken.get(step)));
    }

    /**
     * The place that covers the fewest lines, and of those the first, at the smallest zoom from which on there is room
     * for any: its index, and that zoom.
     */
    int[] place(List<Wish> choices) {
        for (int z = 0; z < ZOOMS.length; z++) {
            int best = -1;
            int least = Integer.MAX_VALUE;
            for (int c = 0; c < choices.size() && least > 0; c++) {
                Wish wish = choices.get(c);
                int crossed = freeFrom(wish, BETWEEN * z) ? crossed(wish.box(ZOOMS[z]), ZOOMS[z]) : Integer.MAX_VALUE;
                if (crossed < least) {
                    least = crossed;
                    best = c;
                }
            }
            if (best >= 0) {
                take(choices.get(best), BETWEEN * z);
                return new int[] {best, ZOOMS[z]};
            }
        }
        return new int[] {0, 2 * ZOOMS[ZOOMS.length - 1]};
    }

    private int crossed(Box seen, int zoom) {
        Box box = new Box(seen.x / zoom, seen.y / zoom, seen.width / zoom, seen.height / zoom);
        Set<Line> met = new HashSet<>();
        for (long cell : cells(box)) {
            for (Line line : drawn.getOrDefault(cell, Set.of())) {
                if (box.crossedBy(line)) {
                    met.add(line);
                }
            }
        }
        return met.size();
    }

    /** From that step on. */
    private void take(Wish wish, int from) {
        for (int step = from; step < taken.size(); step++) {
            Box box = wish.box(zoom(step));
            for (long cell : cells(box)) {
                taken.get(step).computeIfAbsent(cell, any -> new ArrayList<>()).add(box);
            }
        }
    }

    /** A box that stands across the other from its own place comes nearer as one zooms in, so all zooms are asked. */
    private boolean freeFrom(Wish wish, int first) {
        for (int step = first; step < taken.size(); step++) {
            if (!free(wish.box(zoom(step)), taken.get(step))) {
                return false;
            }
        }
        return true;
    }

    private static boolean free(Box box, Map<Long, List<Box>> taken) {
        for (long cell : cells(box)) {
            for (Box other : taken.getOrDefault(cell, List.of())) {
                if (box.meets(other)) {
                    return false;
                }
            }
        }
        return true;
    }

    /** The squares of a grid that a box touches. */
    private static long[] cells(Box box) {
        long west = (long) Math.floor(box.x / CELL);
        long east = (long) Math.floor((box.x + box.width) / CELL);
        long south = (long) Math.floor(box.y / CELL);
        long north = (long) Math.floor((box.y + box.height) / CELL);
        long[] cells = new long[(int) ((east - west + 1) * (north - south + 1))];
        int n = 0;
        for (long x = west; x <= east; x++) {
            for (long y = south; y <= north; y++) {
                cells[n++] = x * ROW + y;
            }
        }
        return cells;
    }
}
