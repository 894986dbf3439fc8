package streamwright.file;

import java.util.List;
import streamwright.plan.Supply;
import streamwright.yard.Point;

/** The power supply of a place of a plan. */
final class SupplyShape extends Struct<Supply> {
    private final Field<Point> at = required("at", PointShape.POINT, "the place");
    private final Field<String> spot = optional("spot", Words.ID, "where the yard names spots");
    private final Field<Double> volts = required("volts", Numbers.REAL, "of its pixels");
    private final Field<Double> amps = required("amps", Numbers.REAL, "of all its boards");
    private final Field<Integer> watts = required("watts", Numbers.WHOLE, "at the fuse load, rounded up");
    private final Field<List<String>> boards = required("boards", Items.of(Words.ID, 0, "board ids"), "its boards");

    SupplyShape() {
        super("a supply");
    }

    @Override
    protected Supply build(Values values) {
        return new Supply(
                values.get(at),
                values.find(spot),
                values.get(volts),
                values.get(amps),
                values.get(watts),
                values.get(boards));
    }
}
