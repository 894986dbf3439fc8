package streamwright.file;

import java.util.List;
import streamwright.plan.Board;
import streamwright.plan.Outputs;
import streamwright.plan.PanelUse;
import streamwright.plan.PortUse;
import streamwright.yard.Point;

/** A board of a plan. */
final class BoardInPlace extends Struct<Board> {
    private final Field<String> id = required("id", Words.ID, "its name in the plan");
    private final Field<String> model = required("model", Words.ID, "its model");
    private final Field<String> spot = optional("spot", Words.ID, "where the yard names spots");
    private final Field<Point> at = required("at", PointShape.POINT, "where it hangs");
    private final Field<String> controller = required("controller", Words.ID, "whose cable it is on");
    private final Field<Integer> jack = required("jack", Numbers.WHOLE, "the jack of its cable");
    private final Field<Integer> boardId = optional("boardId", Numbers.WHOLE, "its ID on the cable");
    private final Field<String> switches =
            optional("switches", Words.LINE, "switch 1 first, 1 is up; or the position of the rotary switch");
    private final Field<Boolean> terminator = required("terminator", new Flag(), "true for the last of its cable");
    private final Field<List<PortUse>> ports =
            optional("ports", Items.of(new PortShape(), 0, "ports"), List.of(), "those that carry something");
    private final Field<Outputs> outputs = optional("outputs", new OutputsShape(), "of a board that drives outputs");
    private final Field<List<PanelUse>> panels =
            optional("panels", Items.of(new PanelUseShape(), 0, "panels"), List.of(), "of a board that drives panels");

    BoardInPlace() {
        super("a board");
    }

    @Override
    protected Board build(Values values) {
        return new Board(
                values.get(id),
                values.get(model),
                values.find(spot),
                values.get(at),
                values.get(controller),
                values.get(jack),
                values.find(boardId),
                values.find(switches),
                values.get(terminator),
                values.get(ports),
                values.find(outputs),
                values.get(panels));
    }
}
