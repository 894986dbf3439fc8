package streamwright.file;

/** A wire, read to its cross-section in mm2. */
final class Wire extends Struct<Double> {
    private final Field<Double> mm2;

    Wire(String meaning) {
        super("a wire");
        mm2 = required("mm2", Numeral.aboveZero(), "cross-section in mm2 " + meaning);
    }

    @Override
    protected Double build(Values values) {
        return values.get(mm2);
    }
}
