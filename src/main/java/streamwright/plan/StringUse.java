package streamwright.plan;

/**
 * A string on a port.
 *
 * @param string 1-based within its prop
 * @param nulls null pixels in the wire before it
 * @param firstPixel position of its first lit pixel on the stream
 * @param channel of its first lit pixel
 * @param length of its lead (first on the port) or jumper
 */
public record StringUse(String prop, int string, int nulls, int firstPixel, int pixels, long channel, double length) {}
