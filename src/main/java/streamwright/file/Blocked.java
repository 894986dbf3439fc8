package streamwright.file;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.algorithm.locate.PointOnGeometryLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.index.strtree.STRtree;
import streamwright.yard.Obstacle;
import streamwright.yard.Point;

/** Tells points that no wire can reach: those inside an obstacle. On its edge wire may run. */
final class Blocked {
    private final STRtree obstacles = new STRtree();

    Blocked(List<Obstacle> list) {
        for (Obstacle obstacle : list) {
            Polygon ground = ObstacleShape.polygon(obstacle.ring());
            obstacles.insert(
                    ground.getEnvelopeInternal(), new Area(obstacle.id(), new IndexedPointInAreaLocator(ground)));
        }
        obstacles.build();
    }

    private record Area(String id, PointOnGeometryLocator locator) {}

    /** The id of the obstacle, or null. */
    @Nullable
    String by(Point point) {
        Coordinate at = new Coordinate(point.x(), point.y());
        for (Object found : obstacles.query(new Envelope(at))) {
            if (found instanceof Area area && area.locator().locate(at) == Location.INTERIOR) {
                return area.id();
            }
        }
        return null;
    }

    void warn(Place place, String what, Point point, Problems problems) {
        String obstacle = by(point);
        if (obstacle != null) {
            problems.warn(place, what + " inside the obstacle " + obstacle, "no wire can reach it");
        }
    }
}
