package streamwright.yard;

/** Limits on the number of boards in all, both inclusive. */
public record BoardCount(int least, int most) {
    public static final BoardCount FREE = new BoardCount(0, Integer.MAX_VALUE);
}
