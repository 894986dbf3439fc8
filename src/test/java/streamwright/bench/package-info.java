/** Seeded yards of every size and published instances, and what planning them costs. */
@NullMarked
package streamwright.bench;

import org.jspecify.annotations.NullMarked;
