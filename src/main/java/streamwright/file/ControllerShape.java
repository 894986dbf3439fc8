package streamwright.file;

import streamwright.yard.ControllerModel;

/** A file of a controller model. */
final class ControllerShape extends Struct<ControllerModel> {
    static final int MOST_STREAMS = 64;

    private final Field<String> controller = required("controller", Words.ID, "name of the model");
    private final Field<Integer> jacks = required("jacks", Whole.of(1, 1000), "connectors for cables");
    private final Field<Integer> streams = required("streams", Whole.of(1, MOST_STREAMS), "streams per jack");
    private final Field<Integer> boardsPerCable =
            required("boardsPerCable", Whole.of(1, 100_000), "most boards on one cable");
    private final Field<Integer> streamMost =
            required("streamMost", Whole.of(1, Integer.MAX_VALUE), "pixels per stream whatever the frame rate");
    private final Field<Integer> channelMost =
            required("channelMost", Whole.of(1, Integer.MAX_VALUE), "highest channel");
    private final Field<Integer> universeSlots =
            required("universeSlots", Whole.of(1, 512), "channels to a universe (512 is full: ANSI E1.11)");

    ControllerShape() {
        super("a controller model");
    }

    @Override
    protected ControllerModel build(Values values) {
        return new ControllerModel(
                values.get(controller),
                values.get(jacks),
                values.get(streams),
                values.get(boardsPerCable),
                values.get(streamMost),
                values.get(channelMost),
                values.get(universeSlots));
    }
}
