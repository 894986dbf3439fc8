package streamwright.yard;

/**
 * A board model that the plan may use.
 *
 * @param most most boards of it; {@code Integer.MAX_VALUE} for no limit
 * @param have already owned: these cost nothing
 * @param price of each further one
 */
public record BoardOffer(BoardModel model, int most, int have, double price) {}
