/** What the user has: a yard, its props, hardware models, rules and prices. Immutable and checked; nothing downstream checks again. */
@NullMarked
package streamwright.yard;

import org.jspecify.annotations.NullMarked;
