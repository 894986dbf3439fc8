/** The difference of two plans of one yard as work: what a crew would take down, pull, hang, plug and set, in order. */
@NullMarked
package streamwright.plan.change;

import org.jspecify.annotations.NullMarked;
