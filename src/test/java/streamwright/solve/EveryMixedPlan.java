package streamwright.solve;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import streamwright.check.Audit;
import streamwright.check.Findings;
import streamwright.layout.Assembly;
import streamwright.layout.Layout;
import streamwright.physics.Ground;
import streamwright.plan.Rule;
import streamwright.yard.BoardModel;
import streamwright.yard.BoardOffer;
import streamwright.yard.Drives;
import streamwright.yard.PixelString;
import streamwright.yard.Prop;
import streamwright.yard.Spot;
import streamwright.yard.Yard;

/**
 * Tries every plan of a tiny yard of one controller: every set of chains, blocks of outputs and panels, every sharing
 * out over boards of every model at every place, every order on every jack, every port, stream, kind and first output.
 * Only the audit says what a plan costs and whether it keeps the rules.
 */
final class EveryMixedPlan {
    /** Audits after which a yard is not tiny. */
    private static final long TRIED_MOST = 6_000;

    /** What another choice of ports, streams and outputs might mend. */
    private static final Set<Rule> OF_PLUGS = EnumSet.of(
            Rule.PORT_STREAM,
            Rule.START_PIXEL,
            Rule.STREAM_LIMIT,
            Rule.PORT_ONCE,
            Rule.PIXEL_KIND,
            Rule.COPY_PICTURE,
            Rule.CHANNEL_RANGE,
            Rule.CHANNEL_OVERLAP,
            Rule.CHANNEL_KEEP);

    /** What one socket carries. */
    private record Unit(Drives sort, List<PixelString> strings, List<Prop> props) {
        static Unit of(PixelString string) {
            return new Unit(Drives.PIXELS, new ArrayList<>(List.of(string)), List.of());
        }

        static Unit of(Prop prop) {
            Drives sort = prop.outputs() > 0 ? Drives.OUTPUTS : Drives.PANEL;
            return new Unit(sort, List.of(), new ArrayList<>(List.of(prop)));
        }
    }

    private static final class Board {
        final BoardModel model;
        final Spot spot;
        final List<Unit> units = new ArrayList<>();
        final List<Layout.Chain> chains = new ArrayList<>();
        Layout.@Nullable Block block;

        Board(BoardModel model, Spot spot) {
            this.model = model;
            this.spot = spot;
        }
    }

    private final Yard yard;
    private final Ground ground;
    private final List<PixelString> strings;
    private final List<Prop> fixtures;
    private final List<Unit> units = new ArrayList<>();
    private final List<Board> boards = new ArrayList<>();
    private final List<List<Board>> jacks = new ArrayList<>();
    private @Nullable Consumer<Layout> visitor;
    private double best = Double.POSITIVE_INFINITY;
    private long tried;
    private long most = TRIED_MOST;

    EveryMixedPlan(Yard yard, Ground ground) {
        this.yard = yard;
        this.ground = ground;
        strings = yard.strings();
        fixtures =
                yard.props().stream().filter(prop -> prop.strings().isEmpty()).toList();
    }

    /** Whether there were too many plans to try them all. */
    boolean tooMany() {
        return tried > most;
    }

    /** The cost of the cheapest plan, empty where there is none. */
    OptionalDouble optimum() {
        string(0);
        return best < Double.POSITIVE_INFINITY ? OptionalDouble.of(best) : OptionalDouble.empty();
    }

    /** Shows every layout, also those that break rules, on all jacks, with each place of outputs in their block. */
    void visit(long layoutsMost, Consumer<Layout> each) {
        most = layoutsMost;
        visitor = each;
        string(0);
    }

    private void string(int next) {
        if (next == strings.size()) {
            fixture(0);
            return;
        }
        for (int u = 0; u < units.size(); u++) {
            List<PixelString> chain = units.get(u).strings;
            for (int at = 0; at <= chain.size(); at++) {
                chain.add(at, strings.get(next));
                string(next + 1);
                chain.remove(at);
            }
        }
        units.add(Unit.of(strings.get(next)));
        string(next + 1);
        units.remove(units.size() - 1);
    }

