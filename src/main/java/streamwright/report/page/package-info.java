/** Pages for screen and paper: each one file that asks nothing of anyone, made of parts that other pages may share. */
@NullMarked
package streamwright.report.page;

import org.jspecify.annotations.NullMarked;
