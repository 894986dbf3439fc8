package streamwright.solve;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import streamwright.physics.Channels;
import streamwright.plan.Board;
import streamwright.plan.Cable;
import streamwright.plan.Outputs;
import streamwright.plan.PanelUse;
import streamwright.plan.Plan;
import streamwright.plan.PortUse;
import streamwright.plan.StreamUse;
import streamwright.plan.StringUse;
import streamwright.solve.Numbers.Place;
import streamwright.solve.Numbers.StreamAt;
import streamwright.yard.Controller;

/** A plan with the start pixels and windows that were found for it. */
final class Renumbered {
    private final Numbers numbers;
    private final Plan fresh;
    private final Map<String, Integer> cableOf = new HashMap<>();

    private Renumbered(Numbers numbers) {
        this.numbers = numbers;
        fresh = numbers.fresh;
    }

    static Plan of(Numbers numbers) {
        return new Renumbered(numbers).plan();
    }

    private Plan plan() {
        List<Cable> cables = new ArrayList<>();
        for (int c = 0; c < fresh.cables().size(); c++) {
            Cable cable = fresh.cables().get(c);
            int index = c;
            cableOf.put(cable.controller() + "\n" + cable.jack(), c);
            Controller controller = numbers.yard.controllers().stream()
                    .filter(each -> each.id().equals(cable.controller()))
                    .findFirst()
                    .orElseThrow();
            List<StreamUse> streams = cable.streams().stream()
                    .map(stream -> window(controller, index, stream))
                    .toList();
            cables.add(
                    new Cable(cable.controller(), cable.jack(), cable.length(), cable.boards(), cable.hops(), streams));
        }
        List<Board> boards = new ArrayList<>();
        for (int b = 0; b < fresh.boards().size(); b++) {
            boards.add(board(b));
        }
        return RepairPlans.with(fresh, cables, boards);
    }

    private StreamUse window(Controller controller, int cable, StreamUse stream) {
        long start = Objects.requireNonNull(numbers.windows.get(new StreamAt(cable, stream.stream())));
        return new StreamUse(
                stream.stream(),
                stream.pixel(),
                start,
                (int) numbers.pixels(cable, stream.stream()),
                stream.limit(),
                Channels.universe(controller, start),
                Channels.slot(controller, start));
    }

    private int start(int board, int slot) {
        return (int) (long) Objects.requireNonNull(numbers.starts.get(new Place(board, slot)));
    }

    private int cable(Board board) {
        return Objects.requireNonNull(cableOf.get(board.controller() + "\n" + board.jack()));
    }

    /** The channel of a pixel of a stream. */
    private long channel(Board board, int stream, long pixel) {
        long window = Objects.requireNonNull(numbers.windows.get(new StreamAt(cable(board), stream)));
        return window + (pixel - 1) * width(board, stream);
    }

    private int width(Board board, int stream) {
        return numbers.kind(fresh.cables().get(cable(board)).streams().stream()
                        .filter(each -> each.stream() == stream)
                        .findFirst()
                        .orElseThrow())
                .channels();
    }

    private Board board(int index) {
        Board board = fresh.boards().get(index);
        List<PortUse> ports =
                board.ports().stream().map(port -> port(index, board, port)).toList();
        List<PanelUse> panels = new ArrayList<>();
        int slot = 0;
        for (PanelUse panel : board.panels()) {
            List<PanelUse.Part> parts = new ArrayList<>();
            for (PanelUse.Part part : panel.parts()) {
                int start = start(index, --slot);
                parts.add(new PanelUse.Part(part.stream(), start, part.pixels(), channel(board, part.stream(), start)));
            }
            panels.add(new PanelUse(panel.prop(), panel.panel(), parts));
        }
        return board.carrying(ports, block(index, board), panels);
    }

    private PortUse port(int index, Board board, PortUse port) {
        int start = start(index, port.port());
        int by = start - port.startPixel();
        List<StringUse> strings = port.strings().stream()
                .map(on -> new StringUse(
                        on.prop(),
                        on.string(),
                        on.nulls(),
                        on.firstPixel() + by,
                        on.pixels(),
                        channel(board, port.stream(), on.firstPixel() + (long) by),
                        on.length()))
                .toList();
        return new PortUse(port.port(), port.stream(), start, port.amps(), strings, port.injections());
    }

    private @Nullable Outputs block(int index, Board board) {
        Outputs block = board.outputs();
        if (block == null) {
            return null;
        }
        int start = start(index, 0);
        long channel = channel(board, block.stream(), start);
        List<Outputs.Line> lines = block.lines().stream()
                .map(line -> new Outputs.Line(
                        line.output(), line.prop(), line.number(), line.channel() - block.channel() + channel))
                .toList();
        return new Outputs(block.stream(), start, block.pixels(), channel, lines);
    }
}
