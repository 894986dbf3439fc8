package streamwright.report.walk;

import java.util.List;
import streamwright.plan.Cable;
import streamwright.yard.Controller;

/**
 * One cable and the boards that it visits.
 *
 * @param number 1-based over the whole plan
 */
public record CableWalk(int number, Controller controller, Cable cable, List<BoardStop> boards) {
    public CableWalk {
        boards = List.copyOf(boards);
    }

    /** The controller and its jack, e.g. {@code shed 1}. */
    public String label() {
        return label(cable);
    }

    static String label(Cable cable) {
        return cable.controller() + " " + cable.jack();
    }
}
