package streamwright.solve;

/**
 * Items that may share a port, led into by one of them: all orders of theirs that begin with the head, together.
 *
 * @param items sorted, one entry a string
 * @param order the order with the cheapest jumpers, head first
 * @param jumpers price of the jumpers in that order; no other order's cost less
 * @param pixels lit ones plus the fewest nulls that any order needs in its jumpers
 */
record Strand(int[] items, int[] order, double jumpers, int pixels) {
    int head() {
        return order[0];
    }

    int size() {
        return items.length;
    }
}
