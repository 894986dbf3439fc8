package streamwright.file;

import java.util.List;
import streamwright.plan.Outputs;

/** The outputs of a board of a plan. */
final class OutputsShape extends Struct<Outputs> {
    private final Field<Integer> stream = required("stream", Numbers.WHOLE, "the stream of its block");
    private final Field<Integer> startPixel = required("startPixel", Numbers.WHOLE, "where the block begins");
    private final Field<Integer> pixels = required("pixels", Numbers.WHOLE, "whole pixels that it takes");
    private final Field<Long> channel = required("channel", Numbers.LONG, "its first channel");
    private final Field<List<Outputs.Line>> lines =
            required("lines", Items.of(new Line(), 0, "lines"), "one an output that is used");

    OutputsShape() {
        super("outputs");
    }

    @Override
    protected Outputs build(Values values) {
        return new Outputs(
                values.get(stream), values.get(startPixel), values.get(pixels), values.get(channel), values.get(lines));
    }

    /** One output. */
    private static final class Line extends Struct<Outputs.Line> {
        private final Field<Integer> output = required("output", Numbers.WHOLE, "its number on the board, from 1");
        private final Field<String> prop = required("prop", Words.ID, "the prop that it switches");
        private final Field<Integer> number = required("number", Numbers.WHOLE, "which of the prop's outputs, from 1");
        private final Field<Long> channel = required("channel", Numbers.LONG, "its channel");

        Line() {
            super("a line");
        }

        @Override
        protected Outputs.Line build(Values values) {
            return new Outputs.Line(values.get(output), values.get(prop), values.get(number), values.get(channel));
        }
    }
}
