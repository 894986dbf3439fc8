/** Refresh limits, lengths, paths, wire, volts and amps: pure functions, each with its source. */
@NullMarked
package streamwright.physics;

import org.jspecify.annotations.NullMarked;
