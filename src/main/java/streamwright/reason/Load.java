package streamwright.reason;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import streamwright.layout.Layout;
import streamwright.yard.PixelKind;
import streamwright.yard.Prop;

/** What the streams of one cable carry, as shares of what they may. */
final class Load {
    /** Above a share's rounding, below a pixel. */
    private static final double ROUNDING = 1e-9;

    private final Map<Integer, Map<PixelKind, Double>> shares = new TreeMap<>();

    static Load of(Measures measures, Layout.Run run) {
        Load load = new Load();
        for (Layout.Hung board : run.boards()) {
            for (Layout.Chain chain : board.ports()) {
                load.add(chain.stream(), measures.kind(chain.strings().get(0)), measures.share(run, board, chain));
            }
            load.fixtures(measures, run, board);
        }
        return load;
    }

    private void fixtures(Measures measures, Layout.Run run, Layout.Hung board) {
        Layout.Block block = board.block();
        if (block != null) {
            double pixels =
                    Math.ceil(board.model().outputs() / (double) block.kind().channels());
            add(block.stream(), block.kind(), measures.share(run, block.kind(), pixels));
        }
        for (Prop panel : board.panels()) {
            PixelKind kind = Objects.requireNonNull(panel.pixel());
            List<Integer> streams = board.model().streams();
            double pixels = Objects.requireNonNull(panel.panel()).pixels() / (double) streams.size();
            streams.forEach(stream -> add(stream, kind, measures.share(run, kind, Math.ceil(pixels))));
        }
    }

    /** More, or with a negative share less, on a stream. */
    void add(int stream, PixelKind kind, double share) {
        Map<PixelKind, Double> kinds = shares.computeIfAbsent(stream, k -> new HashMap<>());
        if (kinds.merge(kind, share, Double::sum) < ROUNDING) {
            kinds.remove(kind);
        }
    }

    /** What lies beyond full streams, and a whole stream for each kind that shares one with another. */
    double excess() {
        double excess = 0;
        for (Map<PixelKind, Double> kinds : shares.values()) {
            excess += Math.max(0, share(kinds) - 1 - ROUNDING) + Math.max(0, kinds.size() - 1);
        }
        return excess;
    }

    /** Sum of squares: least where the streams are filled evenly. */
    double unevenness() {
        double sum = 0;
        for (Map<PixelKind, Double> kinds : shares.values()) {
            sum += share(kinds) * share(kinds);
        }
        return sum;
    }

    boolean fits(int stream, PixelKind kind, double share) {
        Map<PixelKind, Double> kinds = shares.getOrDefault(stream, Map.of());
        boolean pure = kinds.isEmpty() || kinds.keySet().equals(java.util.Set.of(kind));
        return pure && share(kinds) + share <= 1 + ROUNDING;
    }

    /** Of these plugs one on a stream with most room for pixels of a kind; plugs must not be empty. */
    Plug roomiest(List<Plug> plugs, PixelKind kind) {
        Plug best = plugs.get(0);
        for (Plug plug : plugs) {
            if (taken(plug, kind) < taken(best, kind) - ROUNDING) {
                best = plug;
            }
        }
        return best;
    }

    private double taken(Plug plug, PixelKind kind) {
        Map<PixelKind, Double> kinds = shares.getOrDefault(plug.stream(), Map.of());
        boolean foreign = !kinds.isEmpty() && !kinds.containsKey(kind);
        return share(kinds) + (foreign ? 1 : 0);
    }

    private static double share(Map<PixelKind, Double> kinds) {
        double share = 0;
        for (double part : kinds.values()) {
            share += part;
        }
        return share;
    }
}
