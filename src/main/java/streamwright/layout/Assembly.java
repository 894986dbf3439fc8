package streamwright.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import streamwright.physics.Channels;
import streamwright.physics.Ground;
import streamwright.physics.Refresh;
import streamwright.physics.Runs;
import streamwright.physics.Switches;
import streamwright.plan.Board;
import streamwright.plan.Cable;
import streamwright.plan.Outputs;
import streamwright.plan.PanelUse;
import streamwright.plan.Plan;
import streamwright.plan.PortUse;
import streamwright.plan.Status;
import streamwright.plan.StreamUse;
import streamwright.yard.Controller;
import streamwright.yard.PixelKind;
import streamwright.yard.Point;
import streamwright.yard.Yard;

/** Completes a layout's decisions to a whole plan. Breaks no rule by itself and judges none: that is the audit's. */
public final class Assembly {
    private final Yard yard;
    private final Ground ground;
    private final Map<Controller, Long> nextChannel = new HashMap<>();
    private final List<Cable> cables = new ArrayList<>();
    private final List<Board> boards = new ArrayList<>();
    private final Supplies supplies = new Supplies();
    private final Bill bill = new Bill();

    private Assembly(Yard yard, Ground ground) {
        this.yard = yard;
        this.ground = ground;
    }

    /**
     * The plan that follows from a layout: cables by controller and jack, boards in cable order, start channels in the
     * order of jack and stream. Feasible by name only, with a bound of 0; reasons are left to others.
     *
     * @throws IllegalArgumentException if the layout names a prop that the yard has no pixel strings for
     */
    public static Plan plan(Yard yard, Ground ground, Layout layout) {
        return new Assembly(yard, ground).plan(layout);
    }

    private Plan plan(Layout layout) {
        List<Layout.Run> runs = layout.cables().stream()
                .filter(run -> !run.boards().isEmpty())
                .sorted(Comparator.comparingInt(
                                (Layout.Run run) -> yard.controllers().indexOf(run.controller()))
                        .thenComparingInt(Layout.Run::jack))
                .toList();
        Labels.of(runs).forEach(this::cable);
        double cost = bill.cost(yard);
        return new Plan(
                Plan.FORMAT,
                yard.name(),
                Status.FEASIBLE,
                cost,
                0,
                cost > 0 ? 1 : 0,
                0,
                0,
                bill.totals(),
                cables,
                boards,
                supplies.list(yard.rules().fuseLoad()),
                List.of(),
                List.of(),
                null,
                null);
    }

    private void cable(Layout.Run run) {
        Placement placement = Placement.of(run, yard, ground);
        Map<Integer, StreamUse> streams = streams(run.controller(), placement);
        Ports ports = new Ports(yard, ground, streams);
        List<String> names = new ArrayList<>();
        List<Double> hops = new ArrayList<>();
        Point from = run.controller().at();
        int last = run.boards().size() - 1;
        for (int b = 0; b <= last; b++) {
            Layout.Hung hung = run.boards().get(b);
            Placement.OnBoard placed = placement.boards().get(b);
            List<PortUse> uses = board(hung, placed.ports(), ports);
            Board board =
                    board(run, hung, b == last, uses, Others.outputs(placed, streams), Others.panels(placed, streams));
            boards.add(board);
            names.add(board.id());
            hops.add(Runs.hop(yard.rules(), ground.path(from, hung.spot().at())));
            from = hung.spot().at();
        }
        double length = hops.stream().mapToDouble(Double::doubleValue).sum();
        bill.cable(length);
        cables.add(new Cable(run.controller().id(), run.jack(), length, names, hops, List.copyOf(streams.values())));
    }

    private Map<Integer, StreamUse> streams(Controller controller, Placement placement) {
        Map<Integer, StreamUse> streams = new LinkedHashMap<>();
        placement.streams().forEach((number, stream) -> {
            PixelKind kind = stream.kind();
            long next = nextChannel.getOrDefault(controller, (long) controller.firstChannel());
            long start = yard.keepChannels() ? stream.first() : next;
            nextChannel.put(controller, next + stream.pixels() * kind.channels());
            int limit = Refresh.limit(kind, yard.frameRate(), controller.model().streamMost(), yard.spare());
            streams.put(
                    number,
                    new StreamUse(
                            number,
                            kind.name(),
                            start,
                            Whole.of(stream.pixels()),
                            limit,
                            Channels.universe(controller, start),
                            Channels.slot(controller, start)));
        });
        return streams;
    }

    private List<PortUse> board(Layout.Hung hung, List<Placement.Port> placed, Ports ports) {
        bill.board(hung.model(), hung.spot());
        List<PortUse> uses = new ArrayList<>();
        double amps = 0;
        for (Placement.Port port : placed) {
            Ports.Powered powered = ports.of(hung, port);
            bill.port(port, powered.injectionCost());
            amps += powered.ampsAll();
            uses.add(powered.use());
        }
        if (!placed.isEmpty()) {
            double volts = placed.get(0).strings().get(0).kind().volts();
            supplies.add(hung.spot(), volts, Objects.requireNonNull(hung.name()), amps);
        }
        return uses;
    }

    private static Board board(
            Layout.Run run,
            Layout.Hung hung,
            boolean last,
            List<PortUse> ports,
            @Nullable Outputs outputs,
            List<PanelUse> panels) {
        @Nullable Integer id = hung.boardId();
        return new Board(
                Objects.requireNonNull(hung.name()),
                hung.model().name(),
                hung.spot().id(),
                hung.spot().at(),
                run.controller().id(),
                run.jack(),
                id,
                id == null ? null : Switches.text(hung.model().address(), id),
                last,
                ports,
                outputs,
                panels);
    }
}
