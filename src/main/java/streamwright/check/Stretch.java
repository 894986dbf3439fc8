package streamwright.check;

import streamwright.yard.PixelKind;

/**
 * Pixels fed by one wire: by the port, or by an injection, up to the next injection.
 *
 * @param about the port, or the injection
 * @param own whether the port feeds it
 * @param amps drawn at the show's brightness
 * @param kind of the pixel that is worst off
 * @param volts which that pixel gets
 * @param wire length of an injection's wire in the yard's units, 0 for the port's own
 */
record Stretch(String about, boolean own, double amps, PixelKind kind, double volts, double wire) {}
