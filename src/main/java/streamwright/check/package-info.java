/**
 * The audit: every figure of a plan computed anew from the yard, and every rule held against it. It shares nothing with
 * the planner but data types, so that the two can disagree.
 */
@NullMarked
package streamwright.check;

import org.jspecify.annotations.NullMarked;
