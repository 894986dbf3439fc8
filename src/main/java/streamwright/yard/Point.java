package streamwright.yard;

/** A place: ground position and height, in the yard's units. */
public record Point(double x, double y, double z) {
    public Point {
        if (!(Double.isFinite(x) && Double.isFinite(y) && Double.isFinite(z))) {
            throw new IllegalArgumentException("coordinates are finite, not " + x + ", " + y + ", " + z);
        }
        // -0.0 and 0.0 are one place; records compare doubles bit by bit
        x += 0.0;
        y += 0.0;
        z += 0.0;
    }

    public Point(double x, double y) {
        this(x, y, 0);
    }
}
