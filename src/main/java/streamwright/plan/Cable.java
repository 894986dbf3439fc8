package streamwright.plan;

import java.util.List;

/**
 * What leaves one jack.
 *
 * @param length sum of the hops
 * @param boards names of the boards in cable order
 * @param hops {@code hops[i]} leads to board i, from the jack or from the board before
 */
public record Cable(
        String controller, int jack, double length, List<String> boards, List<Double> hops, List<StreamUse> streams) {
    public Cable {
        boards = List.copyOf(boards);
        hops = List.copyOf(hops);
        streams = List.copyOf(streams);
    }
}
