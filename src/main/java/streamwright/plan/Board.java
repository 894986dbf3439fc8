package streamwright.plan;

import java.util.List;
import org.jspecify.annotations.Nullable;
import streamwright.yard.Point;

/**
 * A receiver board in its place.
 *
 * @param spot the yard's spot, or null where the yard names none
 * @param boardId null for a board without an address
 * @param switches switch 1 first, 1 is up; a rotary switch's position; null for a board without an address
 */
public record Board(
        String id,
        String model,
        @Nullable String spot,
        Point at,
        String controller,
        int jack,
        @Nullable Integer boardId,
        @Nullable String switches,
        boolean terminator,
        List<PortUse> ports,
        @Nullable Outputs outputs,
        List<PanelUse> panels) {
    public Board {
        ports = List.copyOf(ports);
        panels = List.copyOf(panels);
    }

    /** The same board with this on it instead. */
    public Board carrying(List<PortUse> onPorts, @Nullable Outputs onOutputs, List<PanelUse> onPanels) {
        return new Board(
                id, model, spot, at, controller, jack, boardId, switches, terminator, onPorts, onOutputs, onPanels);
    }
}
