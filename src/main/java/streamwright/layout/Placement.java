package streamwright.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import org.jspecify.annotations.Nullable;
import streamwright.physics.Ground;
import streamwright.physics.Runs;
import streamwright.yard.PixelKind;
import streamwright.yard.PixelString;
import streamwright.yard.Point;
import streamwright.yard.Prop;
import streamwright.yard.Yard;

/**
 * Where what a cable carries lies on its streams. Numbered anew: in cable order, on a board in the order of its ports,
 * and chains that show one picture together. With kept channels: where their channels are in the stream's window.
 *
 * @param boards for each board of the cable what hangs on it
 * @param streams for each stream that carries something its length and kind
 */
record Placement(List<OnBoard> boards, SortedMap<Integer, Stream> streams) {

    /** What hangs on one board; ports by number. */
    record OnBoard(List<Port> ports, @Nullable Block block, List<OnPanel> panels) {}

    /** A port from its start pixel on, nulls included. */
    record Port(Layout.Chain chain, long startPixel, List<Placed> strings) {}

    /** A string behind its wire: length with slack, nulls in it, position of its first lit pixel. */
    record Placed(PixelString string, PixelKind kind, double length, int nulls, long firstPixel) {}

    /** A block of outputs in whole pixels. */
    record Block(Layout.Block block, PixelKind kind, long startPixel, int pixels) {}

    /** A panel, cut in equal parts. */
    record OnPanel(Prop prop, PixelKind kind, List<Part> parts) {}

    /** One part of a panel. */
    record Part(int stream, long startPixel, int pixels) {}

    /**
     * @param pixels the position of its last used pixel
     * @param kind of its first string
     * @param first the channel of its window's first pixel where channels are kept, else 0
     */
    record Stream(PixelKind kind, long pixels, long first) {}

    static Placement of(Layout.Run run, Yard yard, Ground ground) {
        List<Wired> wired =
                run.boards().stream().map(board -> wired(board, yard, ground)).toList();
        Lanes lanes = new Lanes(yard, wired);
        return new Placement(wired.stream().map(lanes::board).toList(), lanes.streams());
    }

    /** The lead or jumper before a string. */
    record Wire(PixelString string, double length, int nulls) {}

    /** A port's chain with its wires. */
    record WiredChain(Layout.Chain chain, List<Wire> wires) {}

    /** A board with its wires, ports by number. */
    record Wired(Layout.Hung board, List<WiredChain> chains) {}

    private static Wired wired(Layout.Hung board, Yard yard, Ground ground) {
        return new Wired(
                board,
                board.ports().stream()
                        .sorted(Comparator.comparingInt(Layout.Chain::port))
                        .map(chain -> new WiredChain(chain, wires(board.spot().at(), chain, yard, ground)))
                        .toList());
    }

    private static List<Wire> wires(Point board, Layout.Chain chain, Yard yard, Ground ground) {
        List<Wire> wires = new ArrayList<>();
        Point from = board;
        for (PixelString string : chain.strings()) {
            double length = Runs.lead(yard.rules(), ground.path(from, string.feed()));
            int nulls = wires.isEmpty() ? Runs.leadNulls(yard.rules(), length) : Runs.jumperNulls(yard.rules(), length);
            wires.add(new Wire(string, length, nulls));
            from = string.tail();
        }
        return wires;
    }
}
