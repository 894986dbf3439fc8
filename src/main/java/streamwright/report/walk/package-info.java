/** A plan joined with its yard in the order in which one walks it; every sheet is read off this. */
@NullMarked
package streamwright.report.walk;

import org.jspecify.annotations.NullMarked;
