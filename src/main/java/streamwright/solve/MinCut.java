package streamwright.solve;

import java.util.Arrays;

/**
 * Smallest cuts in a small directed graph with real capacities, by shortest augmenting paths (Edmonds and Karp 1972).
 * Built once for a support graph; capacities are restored before each flow.
 */
final class MinCut {
    private static final double NOTHING = 1e-9;

    private final int nodes;
    private int[] head;
    private int[] next = new int[64];
    private int[] to = new int[64];
    private double[] capacity = new double[64];
    private double[] left = new double[64];
    private int arcs;
    private final int[] queue;
    private final int[] via;

    MinCut(int nodes) {
        this.nodes = nodes;
        head = new int[nodes];
        Arrays.fill(head, -1);
        queue = new int[nodes];
        via = new int[nodes];
    }

    void arc(int from, int target, double room) {
        if (arcs + 2 > to.length) {
            next = Arrays.copyOf(next, 2 * arcs);
            to = Arrays.copyOf(to, 2 * arcs);
            capacity = Arrays.copyOf(capacity, 2 * arcs);
            left = Arrays.copyOf(left, 2 * arcs);
        }
        half(from, target, room);
        half(target, from, 0);
    }

    private void half(int from, int target, double room) {
        to[arcs] = target;
        capacity[arcs] = room;
        next[arcs] = head[from];
        head[from] = arcs++;
    }

    /**
     * Sends up to {@code enough} from source to sink.
     *
     * @return what flowed, at most {@code enough}
     */
    double flow(int source, int sink, double enough) {
        System.arraycopy(capacity, 0, left, 0, arcs);
        double sent = 0;
        while (sent < enough - NOTHING && reach(source, sink)) {
            double step = enough - sent;
            for (int node = sink; node != source; node = to[via[node] ^ 1]) {
                step = Math.min(step, left[via[node]]);
            }
            for (int node = sink; node != source; node = to[via[node] ^ 1]) {
                left[via[node]] -= step;
                left[via[node] ^ 1] += step;
            }
            sent += step;
        }
        return sent;
    }

    private boolean reach(int source, int sink) {
        Arrays.fill(via, -1);
        via[source] = -2;
        int end = 0;
        queue[end++] = source;
        for (int at = 0; at < end; at++) {
            for (int arc = head[queue[at]]; arc >= 0; arc = next[arc]) {
                if (left[arc] > NOTHING && via[to[arc]] == -1) {
                    via[to[arc]] = arc;
                    if (to[arc] == sink) {
                        return true;
                    }
                    queue[end++] = to[arc];
                }
            }
        }
        return false;
    }

    /** After a flow that fell short: the nodes from which the sink can still be reached, the smallest sink side. */
    boolean[] sinkSide(int sink) {
        boolean[] side = new boolean[nodes];
        side[sink] = true;
        int end = 0;
        queue[end++] = sink;
        for (int at = 0; at < end; at++) {
            for (int arc = head[queue[at]]; arc >= 0; arc = next[arc]) {
                int from = to[arc];
                if (!side[from] && left[arc ^ 1] > NOTHING) {
                    side[from] = true;
                    queue[end++] = from;
                }
            }
        }
        return side;
    }

    /** After a flow that fell short: the nodes that the source cannot reach, the largest sink side. */
    boolean[] beyondSource(int source) {
        reach(source, -1);
        boolean[] side = new boolean[nodes];
        for (int i = 0; i < nodes; i++) {
            side[i] = via[i] == -1;
        }
        return side;
    }
}
