package streamwright.file;

import java.util.List;
import streamwright.plan.Cable;
import streamwright.plan.StreamUse;

/** A cable of a plan. */
final class CableShape extends Struct<Cable> {
    private final Field<String> controller = required("controller", Words.ID, "the controller that it leaves");
    private final Field<Integer> jack = required("jack", Numbers.WHOLE, "the jack that it leaves, from 1");
    private final Field<Double> length = required("length", Numbers.REAL, "sum of its hops");
    private final Field<List<String>> boards =
            required("boards", Items.of(Words.ID, 0, "board ids"), "its boards in cable order");
    private final Field<List<Double>> hops =
            required("hops", Items.of(Numbers.REAL, 0, "lengths"), "to each board from the one before or the jack");
    private final Field<List<StreamUse>> streams =
            required("streams", Items.of(new StreamShape(), 0, "streams"), "those that carry something");

    CableShape() {
        super("a cable");
    }

    @Override
    protected Cable build(Values values) {
        return new Cable(
                values.get(controller),
                values.get(jack),
                values.get(length),
                values.get(boards),
                values.get(hops),
                values.get(streams));
    }
}
