package streamwright.report.sheet;

import java.util.ArrayList;
import java.util.List;
import streamwright.report.walk.BoardStop;
import streamwright.report.walk.CableWalk;
import streamwright.report.walk.InjectionStop;
import streamwright.report.walk.PortStop;
import streamwright.report.walk.StringStop;
import streamwright.report.walk.Walk;

/**
 * One piece of cable or wire to lay.
 *
 * @param cable label of the cable that it belongs to
 * @param length as planned, slack and loops included
 * @param nulls null pixels spliced into it
 */
record Pull(Kind kind, String cable, String from, String to, double length, int nulls) {
    /** What is cut. */
    enum Kind {
        TRUNK,
        LEAD,
        JUMPER,
        INJECTION;

        String label() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }

    /** In walking order: first the trunk of a cable, then what hangs on its boards. */
    static List<Pull> of(Walk walk) {
        List<Pull> pulls = new ArrayList<>();
        for (CableWalk cable : walk.cables()) {
            for (BoardStop board : cable.boards()) {
                pulls.add(new Pull(Kind.TRUNK, cable.label(), board.from(), board.id(), board.hop(), 0));
            }
            for (BoardStop board : cable.boards()) {
                board.ports().forEach(port -> addWires(pulls, cable.label(), port));
            }
        }
        return pulls;
    }

    private static void addWires(List<Pull> pulls, String cable, PortStop port) {
        for (StringStop each : port.strings()) {
            pulls.add(new Pull(
                    each.byLead() ? Kind.LEAD : Kind.JUMPER,
                    cable,
                    each.byLead() ? port.label() : each.after(),
                    each.label(),
                    each.use().length(),
                    each.use().nulls()));
        }
        for (InjectionStop each : port.injections()) {
            pulls.add(new Pull(
                    Kind.INJECTION,
                    cable,
                    port.board(),
                    each.string().label() + " px " + each.pixel(),
                    each.wire(),
                    0));
        }
    }
}
