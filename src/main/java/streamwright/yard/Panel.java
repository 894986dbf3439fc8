package streamwright.yard;

/** A flat matrix of pixels. */
public record Panel(int columns, int rows) {
    public int pixels() {
        return Math.multiplyExact(columns, rows);
    }
}
