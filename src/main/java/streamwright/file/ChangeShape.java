package streamwright.file;

import java.util.Map;
import streamwright.plan.Change;

/** A step of a repair. */
final class ChangeShape extends Struct<Change> {
    private static final Choice<String> KIND = Choice.of("setting", "replug", "lead", "hop", "board", "injection");

    private final Field<String> kind = required("kind", KIND, "of work");
    private final Field<Map<String, Object>> what = required("what", new Loose(), "the thing that changes");
    private final Field<Map<String, Object>> from = optional("from", new OrNothing<>(new Loose()), "before");
    private final Field<Map<String, Object>> to = optional("to", new OrNothing<>(new Loose()), "after");
    private final Field<Double> minutes = required("minutes", Numbers.REAL, "of work");
    private final Field<String> text = required("text", Words.LINE, "one sentence");

    ChangeShape() {
        super("a change");
    }

    @Override
    protected Change build(Values values) {
        return new Change(
                values.get(kind),
                values.get(what),
                values.find(from),
                values.find(to),
                values.get(minutes),
                values.get(text));
    }
}
