/** A plan's decisions alone, and their completion to a plan: numbering, lengths, channels, power, cost. */
@NullMarked
package streamwright.layout;

import org.jspecify.annotations.NullMarked;
