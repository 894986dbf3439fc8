package streamwright.solve;

import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The wire between two indexes: a plain table while that is small, a map of what exists beyond. */
final class WireTable {
    private static final long PLAIN_MOST = 8_000_000;

    private final int columns;
    private final Site.@Nullable Wire[] plain;
    private final Map<Long, Site.Wire> sparse = new HashMap<>();

    WireTable(int rows, int columns) {
        this.columns = columns;
        long cells = (long) rows * columns;
        plain = new Site.Wire[cells <= PLAIN_MOST ? (int) cells : 0];
    }

    void put(int row, int column, Site.Wire wire) {
        if (plain.length > 0) {
            plain[row * columns + column] = wire;
        } else {
            sparse.put((long) row * columns + column, wire);
        }
    }

    Site.@Nullable Wire get(int row, int column) {
        return plain.length > 0 ? plain[row * columns + column] : sparse.get((long) row * columns + column);
    }
}
