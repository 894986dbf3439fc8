package streamwright.yard;

import org.jspecify.annotations.Nullable;

/**
 * A place where boards may hang.
 *
 * @param id null where the yard names no spots: then any feed point is one
 * @param most most boards; {@code Integer.MAX_VALUE} for no limit
 * @param price of a box and supply there, once if used
 * @param ampsMost of all boards there; infinite where not given
 */
public record Spot(@Nullable String id, Point at, int most, double price, double ampsMost) {
    public static Spot unnamed(Point at) {
        return new Spot(null, at, Integer.MAX_VALUE, 0, Double.POSITIVE_INFINITY);
    }
}
