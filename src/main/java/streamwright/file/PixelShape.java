package streamwright.file;

import streamwright.yard.PixelKind;

/** A file of a pixel kind. */
final class PixelShape extends Struct<PixelKind> {
    private final Field<String> pixel = required("pixel", Words.ID, "name of the pixel kind");
    private final Field<Integer> channels = required("channels", Whole.of(1, 1000), "show channels a pixel");
    private final Field<Integer> bits = required("bits", Whole.of(1, 100_000), "data bits a pixel");
    private final Field<Double> bitTime = required("bitTime", Numeral.aboveZero(), "microseconds a bit");
    private final Field<Double> reset = required("reset", Numeral.fromZero(), "microseconds of quiet that end a frame");
    private final Field<Double> prefix =
            optional("prefix", Numeral.fromZero(), 0.0, "microseconds of settings before the pixels of each frame");
    private final Field<Double> volts = required("volts", Numeral.aboveZero(), "nominal supply");
    private final Field<Double> voltsLow = required("voltsLow", Numeral.fromZero(), "lowest supply of a pixel");
    private final Field<Double> amps = required("amps", Numeral.fromZero(), "of one pixel, all channels full");
    private final Field<Double> pitch = required("pitch", Numeral.fromZero(), "metres of string per pixel");
    private final Field<Double> wire = required("wire", new Wire("of one of the string's supply wires"), "of strings");
    private final Field<String> source =
            optional("source", Words.LINE, "no source given", "where these figures come from");

    PixelShape() {
        super("a pixel kind");
    }

    @Override
    protected void check(Values values, Problems problems) {
        Double nominal = values.find(volts);
        Double low = values.find(voltsLow);
        if (nominal != null && low != null && low > nominal) {
            problems.add(values.place(voltsLow).wrong("at most " + Numeral.text(nominal) + ", the volts"));
        }
    }

    @Override
    protected PixelKind build(Values values) {
        return new PixelKind(
                values.get(pixel),
                values.get(channels),
                values.get(bits),
                values.get(bitTime),
                values.get(reset),
                values.get(prefix),
                values.get(volts),
                values.get(voltsLow),
                values.get(amps),
                values.get(pitch),
                values.get(wire),
                values.get(source));
    }
}
