package streamwright.report.walk;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import streamwright.physics.Ground;
import streamwright.plan.Board;
import streamwright.plan.Cable;
import streamwright.plan.PanelUse;
import streamwright.plan.Plan;
import streamwright.yard.BoardModel;
import streamwright.yard.Controller;
import streamwright.yard.PixelKind;
import streamwright.yard.Yard;

/** Finds in the yard what the plan names. */
final class Joining {
    private final Plan plan;
    private final Map<String, Controller> controllers = new HashMap<>();
    private final Map<String, BoardModel> models = new HashMap<>();
    private final Map<String, Board> boards = new HashMap<>();
    private final Ports ports;

    Joining(Yard yard, Plan plan, Ground ground) {
        this.plan = plan;
        yard.controllers().forEach(each -> controllers.put(each.id(), each));
        yard.boards().forEach(each -> models.put(each.model().name(), each.model()));
        plan.boards().forEach(each -> boards.put(each.id(), each));
        ports = new Ports(yard, ground);
    }

    List<CableWalk> cables() {
        List<CableWalk> cables = new ArrayList<>();
        for (Cable cable : plan.cables()) {
            cables.add(walk(cables.size() + 1, cable));
        }
        int visited = cables.stream().mapToInt(each -> each.boards().size()).sum();
        if (visited != boards.size()) {
            throw new Misfit("The plan has " + boards.size() + " boards, but its cables visit " + visited + ".");
        }
        return cables;
    }

    private CableWalk walk(int number, Cable cable) {
        Controller controller = named("controller", cable.controller(), controllers);
        int count = cable.boards().size();
        if (cable.hops().size() != count) {
            throw new Misfit("The plan's cable " + CableWalk.label(cable) + " has " + count + " boards, but "
                    + cable.hops().size() + " hops.");
        }
        List<BoardStop> stops = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Board board = named("board", cable.boards().get(i), boards);
            BoardModel model = named("board model", board.model(), models);
            boolean last = i + 1 == count;
            stops.add(new BoardStop(
                    CableWalk.label(cable),
                    controller,
                    board,
                    model,
                    i + 1,
                    count,
                    i == 0 ? CableWalk.label(cable) : cable.boards().get(i - 1),
                    cable.hops().get(i),
                    last ? null : cable.boards().get(i + 1),
                    last ? 0 : cable.hops().get(i + 1),
                    board.ports().stream()
                            .map(use -> ports.stop(controller, board, model, use))
                            .toList(),
                    board.panels().stream().map(this::kind).toList()));
        }
        return new CableWalk(number, controller, cable, stops);
    }

    private PixelKind kind(PanelUse panel) {
        return ports.kind(panel.prop());
    }

    static <T> T named(String what, String name, Map<String, T> known) {
        T found = known.get(name);
        if (found == null) {
            throw new Misfit("The plan names the " + what + " '" + name + "', which the yard does not have.");
        }
        return found;
    }
}
