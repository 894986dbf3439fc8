/** From any address of a pixel to all the others, and from a symptom in the yard to the switches that cause it. */
@NullMarked
package streamwright.report.locate;

import org.jspecify.annotations.NullMarked;
