/** Every reader, given any bytes. */
@org.jspecify.annotations.NullMarked
package streamwright.fuzz;
