package streamwright.file;

import java.util.List;
import java.util.Map;
import streamwright.yard.Address;

/** Switches or a rotary switch. */
final class AddressShape extends Struct<Address> {
    /** IDs up to here. */
    private static final int MOST = 1_000_000;

    private static final int MOST_SWITCHES = 20;

    private final Field<Integer> least = required("least", Whole.of(0, MOST), "lowest ID");
    private final Field<Integer> most = required("most", Whole.of(0, MOST), "highest ID");
    private final Field<Integer> switches =
            optional("switches", Whole.of(1, MOST_SWITCHES), "binary switches; switch k stands for 2^(k-1)");
    private final Field<String> style =
            optional("style", Choice.of("rotary"), "rotary: one switch whose position is the ID");

    AddressShape() {
        super("an address");
    }

    @Override
    protected void check(Values values, Problems problems) {
        if (values.given(switches) == values.given(style)) {
            String found = values.given(style) ? "both switches and style" : "neither switches nor style";
            problems.add(values.place(), found, "must have one of them");
        }
        Integer from = values.find(least);
        Integer to = values.find(most);
        Integer count = values.find(switches);
        if (from != null && to != null && from > to) {
            problems.add(values.place(most).wrong("at least " + from + ", the lowest ID"));
        }
        if (to != null && count != null && to > (1 << count) - 1) {
            String wanted = "at most " + ((1 << count) - 1) + ", which is all that " + count + " switches can say";
            problems.add(values.place(most).wrong(wanted));
        }
    }

    @Override
    protected Map<String, Object> schemaRules() {
        return Map.of("oneOf", given(List.of(List.of(switches), List.of(style))));
    }

    @Override
    protected Address build(Values values) {
        int from = values.get(least);
        int to = values.get(most);
        Integer count = values.find(switches);
        return count == null ? new Address.Rotary(from, to) : new Address.Switches(from, to, count);
    }
}
