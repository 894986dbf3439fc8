package streamwright.file;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.valid.IsValidOp;
import org.locationtech.jts.operation.valid.TopologyValidationError;
import streamwright.yard.Obstacle;
import streamwright.yard.Point;

/** Ground that no wire may cross. */
final class ObstacleShape extends Struct<Obstacle> {
    private static final GeometryFactory GROUND = new GeometryFactory();

    private final Field<String> id = required("id", Words.ID, "its id");
    private final Field<List<Point>> ring = required(
            "ring", Items.of(PointShape.POINT, 3, "points"), "its corners in turn, the last joined to the first");

    ObstacleShape() {
        super("an obstacle");
    }

    @Override
    protected void check(Values values, Problems problems) {
        List<Point> points = values.find(ring);
        Place place = values.place(ring);
        if (points == null || !Items.whole(place, points)) {
            return;
        }
        List<Point> corners = corners(points);
        if (corners.size() < 3) {
            problems.add(place, "a ring of " + corners.size() + " different points", "must be at least 3");
            return;
        }
        TopologyValidationError error = new IsValidOp(polygon(corners)).getValidationError();
        if (error != null) {
            Coordinate at = error.getCoordinate();
            String found =
                    "a ring that crosses or touches itself at [" + Numeral.text(at.x) + ", " + Numeral.text(at.y) + "]";
            problems.add(place, found, "must enclose one piece of ground");
        }
    }

    /** Without neighbours at one place, and without the first point said again at the end. */
    private static List<Point> corners(List<Point> points) {
        List<Point> corners = new ArrayList<>();
        Point last = points.get(points.size() - 1);
        boolean closed = points.size() > 1 && same(points.get(0), last);
        for (Point point : closed ? points.subList(0, points.size() - 1) : points) {
            if (corners.isEmpty() || !same(corners.get(corners.size() - 1), point)) {
                corners.add(point);
            }
        }
        return corners;
    }

    private static boolean same(Point a, Point b) {
        return a.x() == b.x() && a.y() == b.y();
    }

    static Polygon polygon(List<Point> corners) {
        Coordinate[] shell = new Coordinate[corners.size() + 1];
        for (int i = 0; i < corners.size(); i++) {
            shell[i] = new Coordinate(corners.get(i).x(), corners.get(i).y());
        }
        shell[corners.size()] = shell[0].copy();
        return GROUND.createPolygon(shell);
    }

    @Override
    protected Obstacle build(Values values) {
        return new Obstacle(values.get(id), corners(values.get(ring)));
    }
}
