package streamwright.solve;

import java.util.Arrays;
import java.util.TreeMap;
import java.util.stream.IntStream;
import streamwright.yard.BoardModel;
import streamwright.yard.BoardOffer;

/**
 * Where something can be plugged into a board: the ports of pixels; the one block of outputs; the one panel. Of each
 * model on offer the stream that each socket hears, as in the model's file; a panel's socket hears the first of its
 * streams, which tells nothing of the others.
 */
final class Sockets {
    /** {@code heard[m][p]}: 1-based, {@link BoardModel#ANY} where it can be set. */
    final int[][] heard;

    /** {@code cut[m]}: 1-based streams over which a panel is cut; empty for boards that drive none. */
    final int[][] cut;

    final boolean[] addressed;

    /** Highest stream that any board hears. */
    final int streamsHeard;

    Sockets(BoardOffer[] offers) {
        heard = new int[offers.length][];
        cut = new int[offers.length][];
        addressed = new boolean[offers.length];
        int most = 0;
        for (int m = 0; m < offers.length; m++) {
            BoardModel model = offers[m].model();
            addressed[m] = model.addressed();
            cut[m] = ints(model.streams().stream().mapToInt(Integer::intValue));
            heard[m] = switch (model.drives()) {
                case PIXELS -> ints(model.ports().stream().mapToInt(Integer::intValue));
                case OUTPUTS -> new int[] {model.hears()};
                case PANEL -> new int[] {model.streams().get(0)};
            };
            boolean any = Arrays.stream(heard[m]).anyMatch(stream -> stream == BoardModel.ANY);
            most = Math.max(
                    most,
                    any
                            ? Integer.MAX_VALUE
                            : IntStream.concat(Arrays.stream(heard[m]), Arrays.stream(cut[m]))
                                    .max()
                                    .orElse(0));
        }
        streamsHeard = most;
    }

    private static int[] ints(IntStream numbers) {
        return numbers.toArray();
    }

    /** Sockets of a model that hear some of so many streams, those that most hear. */
    int hearing(int model, int streams) {
        TreeMap<Integer, Integer> hear = new TreeMap<>();
        int settable = 0;
        for (int stream : heard[model]) {
            if (stream == BoardModel.ANY) {
                settable++;
            } else {
                hear.merge(stream, 1, Integer::sum);
            }
        }
        int[] rising =
                hear.values().stream().mapToInt(Integer::intValue).sorted().toArray();
        int all = streams > 0 ? settable : 0;
        return all
                + Arrays.stream(rising)
                        .skip(Math.max(0, rising.length - streams))
                        .sum();
    }

    int count(int model) {
        return heard[model].length;
    }

    /** Whether a socket hears a stream (0-based), or can be set to it. */
    boolean hears(int model, int socket, int stream) {
        int at = heard[model][socket];
        return at == BoardModel.ANY || at == stream + 1;
    }

    /** Streams that a model takes for one chain. */
    int parts(int model) {
        return Math.max(1, cut[model].length);
    }

    /** The 0-based stream of a part of what hangs at a socket that hears {@code stream}. */
    int part(int model, int stream, int part) {
        return cut[model].length == 0 ? stream : cut[model][part] - 1;
    }
}
