/**
 * Readers and writers of every file. A file is read loosely into {@link Node}s that know where they stand; {@link Shape}s
 * then make checked types of them and tell all problems at once; the same shapes give the JSON Schema.
 */
@NullMarked
package streamwright.file;

import org.jspecify.annotations.NullMarked;
