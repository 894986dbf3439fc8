/** The answer as data, field for field as in the plan file, and the one list of rules. */
@NullMarked
package streamwright.plan;

import org.jspecify.annotations.NullMarked;
