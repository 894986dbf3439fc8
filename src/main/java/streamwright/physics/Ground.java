package streamwright.physics;

import streamwright.yard.Point;

/** Shortest ways over the yard's ground. */
public interface Ground {
    /**
     * Length of the shortest planar path that enters no obstacle's interior, plus the difference in height; in the
     * yard's units; infinite where obstacles leave no way.
     */
    double path(Point from, Point to);
}
