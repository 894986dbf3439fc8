package streamwright.solve;

/**
 * A linear row of the relaxation, told by its coefficients: so that a variable that comes in later, and the price of
 * one that is still out, see every row alike. A strand's coefficient at a spot is the sum over its items, plus
 * {@code head} of its head and {@code start}.
 */
interface Row {
    /** The least that a plan's sum may be. */
    default double low() {
        return 0;
    }

    /** The most that it may be. */
    default double high() {
        return Double.POSITIVE_INFINITY;
    }

    /** Whether plans keep it because of the other rows and because their numbers are whole. */
    default boolean cut() {
        return false;
    }

    /** Of a trunk arc from a node (controllers first, then spots) to a spot. */
    default double arc(int from, int to) {
        return 0;
    }

    /** Adds so many times {@link #arc} to a table of all arcs. */
    default void addArcs(double times, double[][] sums) {
        for (int from = 0; from < sums.length; from++) {
            for (int to = 0; to < sums[from].length; to++) {
                sums[from][to] += times * arc(from, to);
            }
        }
    }

    /** Whether {@link #arc} is ever other than 0. */
    default boolean hasArcs() {
        return false;
    }

    /** Of each string of an item served from a spot. */
    default double item(int item, int spot) {
        return 0;
    }

    /** The one item for which {@link #item} is not 0, or -1 for none, or {@link #ALL}. */
    default int onlyItem() {
        return -1;
    }

    int ALL = -2;

    /** Of each strand at a spot that is led into by an item. */
    default double head(int item, int spot) {
        return 0;
    }

    default boolean hasHeads() {
        return false;
    }

    /** Of each strand at a spot. */
    default double start(int spot) {
        return 0;
    }

    default boolean hasStarts() {
        return false;
    }

    /** Of a spot being used. */
    default double used(int spot) {
        return 0;
    }

    /** Of a board of a model at a spot. */
    default double board(int spot, int model) {
        return 0;
    }

    /** Of each string of an item left out. */
    default double missing(int item) {
        return 0;
    }

    /** Of a board of a model that must be paid for. */
    default double paid(int model) {
        return 0;
    }

    /** Of a stream that lies in a window of kept channels. */
    default double window(int window) {
        return 0;
    }

    /** Of a strand at a spot, all in all. */
    default double strand(Strand strand, int spot) {
        double sum = hasStarts() ? start(spot) : 0;
        if (hasHeads()) {
            sum += head(strand.head(), spot);
        }
        int only = onlyItem();
        if (only != -1) {
            for (int item : strand.items()) {
                if (only == ALL || only == item) {
                    sum += item(item, spot);
                }
            }
        }
        return sum;
    }
}
