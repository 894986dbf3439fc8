package streamwright.report.sheet;

import java.util.ArrayList;
import java.util.List;
import streamwright.plan.Outputs;
import streamwright.plan.PanelUse;
import streamwright.report.walk.BoardStop;
import streamwright.report.walk.PortStop;
import streamwright.report.walk.StringStop;
import streamwright.yard.PixelKind;

/**
 * One thing to try when a board is put to work, and what is to be seen then.
 *
 * @param what port, output or panel with what hangs there
 * @param pixels that light
 * @param amps expected with all of them at the show's brightness; NaN where the plan does not know
 * @param looks what to send and to see
 */
public record Step(String what, int pixels, double amps, List<Look> looks) {
    public Step {
        looks = List.copyOf(looks);
    }

    /**
     * Channels to send at full, first and last inclusive, and what lights then.
     */
    public record Look(long first, long last, String see) {
        /** {@code channel 7}, or {@code channels 7-9}. */
        public String send() {
            return first == last ? "channel " + first : "channels " + first + "-" + last;
        }
    }

    /** All steps of a board after its switches are set, in the order of its sockets. */
    public static List<Step> of(BoardStop board) {
        List<Step> steps = new ArrayList<>();
        board.ports().forEach(port -> steps.add(of(port)));
        Outputs outputs = board.board().outputs();
        if (outputs != null) {
            outputs.lines().forEach(line -> steps.add(of(line)));
        }
        for (int p = 0; p < board.panels().size(); p++) {
            steps.add(of(board.board().panels().get(p), board.panels().get(p)));
        }
        return steps;
    }

    private static Step of(PortStop port) {
        StringStop first = port.first();
        StringStop last = port.last();
        Look begin = pixel(first.use().channel(), first.kind(), "the first pixel of " + first.label());
        Look end = pixel(last.channel(last.use().pixels()), last.kind(), "the last pixel of " + last.label());
        return new Step(
                "port " + port.use().port() + ": " + port.props(), port.lit(), port.ampsShowAll(), List.of(begin, end));
    }

    private static Step of(Outputs.Line line) {
        Look look = new Look(line.channel(), line.channel(), line.prop() + " " + line.number());
        return new Step(
                "output " + line.output() + ": " + line.prop() + " " + line.number(), 0, Double.NaN, List.of(look));
    }

    private static Step of(PanelUse panel, PixelKind kind) {
        PanelUse.Part first = panel.parts().get(0);
        PanelUse.Part last = panel.parts().get(panel.parts().size() - 1);
        int pixels = panel.parts().stream().mapToInt(PanelUse.Part::pixels).sum();
        Look begin = pixel(first.channel(), kind, "the first pixel of the first row");
        Look end = pixel(
                last.channel() + (long) (last.pixels() - 1) * kind.channels(), kind, "the last pixel of the last row");
        return new Step("panel " + panel.panel() + ": " + panel.prop(), pixels, Double.NaN, List.of(begin, end));
    }

    private static Look pixel(long channel, PixelKind kind, String see) {
        return new Look(channel, channel + kind.channels() - 1, see);
    }
}
