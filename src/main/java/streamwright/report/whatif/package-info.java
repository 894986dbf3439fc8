/** A comparison of plans under several wishes: its rows, what is to be said of them, and its page. */
@NullMarked
package streamwright.report.whatif;

import org.jspecify.annotations.NullMarked;
