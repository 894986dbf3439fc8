package streamwright.reason;

import java.util.List;
import streamwright.layout.Layout;
import streamwright.yard.PixelString;

/**
 * Where a string is plugged in.
 *
 * @param cable index in the layout
 * @param board index on the cable
 * @param place index in the chain: 0 at the port
 */
record Seat(PixelString string, int cable, int board, Layout.Run run, Layout.Hung hung, Layout.Chain chain, int place) {
    /** The string before it on its port, or itself at the port. */
    PixelString before() {
        return chain.strings().get(Math.max(0, place - 1));
    }

    /** Whether it shares its port with none. */
    boolean alone() {
        return chain.strings().size() == 1;
    }

    /** Whether it shares its board with nothing. */
    boolean hasOwnBoard() {
        return alone() && hung.ports().size() == 1 && hung.with(List.of()).bare();
    }
}