    private void fixture(int next) {
        if (next == fixtures.size()) {
            hang(0);
            return;
        }
        Prop prop = fixtures.get(next);
        for (int u = 0; u < units.size(); u++) {
            if (units.get(u).sort == Drives.OUTPUTS && prop.outputs() > 0) {
                units.get(u).props.add(prop);
                fixture(next + 1);
                units.get(u).props.remove(prop);
            }
        }
        units.add(Unit.of(prop));
        fixture(next + 1);
        units.remove(units.size() - 1);
    }

    private void hang(int next) {
        if (tooMany()) {
            return;
        }
        if (next == units.size()) {
            cable(0);
            return;
        }
        Unit unit = units.get(next);
        for (int b = 0; b < boards.size(); b++) {
            Board board = boards.get(b);
            if (board.model.drives() == unit.sort
                    && board.units.size() < board.model.ports().size()) {
                board.units.add(unit);
                hang(next + 1);
                board.units.remove(unit);
            }
        }
        for (BoardOffer offer : yard.boards()) {
            for (Spot spot : yard.places()) {
                if (offer.model().drives() == unit.sort) {
                    Board board = new Board(offer.model(), spot);
                    board.units.add(unit);
                    boards.add(board);
                    hang(next + 1);
                    boards.remove(boards.size() - 1);
                }
            }
        }
    }

    private void cable(int next) {
        if (tooMany()) {
            return;
        }
        if (next == boards.size()) {
            plugged();
            return;
        }
        Board board = boards.get(next);
        for (int j = 0; j < jacks.size(); j++) {
            for (int at = 0; at <= jacks.get(j).size(); at++) {
                jacks.get(j).add(at, board);
                cable(next + 1);
                jacks.get(j).remove(at);
            }
        }
        if (jacks.size() < yard.controllers().get(0).model().jacks()) {
            jacks.add(new ArrayList<>(List.of(board)));
            cable(next + 1);
            jacks.remove(jacks.size() - 1);
        }
    }

    /** Every way of giving the cables jacks: for the cost they are all the same, for the work they are not. */
    private void onJacks(List<Integer> numbers, Consumer<List<Integer>> each) {
        if (numbers.size() == jacks.size()) {
            each.accept(numbers);
            return;
        }
        for (int jack = 1; jack <= yard.controllers().get(0).model().jacks(); jack++) {
            if (!numbers.contains(jack)) {
                numbers.add(jack);
                onJacks(numbers, each);
                numbers.remove(numbers.size() - 1);
            }
        }
    }

    /** The cost is the same for all plugs, so a plan that is too dear needs none. */
    private void plugged() {
        Consumer<Layout> shown = visitor;
        if (shown != null) {
            plug(0, 0, () -> {
                onJacks(new ArrayList<>(), numbers -> {
                    tried++;
                    shown.accept(layout(numbers));
                });
                return tooMany();
            });
            boards.forEach(board -> {
                board.chains.clear();
                board.block = null;
            });
            return;
        }
        BooleanSupplier worth = () -> {
            Findings found = audit();
            return found.restated().cost() < best - 1e-9
                    && found.list().stream().allMatch(finding -> OF_PLUGS.contains(finding.rule()));
        };
        boolean[] asked = {false};
        plug(0, 0, () -> {
            if (!asked[0]) {
                asked[0] = true;
                if (!worth.getAsBoolean()) {
                    return true;
                }
            }
            Findings found = audit();
            if (found.clean()) {
                best = Math.min(best, found.restated().cost());
            }
            return found.clean() || tooMany();
        });
        boards.forEach(board -> {
            board.chains.clear();
            board.block = null;
        });
    }

