package streamwright.report.walk;

/**
 * One injection.
 *
 * @param pixel 1-based within the string
 * @param wire its length from the board to that pixel
 * @param pixels that it feeds
 */
public record InjectionStop(StringStop string, int pixel, double wire, int pixels, double ampsShow, double ampsFull) {}
