/** A yard that cannot work: by which figures, which of its rules and things clash, and what would help. */
@NullMarked
package streamwright.reason.impasse;

import org.jspecify.annotations.NullMarked;