    /** Goes through all plugs of all units until told to end. */
    private boolean plug(int b, int u, BooleanSupplier end) {
        if (b == boards.size()) {
            return end.getAsBoolean();
        }
        Board board = boards.get(b);
        if (u == board.units.size()) {
            return plug(b + 1, 0, end);
        }
        Unit unit = board.units.get(u);
        int streams = yard.controllers().get(0).model().streams();
        if (unit.sort == Drives.PIXELS) {
            for (int port = 1; port <= board.model.ports().size(); port++) {
                int at = port;
                if (board.chains.stream().anyMatch(chain -> chain.port() == at)) {
                    continue;
                }
                for (int s : heard(board.model.ports().get(port - 1), streams)) {
                    board.chains.add(new Layout.Chain(port, s, unit.strings));
                    boolean ended = plug(b, u + 1, end);
                    board.chains.remove(board.chains.size() - 1);
                    if (ended) {
                        return true;
                    }
                }
            }
            return false;
        }
        if (unit.sort == Drives.PANEL) {
            return plug(b, u + 1, end);
        }
        for (int s : heard(board.model.hears(), streams)) {
            for (var kind : yard.streamKinds()) {
                if (visitor != null && !yard.keepChannels()) {
                    if (anywhere(b, u, new Layout.Block(s, lines(unit.props, 1), kind), 0, new ArrayList<>(), end)) {
                        return true;
                    }
                    continue;
                }
                for (int first = 1; first <= (yard.keepChannels() ? board.model.outputs() : 1); first++) {
                    board.block = new Layout.Block(s, lines(unit.props, first), kind);
                    if (plug(b, u + 1, end)) {
                        return true;
                    }
                }
            }
        }
        return false;
    }

    /** The block with its props in all places that do not overlap. */
    private boolean anywhere(
            int b, int u, Layout.Block block, int next, List<Layout.Lines> placed, BooleanSupplier end) {
        if (next == block.props().size()) {
            boards.get(b).block = new Layout.Block(block.stream(), placed, block.kind());
            return plug(b, u + 1, end);
        }
        Prop prop = block.props().get(next).prop();
        int outputs = boards.get(b).model.outputs();
        for (int first = 1; first + prop.outputs() <= outputs + 1; first++) {
            int from = first;
            boolean free = placed.stream()
                    .allMatch(other ->
                            other.first() + other.prop().outputs() <= from || from + prop.outputs() <= other.first());
            if (free) {
                placed.add(new Layout.Lines(prop, first));
                boolean ended = anywhere(b, u, block, next + 1, placed, end);
                placed.remove(placed.size() - 1);
                if (ended) {
                    return true;
                }
            }
        }
        return false;
    }

    private static int[] heard(int wired, int streams) {
        return wired == BoardModel.ANY ? IntStream.rangeClosed(1, streams).toArray() : new int[] {wired};
    }

    /** The props' outputs: one behind the other, or where their kept channels say once the first of them is placed. */
    private List<Layout.Lines> lines(List<Prop> props, int first) {
        List<Layout.Lines> lines = new ArrayList<>();
        int next = first;
        for (Prop prop : props) {
            int at = yard.keepChannels()
                    ? first
                            + prop.channel().orElseThrow()
                            - props.get(0).channel().orElseThrow()
                    : next;
            lines.add(new Layout.Lines(prop, at));
            next += prop.outputs();
        }
        return lines;
    }

    private Findings audit() {
        tried++;
        List<Integer> numbers = IntStream.rangeClosed(1, jacks.size()).boxed().toList();
        return Audit.of(yard, Assembly.plan(yard, ground, layout(numbers)));
    }

    private Layout layout(List<Integer> numbers) {
        List<Layout.Run> runs = new ArrayList<>();
        for (int j = 0; j < jacks.size(); j++) {
            List<Layout.Hung> hung = new ArrayList<>();
            for (Board board : jacks.get(j)) {
                List<Prop> panels = board.model.drives() == Drives.PANEL
                        ? board.units.stream()
                                .flatMap(unit -> unit.props.stream())
                                .toList()
                        : List.of();
                hung.add(new Layout.Hung(null, null, board.model, board.spot, board.chains, board.block, panels));
            }
            runs.add(new Layout.Run(yard.controllers().get(0), numbers.get(j), hung));
        }
        return new Layout(runs);
    }
}
