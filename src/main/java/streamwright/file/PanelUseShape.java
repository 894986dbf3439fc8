package streamwright.file;

import java.util.List;
import streamwright.plan.PanelUse;

/** A panel on a board of a plan. */
final class PanelUseShape extends Struct<PanelUse> {
    private final Field<String> prop = required("prop", Words.ID, "its prop");
    private final Field<Integer> panel = required("panel", Numbers.WHOLE, "its number within the prop, from 1");
    private final Field<List<PanelUse.Part>> parts =
            required("parts", Items.of(new Part(), 0, "parts"), "its pixels in row order, cut over the streams");

    PanelUseShape() {
        super("a panel");
    }

    @Override
    protected PanelUse build(Values values) {
        return new PanelUse(values.get(prop), values.get(panel), values.get(parts));
    }

    /** One part on one stream. */
    private static final class Part extends Struct<PanelUse.Part> {
        private final Field<Integer> stream = required("stream", Numbers.WHOLE, "its stream");
        private final Field<Integer> startPixel = required("startPixel", Numbers.WHOLE, "where it begins there");
        private final Field<Integer> pixels = required("pixels", Numbers.WHOLE, "its pixels");
        private final Field<Long> channel = required("channel", Numbers.LONG, "of its first pixel");

        Part() {
            super("a part");
        }

        @Override
        protected PanelUse.Part build(Values values) {
            return new PanelUse.Part(
                    values.get(stream), values.get(startPixel), values.get(pixels), values.get(channel));
        }
    }
}
