/** Commands, exit statuses and progress: the only place that prints. */
@NullMarked
package streamwright.cli;

import org.jspecify.annotations.NullMarked;
