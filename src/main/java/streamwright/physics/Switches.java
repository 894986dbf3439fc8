package streamwright.physics;

import streamwright.yard.Address;

/** How a board ID stands on a board's switches. */
public final class Switches {
    private Switches() {}

    /**
     * Binary switches as one digit each, switch 1 first, 1 is up: switch k stands for 2^(k-1) (positional binary). A
     * rotary switch as its position. Bits that the board has no switch for are lost: {@code id-range} is not checked.
     *
     * @throws IllegalArgumentException for a board without an address
     */
    public static String text(Address address, int id) {
        if (address instanceof Address.Switches binary) {
            StringBuilder text = new StringBuilder();
            for (int k = 0; k < binary.switches(); k++) {
                // a shift beyond an int's bits would start again at bit 0
                text.append(k < Integer.SIZE ? (id >>> k) & 1 : 0);
            }
            return text.toString();
        }
        if (address instanceof Address.Rotary) {
            return Integer.toString(id);
        }
        throw new IllegalArgumentException("a board without an address has no switches");
    }
}
