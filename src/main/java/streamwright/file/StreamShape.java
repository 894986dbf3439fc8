package streamwright.file;

import streamwright.plan.StreamUse;

/** A stream of a cable of a plan. */
final class StreamShape extends Struct<StreamUse> {
    private final Field<Integer> stream = required("stream", Numbers.WHOLE, "its number within the jack, from 1");
    private final Field<String> pixel = required("pixel", Words.ID, "the kind of its pixels");
    private final Field<Long> startChannel = required("startChannel", Numbers.LONG, "channel of its first pixel");
    private final Field<Integer> pixels = required("pixels", Numbers.WHOLE, "position of its last used pixel");
    private final Field<Integer> limit = required("limit", Numbers.WHOLE, "pixels that it may carry");
    private final Field<Integer> universe = required("universe", Numbers.WHOLE, "of its start channel");
    private final Field<Integer> slot = required("slot", Numbers.WHOLE, "of its start channel");

    StreamShape() {
        super("a stream");
    }

    @Override
    protected StreamUse build(Values values) {
        return new StreamUse(
                values.get(stream),
                values.get(pixel),
                values.get(startChannel),
                values.get(pixels),
                values.get(limit),
                values.get(universe),
                values.get(slot));
    }
}
