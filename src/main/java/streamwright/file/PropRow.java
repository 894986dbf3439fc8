package streamwright.file;

import java.util.List;
import streamwright.yard.Follow;
import streamwright.yard.PixelKind;
import streamwright.yard.Point;

/** A row of a prop list. What it does not say of the tail is as at the feed. */
final class PropRow extends Referring<PropDraft> {
    private final Field<String> id = required("id", Words.ID, "its id");
    private final Field<Integer> pixels = required("pixels", StringRun.PIXELS, "pixels of a string");
    private final Field<Double> x = required("x", PointShape.COORDINATE, "of the feed");
    private final Field<Double> y = required("y", PointShape.COORDINATE, "of the feed");
    private final Field<Double> z = optional("z", PointShape.COORDINATE, 0.0, "of the feed");
    private final Field<Double> tailX = optional("tail_x", PointShape.COORDINATE, "of the far end");
    private final Field<Double> tailY = optional("tail_y", PointShape.COORDINATE, "of the far end");
    private final Field<Double> tailZ = optional("tail_z", PointShape.COORDINATE, "of the far end");
    private final Field<Integer> strings = optional("strings", StringRun.COUNT, 1, "how many equal strings");
    private final Field<PixelKind> pixel =
            optional("pixel", new Named<>("a pixel kind", around.library().pixels(), around.whole()), "its pixel kind");
    private final Field<Follow> follow =
            optional("follow", Choice.of(Follow.class), Follow.PROP, "which other strings may share a string's port");
    private final Field<String> copyOf = optional("copy_of", Words.ID, "the prop whose picture it repeats");
    private final Field<Integer> channel =
            optional("channel", Whole.of(1, Integer.MAX_VALUE), "with kept channels: of its first string");

    PropRow(Around around) {
        super("a row", around);
    }

    @Override
    protected PropDraft build(Values values) {
        Point feed = new Point(values.get(x), values.get(y), values.get(z));
        boolean tail = values.given(tailX) || values.given(tailY) || values.given(tailZ);
        Point end = new Point(values.get(tailX, feed.x()), values.get(tailY, feed.y()), values.get(tailZ, feed.z()));
        PixelKind said = values.find(pixel);
        return new PropDraft(
                values.place(),
                values.get(id),
                said == null && !values.given(copyOf) ? around.usual() : said,
                values.get(follow),
                values.find(copyOf),
                values.place(copyOf),
                values.find(channel),
                values.place(channel),
                null,
                values.place(),
                List.of(new StringRun(values.get(strings), values.get(pixels), feed, tail ? end : null)),
                0,
                null,
                null);
    }
}
