package streamwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import streamwright.plan.Board;
import streamwright.plan.Change;
import streamwright.plan.Injection;
import streamwright.plan.Outputs;
import streamwright.plan.Plan;
import streamwright.plan.PortUse;
import streamwright.plan.StringUse;
import streamwright.plan.change.Difference;
import streamwright.yard.Yard;

/** Work orders from plans in which something hangs twice, or comes from elsewhere: each of its places has a step. */
class WorkOrderTest {
    private final Yard yard = ShortLane.yard();
    private final Plan plan = ShortLane.plan();

    private List<Change> between(Plan before, Plan after) {
        return Difference.between(yard, before, after, Set.of(), Map.of());
    }

    private static Board with(Board board, List<PortUse> ports) {
        return with(board, ports, board.outputs());
    }

    private static Board with(Board board, List<PortUse> ports, @Nullable Outputs outputs) {
        return board.carrying(ports, outputs, board.panels());
    }

    /** The plan with one more port on its second board, the fourth, on which this hangs. */
    private Plan onFourth(StringUse... strings) {
        List<Board> boards = new ArrayList<>(plan.boards());
        List<PortUse> ports = new ArrayList<>(boards.get(1).ports());
        ports.add(new PortUse(4, 4, 1, 0, List.of(strings), List.of()));
        boards.set(1, with(boards.get(1), ports));
        return plan.withBoards(boards);
    }

    private static List<String> texts(List<Change> changes) {
        return changes.stream().map(Change::text).toList();
    }

    /** What is plugged in twice is unplugged once, which takes no minutes; it shines on where it stays. */
    @Test
    void aStringOnTwoPortsIsUnpluggedFromOne() {
        StringUse twice = plan.boards().get(0).ports().get(0).strings().get(0);
        List<Change> changes = between(onFourth(twice), plan);
        assertThat(texts(changes))
                .filteredOn(text -> text.startsWith("Unplug"))
                .singleElement()
                .asString()
                .isEqualTo("Unplug " + twice.prop() + " " + twice.string() + " from "
                        + plan.boards().get(1).id() + " port 4: it is plugged elsewhere.");
        assertThat(Difference.minutes(changes)).isZero();
    }

    /** Its pixels over two ports, both of which it leaves: a lead to the one it comes to, and both others are told. */
    @Test
    void aStringThatLeavesTwoPortsIsTakenFromBoth() {
        StringUse twice = plan.boards().get(0).ports().get(0).strings().get(0);
        Plan both = onFourth(twice);
        List<Board> boards = new ArrayList<>(both.boards());
        Board first = boards.get(0);
        List<PortUse> moved = new ArrayList<>(first.ports());
        PortUse was = moved.remove(0);
        boards.set(0, with(first, moved));
        Board second = boards.get(1);
        List<PortUse> ports = new ArrayList<>(second.ports());
        ports.set(ports.size() - 1, new PortUse(3, 3, 1, 0, was.strings().subList(0, 1), List.of()));
        boards.set(1, with(second, ports));
        List<Change> changes = between(both, plan.withBoards(boards));
        assertThat(texts(changes))
                .anyMatch(text -> text.startsWith(
                        "Unplug " + twice.prop() + " " + twice.string() + " from " + first.id() + " port "))
                .anyMatch(text -> text.startsWith(
                        "Plug " + twice.prop() + " " + twice.string() + " into " + second.id() + " port 3"));
        // on another port of the board on which it also was
        assertThat(Difference.minutes(changes)).isEqualTo(yard.work().replug());
    }

    @Test
    void aSecondPlaceInThePlanAfterIsPluggedToo() {
        StringUse twice = plan.boards().get(0).ports().get(0).strings().get(0);
        List<Change> changes = between(plan, onFourth(twice));
        assertThat(texts(changes))
                .anyMatch(text -> text.startsWith("Plug " + twice.prop() + " " + twice.string() + " into "
                        + plan.boards().get(1).id() + " port 4"));
        assertThat(Difference.minutes(changes)).isEqualTo(yard.work().lead());
    }

    @Test
    void whatThePlanAfterHasNowhereIsUnplugged() {
        List<Board> boards = new ArrayList<>(plan.boards());
        Board first = boards.get(0);
        PortUse gone = first.ports().get(0);
        boards.set(0, with(first, first.ports().subList(1, first.ports().size())));
        List<Change> changes = between(plan, plan.withBoards(boards));
        assertThat(texts(changes))
                .anyMatch(text ->
                        text.startsWith("Unplug " + gone.strings().get(0).prop() + " 1 from " + first.id() + " port "
                                + gone.port() + ": the plan has it nowhere."));
    }

    /** A supply that another board's takes over: its wire is new. */
    @Test
    void anInjectionFromAnotherBoardsSupplyIsWork() {
        StringUse string = plan.boards().get(0).ports().get(0).strings().get(0);
        Injection injection = new Injection(string.prop(), string.string(), 2);
        List<Change> changes = between(injected(0, injection), injected(1, injection));
        assertThat(texts(changes))
                .singleElement()
                .asString()
                .contains(
                        "Bring power from the supply of " + plan.boards().get(1).id() + " to pixel 2",
                        ", no longer from that of " + plan.boards().get(0).id());
        assertThat(Difference.minutes(changes)).isEqualTo(yard.work().injection());
    }

    private Plan injected(int board, Injection injection) {
        List<Board> boards = new ArrayList<>(plan.boards());
        Board of = boards.get(board);
        List<PortUse> ports = new ArrayList<>(of.ports());
        PortUse port = ports.get(0);
        ports.set(
                0,
                new PortUse(
                        port.port(),
                        port.stream(),
                        port.startPixel(),
                        port.amps(),
                        port.strings(),
                        List.of(injection)));
        boards.set(board, with(of, ports));
        return plan.withBoards(boards);
    }

    /** Outputs on two boards, of a prop that the yard no longer has: unwired from both. */
    @Test
    void outputsOnTwoBoardsAreUnwired() {
        Outputs block = new Outputs(4, 1, 6, 1, List.of(new Outputs.Line(1, "flood", 1, 1), line(2), line(4)));
        List<Board> boards = plan.boards().stream()
                .map(board -> with(board, board.ports(), block))
                .toList();
        List<Change> changes = between(plan.withBoards(boards), plan);
        assertThat(texts(changes))
                .filteredOn(text -> text.startsWith("Unplug flood from outputs 1-2 4 of "))
                .allMatch(text -> text.endsWith(": the yard no longer has it."))
                .hasSize(2);
    }

    private static Outputs.Line line(int output) {
        return new Outputs.Line(output, "flood", output, output);
    }
}
