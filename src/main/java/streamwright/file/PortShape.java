package streamwright.file;

import java.util.List;
import streamwright.plan.Injection;
import streamwright.plan.PortUse;
import streamwright.plan.StringUse;

/** A port of a board of a plan. */
final class PortShape extends Struct<PortUse> {
    private final Field<Integer> port = required("port", Numbers.WHOLE, "its number on the board, from 1");
    private final Field<Integer> stream = required("stream", Numbers.WHOLE, "the stream that it hears");
    private final Field<Integer> startPixel =
            required("startPixel", Numbers.WHOLE, "where its data begins on the stream, nulls included");
    private final Field<Double> amps = required("amps", Numbers.REAL, "through its fuse at the show's brightness");
    private final Field<List<StringUse>> strings =
            required("strings", Items.of(new Use(), 0, "strings"), "in the order of the data");
    private final Field<List<Injection>> injections =
            optional("injections", Items.of(new Fed(), 0, "injections"), List.of(), "power brought to its strings");

    PortShape() {
        super("a port");
    }

    @Override
    protected PortUse build(Values values) {
        return new PortUse(
                values.get(port),
                values.get(stream),
                values.get(startPixel),
                values.get(amps),
                values.get(strings),
                values.get(injections));
    }

    /** A string on a port. */
    private static final class Use extends Struct<StringUse> {
        private final Field<String> prop = required("prop", Words.ID, "its prop");
        private final Field<Integer> string = required("string", Numbers.WHOLE, "its number within the prop, from 1");
        private final Field<Integer> nulls = required("nulls", Numbers.WHOLE, "null pixels in the wire before it");
        private final Field<Integer> firstPixel =
                required("firstPixel", Numbers.WHOLE, "position of its first lit pixel on the stream");
        private final Field<Integer> pixels = required("pixels", Numbers.WHOLE, "its pixels");
        private final Field<Long> channel = required("channel", Numbers.LONG, "of its first lit pixel");
        private final Field<Double> length = required("length", Numbers.REAL, "of its lead or jumper");

        Use() {
            super("a string");
        }

        @Override
        protected StringUse build(Values values) {
            return new StringUse(
                    values.get(prop),
                    values.get(string),
                    values.get(nulls),
                    values.get(firstPixel),
                    values.get(pixels),
                    values.get(channel),
                    values.get(length));
        }
    }

    /** An injection on a port. */
    private static final class Fed extends Struct<Injection> {
        private final Field<String> prop = required("prop", Words.ID, "the prop");
        private final Field<Integer> string = required("string", Numbers.WHOLE, "the string's number within the prop");
        private final Field<Integer> pixel =
                required("pixel", Numbers.WHOLE, "the pixel of the string where the fed stretch begins, from 1");

        Fed() {
            super("an injection");
        }

        @Override
        protected Injection build(Values values) {
            return new Injection(values.get(prop), values.get(string), values.get(pixel));
        }
    }
}
