package streamwright.cli;

import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import streamwright.report.Figures;
import streamwright.report.walk.BoardStop;
import streamwright.report.walk.Walk;
import streamwright.yard.BoardModel;
import streamwright.yard.Controller;
import streamwright.yard.ControllerModel;

/** Whether the hardware has what an address names; what no plan of this hardware can carry is no question. */
final class Addresses {
    private Addresses() {}

    /** @throws Wrong if the board, which the plan has, has no such port */
    static void port(Walk walk, String board, int port) {
        BoardModel model = walk.boards().stream()
                .filter(stop -> stop.id().equals(board))
                .map(BoardStop::model)
                .findFirst()
                .orElseThrow();
        int ports = model.ports().size();
        if (ports == 0) {
            throw new Wrong(board + " is a " + model.name()
                    + " and has no port for pixel strings; find what is on it by" + " --prop.");
        }
        within(board, "port", port, ports);
    }

    /** @throws Wrong if the controller has no such jack, or the jack no such stream */
    static void stream(Controller controller, int jack, int stream) {
        within(controller.id(), "jack", jack, controller.model().jacks());
        within(
                controller.id() + " jack " + jack,
                "stream",
                stream,
                controller.model().streams());
    }

    /** @throws Wrong if none of the controllers has such a channel */
    static void channel(List<Controller> controllers, long channel) {
        Controller most = controllers.stream()
                .max(Comparator.comparingInt(each -> each.model().channelMost()))
                .orElseThrow();
        within(most.id(), "channel", channel, most.model().channelMost());
    }

    /** @throws Wrong if universes of none of the controllers have such a slot */
    static void slot(List<Controller> controllers, int slot) {
        int slots = controllers.stream()
                .map(Controller::model)
                .mapToInt(ControllerModel::universeSlots)
                .max()
                .orElseThrow();
        within("A universe of this yard", "slot", slot, slots);
    }

    /** @throws Wrong if pixels are counted from anything but 1 */
    static void pixel(int pixel) {
        if (pixel < 1) {
            throw new Wrong("There is no pixel " + pixel + ": they count from 1.");
        }
    }

    /** Those that are asked about: the one of that name, else all. */
    static List<Controller> asked(Walk walk, @Nullable String controller) {
        return walk.yard().controllers().stream()
                .filter(each -> controller == null || each.id().equals(controller))
                .toList();
    }

    private static void within(String owner, String thing, long asked, long most) {
        if (asked < 1 || asked > most) {
            throw new Wrong(owner + " has no " + thing + " " + asked
                    + (most == 1
                            ? ": it has only " + thing + " 1."
                            : ": its " + thing + "s are 1 to " + Figures.plain(most) + "."));
        }
    }
}
