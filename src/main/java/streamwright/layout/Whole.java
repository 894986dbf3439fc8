package streamwright.layout;

/** Whole numbers of a plan; only layouts that break rules reach their ends. */
final class Whole {
    private Whole() {}

    /** The number itself, or the highest that a plan can name. */
    static int of(long number) {
        return (int) Math.min(Integer.MAX_VALUE, number);
    }
}
