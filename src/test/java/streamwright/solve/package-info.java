/** The planner against brute force, published examples and another solver. */
@NullMarked
package streamwright.solve;

import org.jspecify.annotations.NullMarked;
