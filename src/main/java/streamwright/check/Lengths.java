package streamwright.check;

import org.jspecify.annotations.Nullable;
import streamwright.yard.Point;
import streamwright.yard.Yard;

/** Lengths of wire in the yard's units; not a number where there is no way. */
final class Lengths {
    private final Yard yard;
    private final Ways ways;

    Lengths(Yard yard) {
        this.yard = yard;
        ways = new Ways(yard.obstacles());
    }

    /** The id of the obstacle in which a point lies, or null. */
    @Nullable
    String blocks(Point point) {
        return ways.blocks(point);
    }

    double hop(Point from, Point to) {
        return yard.rules().slack() * path(from, to) + 2 * yard.rules().trunkLoop();
    }

    /** Of a lead or jumper. */
    double lead(Point from, Point to) {
        return yard.rules().slack() * path(from, to) + yard.rules().leadLoop();
    }

    private double path(Point from, Point to) {
        return ways.between(from, to) + Math.abs(from.z() - to.z());
    }
}
