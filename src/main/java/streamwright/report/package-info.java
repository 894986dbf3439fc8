/** What a plan's builders hold in their hands: pages, sheets and tables. */
@NullMarked
package streamwright.report;

import org.jspecify.annotations.NullMarked;
