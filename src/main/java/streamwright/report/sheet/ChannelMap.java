package streamwright.report.sheet;

import java.util.ArrayList;
import java.util.List;
import streamwright.physics.Channels;
import streamwright.plan.Outputs;
import streamwright.plan.PanelUse;
import streamwright.report.walk.BoardStop;
import streamwright.report.walk.StringStop;
import streamwright.report.walk.Walk;
import streamwright.yard.Controller;

/** One row a string, output or part of a panel: where it lies on its stream and in the controller's channels. */
final class ChannelMap {
    private static final List<String> COLUMNS = List.of(
            "prop",
            "string",
            "controller",
            "jack",
            "stream",
            "start pixel",
            "pixels",
            "start channel",
            "end channel",
            "universe",
            "slot",
            "end universe",
            "end slot",
            "board",
            "port",
            "start pixel of port",
            "nulls",
            "kind");

    private ChannelMap() {}

    static Sheet of(Walk walk) {
        List<List<Object>> rows = new ArrayList<>();
        for (BoardStop board : walk.boards()) {
            board.ports()
                    .forEach(port -> port.strings()
                            .forEach(each ->
                                    rows.add(string(each, board, port.use().startPixel()))));
            Outputs outputs = board.board().outputs();
            if (outputs != null) {
                outputs.lines().forEach(line -> rows.add(output(board, outputs, line)));
            }
            for (int p = 0; p < board.panels().size(); p++) {
                PanelUse panel = board.board().panels().get(p);
                int channels = board.panels().get(p).channels();
                panel.parts().forEach(part -> rows.add(part(board, panel, part, channels)));
            }
        }
        return new Sheet("channels", COLUMNS, rows)
                .cautioned(walk.boards().stream().anyMatch(BoardStop::mains));
    }

    private static List<Object> string(StringStop string, BoardStop board, int portStart) {
        var use = string.use();
        return row(
                board,
                use.prop(),
                use.string(),
                string.stream(),
                use.firstPixel(),
                use.pixels(),
                use.channel(),
                string.lastChannel(),
                string.port(),
                portStart,
                use.nulls(),
                string.kind().name());
    }

    private static List<Object> output(BoardStop board, Outputs outputs, Outputs.Line line) {
        return row(
                board,
                line.prop(),
                line.number(),
                outputs.stream(),
                "",
                "",
                line.channel(),
                line.channel(),
                "output " + line.output(),
                outputs.startPixel(),
                0,
                "mains output");
    }

    private static List<Object> part(BoardStop board, PanelUse panel, PanelUse.Part part, int channels) {
        return row(
                board,
                panel.prop(),
                panel.panel(),
                part.stream(),
                part.startPixel(),
                part.pixels(),
                part.channel(),
                part.channel() + (long) part.pixels() * channels - 1,
                "panel " + panel.panel(),
                part.startPixel(),
                0,
                "panel");
    }

    private static List<Object> row(
            BoardStop board,
            String prop,
            int number,
            int stream,
            Object first,
            Object pixels,
            long channel,
            long last,
            Object port,
            int portStart,
            int nulls,
            String kind) {
        Controller controller = board.controller();
        return List.of(
                prop,
                number,
                controller.id(),
                board.board().jack(),
                stream,
                first,
                pixels,
                channel,
                last,
                Channels.universe(controller, channel),
                Channels.slot(controller, channel),
                Channels.universe(controller, last),
                Channels.slot(controller, last),
                board.id(),
                port,
                portStart,
                nulls,
                kind);
    }
}
