package streamwright.file;

import streamwright.plan.Totals;

/** Sums over a plan. */
final class TotalsShape extends Struct<Totals> {
    private final Field<Integer> boards = required("boards", Numbers.WHOLE, "number of boards");
    private final Field<Integer> cables = required("cables", Numbers.WHOLE, "number of cables");
    private final Field<Integer> strings = required("strings", Numbers.WHOLE, "number of strings");
    private final Field<Long> pixels = required("pixels", Numbers.LONG, "lit pixels of all strings, copies included");
    private final Field<Integer> nulls = required("nulls", Numbers.WHOLE, "null pixels");
    private final Field<Double> trunk = required("trunk", Numbers.REAL, "length of all hops");
    private final Field<Double> lead = required("lead", Numbers.REAL, "length of all leads");
    private final Field<Double> jumper = required("jumper", Numbers.REAL, "length of all jumpers");

    TotalsShape() {
        super("totals");
    }

    @Override
    protected Totals build(Values values) {
        return new Totals(
                values.get(boards),
                values.get(cables),
                values.get(strings),
                values.get(pixels),
                values.get(nulls),
                values.get(trunk),
                values.get(lead),
                values.get(jumper));
    }
}
