/** The lists that people and spreadsheets read: boards, channels, runs to pull, things to buy, steps of commissioning. */
@NullMarked
package streamwright.report.sheet;

import org.jspecify.annotations.NullMarked;
