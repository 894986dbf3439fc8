package streamwright.check;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import streamwright.plan.Board;
import streamwright.plan.Cable;
import streamwright.plan.Outputs;
import streamwright.plan.PanelUse;
import streamwright.plan.Plan;
import streamwright.plan.PortUse;
import streamwright.plan.StreamUse;
import streamwright.plan.StringUse;
import streamwright.plan.Supply;
import streamwright.yard.Controller;

/** Writes the audit's own figures into a plan, and leaves its decisions alone. */
final class Restated {
    private final Survey survey;

    private Restated(Survey survey) {
        this.survey = survey;
    }

    static Plan of(Survey survey) {
        Restated own = new Restated(survey);
        Plan plan = survey.plan;
        Sums sums = Sums.of(survey);
        return new Plan(
                plan.format(),
                plan.yard(),
                plan.status(),
                sums.cost(),
                plan.bound(),
                sums.cost() > 0 ? (sums.cost() - plan.bound()) / sums.cost() : 0,
                plan.seconds(),
                plan.seed(),
                sums.totals(),
                survey.cables.stream().map(own::cable).toList(),
                survey.boards.stream().map(own::board).toList(),
                plan.supplies().stream().map(own::supply).toList(),
                plan.reasons(),
                plan.changes(),
                plan.work(),
                plan.workBound());
    }

    private Cable cable(SeenCable seen) {
        Cable cable = seen.cable();
        List<Double> hops = new ArrayList<>();
        for (int i = 0; i < seen.ways().size(); i++) {
            hops.add(seen.hop(i));
        }
        return new Cable(
                cable.controller(),
                cable.jack(),
                seen.length(),
                cable.boards(),
                hops,
                cable.streams().stream().map(use -> stream(seen, use)).toList());
    }

    private StreamUse stream(SeenCable cable, StreamUse use) {
        SeenStream seen = survey.stream(cable.jack(), use.stream());
        Controller controller = cable.controller();
        if (seen == null || controller == null) {
            return use;
        }
        return new StreamUse(
                use.stream(),
                use.pixel(),
                use.startChannel(),
                whole(seen.pixels()),
                seen.kind() == null ? use.limit() : StreamRules.limit(survey.yard, controller, seen.kind()),
                whole(ChannelRules.universe(controller, use.startChannel())),
                whole(ChannelRules.slot(controller, use.startChannel())));
    }

    private Board board(SeenBoard seen) {
        Board board = seen.board();
        return new Board(
                board.id(),
                board.model(),
                board.spot(),
                seen.at(),
                board.controller(),
                board.jack(),
                board.boardId(),
                board.switches(),
                board.terminator(),
                seen.ports().stream().map(port -> port(seen, port)).toList(),
                board.outputs() == null ? null : outputs(seen, board.outputs()),
                board.panels().stream().map(panel -> panel(seen, panel)).toList());
    }

    private PortUse port(SeenBoard board, SeenPort port) {
        PortUse use = port.use();
        return new PortUse(
                use.port(),
                use.stream(),
                use.startPixel(),
                port.amps(),
                port.strings().stream()
                        .map(on -> string(board, use.stream(), on))
                        .toList(),
                use.injections());
    }

    private StringUse string(SeenBoard board, int stream, SeenString on) {
        StringUse use = on.use();
        return new StringUse(
                use.prop(),
                use.string(),
                use.nulls(),
                use.firstPixel(),
                on.pixels(),
                channel(board, stream, use.firstPixel(), use.channel()),
                on.length());
    }

    private long channel(SeenBoard board, int stream, int position, long stated) {
        SeenStream seen = survey.stream(board.jack(), stream);
        OptionalLong own = seen == null ? OptionalLong.empty() : seen.channelAt(position);
        return own.orElse(stated);
    }

    private Outputs outputs(SeenBoard board, Outputs outputs) {
        long first = channel(board, outputs.stream(), outputs.startPixel(), outputs.channel());
        return new Outputs(
                outputs.stream(),
                outputs.startPixel(),
                outputs.pixels(),
                first,
                outputs.lines().stream()
                        .map(line ->
                                new Outputs.Line(line.output(), line.prop(), line.number(), first + line.output() - 1))
                        .toList());
    }

    private PanelUse panel(SeenBoard board, PanelUse panel) {
        return new PanelUse(
                panel.prop(),
                panel.panel(),
                panel.parts().stream()
                        .map(part -> new PanelUse.Part(
                                part.stream(),
                                part.startPixel(),
                                part.pixels(),
                                channel(board, part.stream(), part.startPixel(), part.channel())))
                        .toList());
    }

    private Supply supply(Supply supply) {
        double amps = supply.boards().stream().mapToDouble(this::amps).sum();
        double watts =
                SupplyRules.watts(supply.volts(), amps, survey.yard.rules().fuseLoad(), -SupplyRules.ROUNDING);
        return new Supply(supply.at(), supply.spot(), supply.volts(), amps, whole((long) watts), supply.boards());
    }

    private double amps(String name) {
        SeenBoard board = survey.board(name);
        return board == null ? 0 : board.amps();
    }

    private static int whole(long value) {
        return (int) Math.max(Integer.MIN_VALUE, Math.min(Integer.MAX_VALUE, value));
    }
}
