package streamwright.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import streamwright.plan.Outputs;
import streamwright.plan.PanelUse;
import streamwright.plan.Rule;
import streamwright.yard.BoardModel;
import streamwright.yard.PixelKind;

/** Where things begin on a stream: in order on their port, and apart unless they show one picture. */
final class Positions {
    private final Survey survey;
    private final Faults faults;

    private Positions(Survey survey, Faults faults) {
        this.survey = survey;
        this.faults = faults;
    }

    static void audit(Survey survey, Faults faults) {
        Positions rules = new Positions(survey, faults);
        for (SeenBoard board : survey.boards) {
            board.ports().forEach(port -> rules.port(board, port));
            rules.outputs(board);
            for (PanelUse panel : board.board().panels()) {
                for (PanelUse.Part part : panel.parts()) {
                    rules.start(board, panel.prop() + " on stream " + part.stream(), part.startPixel());
                }
            }
        }
        survey.streams.forEach(rules::overlaps);
    }

    private void start(SeenBoard board, String about, int startPixel) {
        BoardModel model = board.model();
        if (startPixel < 1) {
            faults.add(
                    Rule.START_PIXEL,
                    about,
                    startPixel,
                    1,
                    "starts at pixel " + startPixel + ", before the first of the stream");
        } else if (startPixel > 1 && model != null && !model.addressed()) {
            faults.add(
                    Rule.START_PIXEL,
                    about,
                    startPixel,
                    1,
                    "starts at pixel " + startPixel + ", but a board without address starts at 1");
        }
    }

    private void port(SeenBoard board, SeenPort port) {
        start(board, port.label(), port.use().startPixel());
        long next = port.use().startPixel();
        for (SeenString on : port.strings()) {
            long first = next + on.use().nulls();
            if (on.use().firstPixel() != first) {
                String text = "its first lit pixel is " + Say.other(on.use().firstPixel(), first, "")
                        + ": right behind what comes before it on " + port.label();
                faults.add(Rule.START_PIXEL, on.label(), on.use().firstPixel(), first, text);
            }
            next = on.last() + 1;
        }
    }

    private void outputs(SeenBoard board) {
        Outputs outputs = board.board().outputs();
        BoardModel model = board.model();
        if (outputs == null) {
            return;
        }
        String about = board.label() + " outputs";
        start(board, about, outputs.startPixel());
        SeenStream stream = survey.stream(board.jack(), outputs.stream());
        PixelKind kind = stream == null ? null : stream.kind();
        if (model == null || kind == null) {
            return;
        }
        double whole = Math.ceil(model.outputs() / (double) kind.channels());
        if (outputs.pixels() != whole) {
            String text = "take " + Say.other(outputs.pixels(), whole, "pixels") + " for "
                    + Say.count(model.outputs(), "channel", "channels");
            faults.add(Rule.START_PIXEL, about, outputs.pixels(), whole, text);
        }
    }

    /** Sorted by where they begin, so that only what reaches farthest so far can be run into. */
    private void overlaps(SeenStream stream) {
        List<Segment> sorted = new ArrayList<>(stream.segments());
        sorted.sort(Comparator.comparingLong(Segment::start).thenComparingLong(Segment::last));
        Segment reaching = null;
        for (Segment next : sorted) {
            if (reaching != null && next.start() <= reaching.last() && !shared(reaching, next)) {
                overlap(stream, reaching, next);
            }
            if (reaching == null || next.last() > reaching.last()) {
                reaching = next;
            }
        }
    }

    private static boolean shared(Segment a, Segment b) {
        return a.picture().equals(b.picture()) && a.start() == b.start() && a.lit() == b.lit() && a.last() == b.last();
    }

    private void overlap(SeenStream stream, Segment before, Segment next) {
        if (next.picture().equals(before.picture())) {
            long nulls = next.lit() - next.start();
            long nullsBefore = before.lit() - before.start();
            String text = "shares pixels of " + stream.label() + " with " + before.about()
                    + ", but not wholly: it is lit from pixel " + next.lit() + " on, behind "
                    + Say.count(nulls, "null", "nulls") + ", the other from " + before.lit() + " on, behind "
                    + Say.count(nullsBefore, "null", "nulls");
            boolean moved = next.lit() != before.lit();
            faults.add(
                    Rule.COPY_PICTURE,
                    next.about(),
                    moved ? next.lit() : nulls,
                    moved ? before.lit() : nullsBefore,
                    text);
            return;
        }
        String text = "starts at pixel " + next.start() + " of " + stream.label() + ", where " + before.about()
                + " still takes pixels " + before.start() + " to " + before.last();
        faults.add(Rule.START_PIXEL, next.about(), next.start(), before.last() + 1, text);
    }
}
