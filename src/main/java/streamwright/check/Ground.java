package streamwright.check;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.algorithm.Area;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.geom.util.GeometryFixer;
import org.locationtech.jts.index.strtree.STRtree;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import streamwright.yard.Obstacle;
import streamwright.yard.Point;

/**
 * Obstacles as geometry. Each is drawn in by a hair, so that a wire along an edge, or along an edge that two obstacles
 * share, or to a feed that rounding put behind an edge, stays outside; lengths still bend at the corners as given.
 */
final class Ground {
    /** In the yard's units: above the rounding of coordinates to 1,000,000, below any length that counts. */
    private static final double HAIR = 1e-6;

    private static final GeometryFactory PLANE = new GeometryFactory();
    private static final BufferParameters SHARP = new BufferParameters(
            BufferParameters.DEFAULT_QUADRANT_SEGMENTS,
            BufferParameters.CAP_FLAT,
            BufferParameters.JOIN_MITRE,
            BufferParameters.DEFAULT_MITRE_LIMIT);

    private record Solid(String id, PreparedGeometry inside) {}

    private final STRtree solids = new STRtree();
    private final List<Coordinate> corners = new ArrayList<>();

    Ground(List<Obstacle> obstacles) {
        Set<Coordinate> convex = new LinkedHashSet<>();
        for (Obstacle obstacle : obstacles) {
            Geometry whole = whole(obstacle.ring());
            Geometry inside = BufferOp.bufferOp(whole, -HAIR, SHARP);
            if (inside.isEmpty()) {
                continue;
            }
            solids.insert(
                    inside.getEnvelopeInternal(), new Solid(obstacle.id(), PreparedGeometryFactory.prepare(inside)));
            for (int i = 0; i < whole.getNumGeometries(); i++) {
                if (whole.getGeometryN(i) instanceof Polygon polygon) {
                    addConvex(polygon.getExteriorRing().getCoordinates(), convex);
                }
            }
        }
        solids.build();
        convex.stream().filter(corner -> inside(corner) == null).forEach(corners::add);
    }

    private static Geometry whole(List<Point> ring) {
        List<Coordinate> shell = new ArrayList<>();
        for (Point point : ring) {
            Coordinate next = new Coordinate(point.x(), point.y());
            if (shell.isEmpty() || !shell.get(shell.size() - 1).equals2D(next)) {
                shell.add(next);
            }
        }
        if (shell.size() > 1 && !shell.get(0).equals2D(shell.get(shell.size() - 1))) {
            shell.add(shell.get(0).copy());
        }
        if (shell.size() < 4) {
            return PLANE.createPolygon();
        }
        Polygon polygon = PLANE.createPolygon(shell.toArray(Coordinate[]::new));
        return polygon.isValid() ? polygon : GeometryFixer.fix(polygon);
    }

    private static void addConvex(Coordinate[] ring, Set<Coordinate> convex) {
        // signed area is positive for a clockwise ring
        int inwards = Area.ofRingSigned(ring) > 0 ? Orientation.CLOCKWISE : Orientation.COUNTERCLOCKWISE;
        int last = ring.length - 1;
        for (int i = 0; i < last; i++) {
            Coordinate before = ring[i == 0 ? last - 1 : i - 1];
            if (Orientation.index(before, ring[i], ring[i + 1]) == inwards) {
                convex.add(ring[i]);
            }
        }
    }

    /** Whether there is no obstacle at all. */
    boolean free() {
        return solids.isEmpty();
    }

    /** Corners around which a way may bend. */
    List<Coordinate> corners() {
        return List.copyOf(corners);
    }

    /** The id of the obstacle that holds a point, or null. */
    @Nullable
    String inside(Coordinate point) {
        for (Object found : solids.query(new Envelope(point))) {
            if (found instanceof Solid solid && solid.inside.intersects(PLANE.createPoint(point))) {
                return solid.id;
            }
        }
        return null;
    }

    /** Whether a straight wire between two points enters no obstacle. */
    boolean clear(Coordinate from, Coordinate to) {
        if (from.equals2D(to)) {
            return true;
        }
        for (Object found : solids.query(new Envelope(from, to))) {
            if (found instanceof Solid solid
                    && solid.inside.intersects(PLANE.createLineString(new Coordinate[] {from, to}))) {
                return false;
            }
        }
        return true;
    }
}
