package streamwright.file;

import streamwright.yard.Point;
import streamwright.yard.Spot;

/** A place where boards may hang. */
final class SpotShape extends Struct<Spot> {
    private final Field<String> id = required("id", Words.ID, "its id");
    private final Field<Point> at = required("at", PointShape.POINT, "where it is");
    private final Field<Integer> most =
            optional("most", Whole.of(0, Integer.MAX_VALUE), "most boards; default no limit");
    private final Field<Double> price =
            optional("price", Numeral.fromZero(), 0.0, "of a box and supply there, once if used");
    private final Field<Double> ampsMost =
            optional("ampsMost", Numeral.fromZero(), "of all boards there; default no limit");

    SpotShape() {
        super("a spot");
    }

    @Override
    protected Spot build(Values values) {
        return new Spot(
                values.get(id),
                values.get(at),
                values.get(most, Integer.MAX_VALUE),
                values.get(price),
                values.get(ampsMost, Double.POSITIVE_INFINITY));
    }
}
