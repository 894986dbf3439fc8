package streamwright.layout;

import java.util.List;
import org.jspecify.annotations.Nullable;
import streamwright.yard.BoardModel;
import streamwright.yard.Controller;
import streamwright.yard.PixelString;
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
     */
    public record Hung(
            @Nullable String name, @Nullable Integer boardId, BoardModel model, Spot spot, List<Chain> ports) {
        public Hung {
            ports = List.copyOf(ports);
        }

        public Hung(BoardModel model, Spot spot, List<Chain> ports) {
            this(null, null, model, spot, ports);
        }
    }

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
