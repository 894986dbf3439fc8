package streamwright.report.walk;

import java.util.List;
import streamwright.physics.Ground;
import streamwright.physics.GroundPaths;
import streamwright.plan.Plan;
import streamwright.yard.Yard;

/**
 * A plan joined with its yard: cable by cable, board by board as the cable visits them, port by port.
 *
 * @param ground on which the yard's wires lie
 */
public record Walk(Yard yard, Plan plan, Ground ground, List<CableWalk> cables) {
    public Walk {
        cables = List.copyOf(cables);
    }

    /**
     * Joins a plan with its yard.
     *
     * @throws Misfit if the plan names what the yard or the plan itself does not have
     */
    public static Walk of(Yard yard, Plan plan) {
        Ground ground = GroundPaths.of(yard);
        return new Walk(yard, plan, ground, new Joining(yard, plan, ground).cables());
    }

    /** Every board in walking order. */
    public List<BoardStop> boards() {
        return cables.stream().flatMap(cable -> cable.boards().stream()).toList();
    }

    /** Every port that carries something, in walking order. */
    public List<PortStop> ports() {
        return boards().stream().flatMap(board -> board.ports().stream()).toList();
    }

    /** Every string in walking order. */
    public List<StringStop> strings() {
        return ports().stream().flatMap(port -> port.strings().stream()).toList();
    }

    /** The yard's unit of length, {@code m} or {@code ft}. */
    public String unit() {
        return yard.units().symbol();
    }
}
