package streamwright.report.locate;

import java.util.ArrayList;
import java.util.List;
import streamwright.plan.Outputs;
import streamwright.plan.PanelUse;
import streamwright.report.walk.BoardStop;
import streamwright.report.walk.CableWalk;
import streamwright.report.walk.PortStop;
import streamwright.report.walk.StringStop;

/** Where one pixel of a stream comes out along its cable. */
final class Showing {
    private final CableWalk cable;
    private final int stream;
    private final int pixel;
    private final int channels;
    private final List<Shown> all = new ArrayList<>();

    /** @param channels of one pixel of the stream */
    Showing(CableWalk cable, int stream, int pixel, int channels) {
        this.cable = cable;
        this.stream = stream;
        this.pixel = pixel;
        this.channels = channels;
        for (BoardStop board : cable.boards()) {
            for (PortStop port : board.ports()) {
                if (port.use().stream() == stream) {
                    port.strings().forEach(each -> string(board, port, each));
                }
            }
            Outputs outputs = board.board().outputs();
            if (outputs != null && outputs.stream() == stream) {
                outputs(board, outputs);
            }
            board.board().panels().forEach(panel -> panel(board, panel));
        }
    }

    List<Shown> all() {
        return all;
    }

    private void string(BoardStop board, PortStop port, StringStop string) {
        int first = string.use().firstPixel();
        int nulls = string.use().nulls();
        if (pixel < first - nulls || pixel > string.lastPixel()) {
            return;
        }
        boolean lit = pixel >= first;
        add(
                board,
                port.use().port(),
                pixel - port.use().startPixel() + 1,
                lit ? "pixel" : "null",
                string.use().prop(),
                string.use().string(),
                string.label(),
                lit ? pixel - first + 1 : pixel - (first - nulls) + 1,
                lit ? Misset.symptoms(cable, board, port, string, pixel) : List.of());
    }

    private void outputs(BoardStop board, Outputs outputs) {
        int offset = pixel - outputs.startPixel();
        if (offset < 0 || offset >= outputs.pixels()) {
            return;
        }
        for (Outputs.Line line : outputs.lines()) {
            if ((line.channel() - outputs.channel()) / channels == offset) {
                String label = line.prop() + " " + line.number();
                add(
                        board,
                        line.output(),
                        offset + 1,
                        "output",
                        line.prop(),
                        line.number(),
                        label,
                        line.output(),
                        List.of());
            }
        }
    }

    private void panel(BoardStop board, PanelUse panel) {
        int before = 0;
        for (PanelUse.Part part : panel.parts()) {
            int offset = pixel - part.startPixel();
            if (part.stream() == stream && offset >= 0 && offset < part.pixels()) {
                add(
                        board,
                        panel.panel(),
                        offset + 1,
                        "panel",
                        panel.prop(),
                        panel.panel(),
                        panel.prop(),
                        before + offset + 1,
                        List.of());
            }
            before += part.pixels();
        }
    }

    private void add(
            BoardStop board,
            int port,
            int portPixel,
            String as,
            String prop,
            int string,
            String label,
            int stringPixel,
            List<Symptom> symptoms) {
        all.add(new Shown(
                board.id(), board.board().boardId(), port, portPixel, as, prop, string, label, stringPixel, symptoms));
    }
}
