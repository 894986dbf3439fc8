package streamwright.report.page;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Which labels can be read at which zoom: a label shows from the zoom on at which it covers no other that shows already.
 * Labels keep their size on the screen, so places move apart as one zooms in.
 */
final class Clutter {
    /** Zooms at which labels may join, from the whole yard on. */
    static final int[] ZOOMS = {1, 2, 4, 8};

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
    }

    /** A label that wants to stand at a place; {@code dx} and {@code dy} are on the screen, text begins there. */
    record Wish(double x, double y, double dx, double dy, double width, double height) {
        Box box(int zoom) {
            return new Box(x * zoom + dx, y * zoom + dy - height, width, height * 1.2);
        }
    }

    private final List<Map<Long, List<Box>>> taken = new ArrayList<>();

    Clutter() {
        for (int z = 0; z < ZOOMS.length; z++) {
            taken.add(new HashMap<>());
        }
    }

    /** Something that no label may cover, whatever the zoom. */
    void keepFree(Wish wish) {
        take(wish, 0);
    }

    /** The first of the wished places at the smallest zoom that has room for one: its index, and that zoom. */
    int[] place(List<Wish> choices) {
        for (int z = 0; z < ZOOMS.length; z++) {
            for (int c = 0; c < choices.size(); c++) {
                if (free(choices.get(c).box(ZOOMS[z]), taken.get(z))) {
                    take(choices.get(c), z);
                    return new int[] {c, ZOOMS[z]};
                }
            }
        }
        return new int[] {0, 2 * ZOOMS[ZOOMS.length - 1]};
    }

    /** From that zoom on. */
    private void take(Wish wish, int from) {
        for (int z = from; z < ZOOMS.length; z++) {
            Box box = wish.box(ZOOMS[z]);
            for (long cell : cells(box)) {
                taken.get(z).computeIfAbsent(cell, any -> new ArrayList<>()).add(box);
            }
        }
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
