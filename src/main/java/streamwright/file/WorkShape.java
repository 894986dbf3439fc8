package streamwright.file;

import streamwright.yard.Work;

/** Minutes of work. */
final class WorkShape extends Struct<Work> {
    private static final Work USUAL = Work.DEFAULTS;

    private final Field<Double> setting = minutes("setting", USUAL.setting(), "an ID, start pixel or window set anew");
    private final Field<Double> replug = minutes("replug", USUAL.replug(), "a string to another port of its board");
    private final Field<Double> lead = minutes("lead", USUAL.lead(), "a string to another board or behind another");
    private final Field<Double> hop = minutes("hop", USUAL.hop(), "a stretch of trunk laid or relaid");
    private final Field<Double> board = minutes("board", USUAL.board(), "a board hung, moved or taken down");
    private final Field<Double> injection = minutes("injection", USUAL.injection(), "an injection");

    WorkShape() {
        super("minutes of work");
    }

    private Field<Double> minutes(String name, double usual, String meaning) {
        return optional(name, Numeral.fromZero(), usual, meaning);
    }

    @Override
    protected Work build(Values values) {
        return new Work(
                values.get(setting),
                values.get(replug),
                values.get(lead),
                values.get(hop),
                values.get(board),
                values.get(injection));
    }
}
