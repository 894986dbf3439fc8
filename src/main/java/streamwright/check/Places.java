package streamwright.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import streamwright.plan.Board;
import streamwright.yard.Point;
import streamwright.yard.Spot;
import streamwright.yard.Yard;

/** The places where boards may hang. A plan may give them rounded, so a place is found by what lies next to it. */
final class Places {
    /** Larger than the rounding of a coordinate, so that what is near lies in the same cell or the next. */
    private static final double CELL = 0.01;

    private record Cell(long x, long y, long z) {
        static Cell of(Point point) {
            return new Cell(cell(point.x()), cell(point.y()), cell(point.z()));
        }

        private static long cell(double coordinate) {
            // a coordinate of a plan may be any number; a cell has neighbours on both sides
            return (long) Math.max(-1e15, Math.min(1e15, Math.floor(coordinate / CELL)));
        }
    }

    private final boolean named;
    private final Map<String, Spot> byName = new HashMap<>();
    private final Map<Cell, List<Spot>> byCell = new HashMap<>();

    Places(Yard yard) {
        named = yard.spotsNamed();
        for (Spot spot : yard.places()) {
            if (spot.id() == null) {
                byCell.computeIfAbsent(Cell.of(spot.at()), cell -> new ArrayList<>())
                        .add(spot);
            } else {
                byName.putIfAbsent(spot.id(), spot);
            }
        }
    }

    /** The place of a board; null where it is at none. */
    @Nullable
    Spot of(Board board) {
        if (!named) {
            return board.spot() == null ? near(board.at()) : null;
        }
        return board.spot() == null ? null : byName.get(board.spot());
    }

    private @Nullable Spot near(Point at) {
        Cell middle = Cell.of(at);
        Spot nearest = null;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < 27; i++) {
            Cell cell = new Cell(middle.x + i % 3 - 1, middle.y + i / 3 % 3 - 1, middle.z + i / 9 - 1);
            for (Spot spot : byCell.getOrDefault(cell, List.of())) {
                double off = off(spot.at(), at);
                if (same(spot.at(), at) && off < least) {
                    nearest = spot;
                    least = off;
                }
            }
        }
        return nearest;
    }

    /** Whether two places are one but for rounding. */
    static boolean same(Point a, Point b) {
        return Near.lengths(a.x(), b.x()) && Near.lengths(a.y(), b.y()) && Near.lengths(a.z(), b.z());
    }

    private static double off(Point a, Point b) {
        return Math.abs(a.x() - b.x()) + Math.abs(a.y() - b.y()) + Math.abs(a.z() - b.z());
    }
}
