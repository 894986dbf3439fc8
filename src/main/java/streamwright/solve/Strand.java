package streamwright.solve;

/**
 * Items that may share a port, led into by one of them: all orders of theirs that begin with the head, together.
 *
 * @param items sorted, one entry a string
 */
record Strand(int[] items, int head) {
    int size() {
        return items.length;
    }
}
