package streamwright.file;

import streamwright.yard.Panel;

/** The size of a panel. */
final class PanelShape extends Struct<Panel> {
    private final Field<Integer> columns = required("columns", StringRun.PIXELS, "pixels in a row");
    private final Field<Integer> rows = required("rows", StringRun.PIXELS, "rows of pixels");

    PanelShape() {
        super("a panel");
    }

    @Override
    protected void check(Values values, Problems problems) {
        Integer across = values.find(columns);
        Integer down = values.find(rows);
        long pixels = across == null || down == null ? 0 : (long) across * down;
        if (pixels > StringRun.MOST_PIXELS) {
            problems.add(values.place(), pixels + " pixels", "must be at most " + StringRun.MOST_PIXELS);
        }
    }

    @Override
    protected Panel build(Values values) {
        return new Panel(values.get(columns), values.get(rows));
    }
}
