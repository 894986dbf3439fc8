/** Construct, improve, prove: the optimiser. The only place that knows the solver library. */
@NullMarked
package streamwright.solve;

import org.jspecify.annotations.NullMarked;
