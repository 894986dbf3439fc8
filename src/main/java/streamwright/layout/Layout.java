package streamwright.layout;

import java.util.List;
import org.jspecify.annotations.Nullable;
import streamwright.yard.BoardModel;
import streamwright.yard.Controller;
import streamwright.yard.PixelKind;
import streamwright.yard.PixelString;
import streamwright.yard.Prop;
import streamwright.yard.Spot;

/** The decisions of a plan, from which everything else follows: what hangs where, on which cable, in which order. */
public record Layout(List<Run> cables) {
    public Layout {
        cables = List.copyOf(cables);
    }

    /** A cable: its jack, and its boards in the order in which it visits them. */
    public record Run(Controller controller, int jack, List<Hung> boards) {
        public Run {
            boards = List.copyOf(boards);
        }
    }

    /**
     * A board in its place.
     *
     * @param name kept from an earlier plan, or null for the next free one
     * @param boardId kept from an earlier plan, or null for the next free one
     * @param block of a board that drives outputs, else null
     * @param panels of a board that drives panels
     */
    public record Hung(
            @Nullable String name,
            @Nullable Integer boardId,
            BoardModel model,
            Spot spot,
            List<Chain> ports,
            @Nullable Block block,
            List<Prop> panels) {
        public Hung {
            ports = List.copyOf(ports);
            panels = List.copyOf(panels);
        }

        public Hung(@Nullable String name, @Nullable Integer boardId, BoardModel model, Spot spot, List<Chain> ports) {
            this(name, boardId, model, spot, ports, null, List.of());
        }

        public Hung(BoardModel model, Spot spot, List<Chain> ports) {
            this(null, null, model, spot, ports);
        }

        /** The same board with another name and ID, null for the next free ones. */
        public Hung named(@Nullable String newName, @Nullable Integer newId) {
            return new Hung(newName, newId, model, spot, ports, block, panels);
        }

        /** The same board with the same things at another spot. */
        public Hung at(Spot newSpot) {
            return new Hung(name, boardId, model, newSpot, ports, block, panels);
        }

        /** The same board with other chains on its ports. */
        public Hung with(List<Chain> newPorts) {
            return new Hung(name, boardId, model, spot, newPorts, block, panels);
        }

        /** The same board with nothing on it. */
        public Hung emptied() {
            return new Hung(name, boardId, model, spot, List.of());
        }

        /** The same board with another block, or none. */
        public Hung with(@Nullable Block newBlock) {
            return new Hung(name, boardId, model, spot, ports, newBlock, panels);
        }

        /** Whether nothing hangs on it. */
        public boolean bare() {
            return ports.isEmpty() && block == null && panels.isEmpty();
        }
    }

    /**
     * A board's block of outputs.
     *
     * @param stream 1-based within the jack
     * @param props with the outputs that each takes
     * @param kind of the pixels that it lies on, where nothing else on its stream tells
     */
    public record Block(int stream, List<Lines> props, PixelKind kind) {
        public Block {
            props = List.copyOf(props);
            if (props.isEmpty()) {
                throw new IllegalArgumentException("a block of a layout switches at least one prop");
            }
        }
    }

    /** The outputs of one prop, from this one of the board (1-based) on. */
    public record Lines(Prop prop, int first) {}

    /** A port with the strings that follow one another on it; the stream is 1-based within the jack. */
    public record Chain(int port, int stream, List<PixelString> strings) {
        public Chain {
            strings = List.copyOf(strings);
            if (strings.isEmpty()) {
                throw new IllegalArgumentException("a port of a layout carries at least one string");
            }
        }
    }
}
