package streamwright.file;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import streamwright.yard.Point;

/** A point: ground position, and height where it is not 0. */
record PointShape() implements Shape<Point> {
    static final PointShape POINT = new PointShape();
    static final Numeral COORDINATE = new Numeral(-1e6, false, 1e6);

    @Override
    public @Nullable Point read(Place place, Problems problems) {
        if (!(place.node() instanceof Node.Items items)
                || items.nodes().size() < 2
                || items.nodes().size() > 3) {
            problems.add(place.wrong(wanted()));
            return null;
        }
        List<Double> numbers = Items.of(COORDINATE, 2, "numbers").read(place, problems);
        if (numbers == null || !Items.whole(place, numbers)) {
            return null;
        }
        return new Point(numbers.get(0), numbers.get(1), numbers.size() == 3 ? numbers.get(2) : 0);
    }

    @Override
    public String wanted() {
        return "a point [x, y] or [x, y, z]";
    }

    @Override
    public Map<String, Object> schema() {
        Map<String, Object> schema = Items.of(COORDINATE, 2, "numbers").schema();
        schema.put("maxItems", 3);
        return schema;
    }
}
