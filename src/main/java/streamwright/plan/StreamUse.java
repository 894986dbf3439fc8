package streamwright.plan;

/**
 * One stream of a cable that carries something.
 *
 * @param stream 1-based within the jack
 * @param pixel the kind of its pixels
 * @param pixels position of its last used pixel
 * @param limit pixels it may carry
 * @param universe and slot: where its start channel lies
 */
public record StreamUse(int stream, String pixel, long startChannel, int pixels, int limit, int universe, int slot) {}
