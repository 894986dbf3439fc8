package streamwright.file;

import streamwright.yard.BoardCount;

/** Limits on the number of boards in all. */
final class BoardCountShape extends Struct<BoardCount> {
    private final Field<Integer> least =
            optional("least", Whole.of(0, Integer.MAX_VALUE), BoardCount.FREE.least(), "fewest boards in all");
    private final Field<Integer> most =
            optional("most", Whole.of(0, Integer.MAX_VALUE), "most boards in all; default no limit");

    BoardCountShape() {
        super("limits on the number of boards");
    }

    @Override
    protected void check(Values values, Problems problems) {
        Integer from = values.find(least);
        Integer to = values.find(most);
        if (from != null && to != null && from > to) {
            problems.add(values.place(most).wrong("at least " + from + ", the fewest"));
        }
    }

    @Override
    protected BoardCount build(Values values) {
        return new BoardCount(values.get(least), values.get(most, BoardCount.FREE.most()));
    }
}
