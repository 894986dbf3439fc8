package streamwright.yard;

/** How a board model is told its ID. */
public sealed interface Address {
    /** Binary switches; switch k stands for 2^(k-1), up is 1. IDs from {@code least} to {@code most}, inclusive. */
    record Switches(int least, int most, int switches) implements Address {}

    /** One rotary switch whose position is the ID. */
    record Rotary(int least, int most) implements Address {}

    /** No address: the board is alone on its cable. */
    record None() implements Address {}
}
