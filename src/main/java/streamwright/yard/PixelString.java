package streamwright.yard;

/**
 * An unbroken run of pixels with one data input and one far end.
 *
 * @param prop the id of its prop
 * @param number 1-based within the prop
 */
public record PixelString(String prop, int number, int pixels, Point feed, Point tail) {
    /** As people say it: the prop, and the number where the prop has several. */
    public String label(boolean several) {
        return several ? prop + " " + number : prop;
    }
}
