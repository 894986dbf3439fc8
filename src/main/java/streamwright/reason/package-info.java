/**
 * Why each decision of a plan was taken: the figures that decided, and what the next-best choices would cost or break,
 * found by changing that decision alone and auditing what comes of it.
 */
@NullMarked
package streamwright.reason;

import org.jspecify.annotations.NullMarked;
