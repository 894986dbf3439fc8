package streamwright.file;

import streamwright.yard.Point;

/** One string, or several equal ones. */
final class StringShape extends Struct<StringRun> {
    private final Field<Integer> count;
    private final Field<Integer> pixels = required("pixels", StringRun.PIXELS, "pixels of a string");
    private final Field<Point> feed = required("feed", PointShape.POINT, "where the data goes in");
    private final Field<Point> tail = optional("tail", PointShape.POINT, "the far end; default the feed");

    private StringShape(boolean equal) {
        super(equal ? "equal strings" : "a string");
        count = equal
                ? required("count", StringRun.COUNT, "how many equal strings")
                : new Field<>("count", StringRun.COUNT, false, 1, "");
    }

    static StringShape one() {
        return new StringShape(false);
    }

    static StringShape equal() {
        return new StringShape(true);
    }

    @Override
    protected StringRun build(Values values) {
        return new StringRun(values.get(count), values.get(pixels), values.get(feed), values.find(tail));
    }
}
