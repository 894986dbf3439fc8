package streamwright.physics;

import streamwright.yard.Rules;

/** Resistance of copper wire. */
public final class Wire {
    /**
     * Ohm mm2 per metre of annealed copper at 20 C: 1/58, the international standard resistance of IEC 60028:1925.
     */
    public static final double COPPER = 0.017241;

    private Wire() {}

    /**
     * Ohms of both conductors of a run: there and back. {@code wireFactor} lifts the ideal copper of IEC 60028 to the
     * maxima that IEC 60228 allows a flexible (class 5) conductor.
     *
     * @param mm2 cross-section of one conductor
     * @param metres length of the run, one way
     */
    public static double ohms(Rules rules, double mm2, double metres) {
        return COPPER / mm2 * rules.wireFactor() * 2 * metres;
    }
}
