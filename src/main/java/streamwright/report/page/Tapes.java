package streamwright.report.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import streamwright.plan.Outputs;
import streamwright.plan.StreamUse;
import streamwright.report.walk.BoardStop;
import streamwright.report.walk.CableWalk;
import streamwright.report.walk.StringStop;
import streamwright.report.walk.Walk;

/** The tape measures of a plan, cable by cable. */
final class Tapes {
    private Tapes() {}

    static List<Tape> of(Walk walk) {
        List<Tape> tapes = new ArrayList<>();
        for (CableWalk cable : walk.cables()) {
            for (StreamUse stream : cable.cable().streams()) {
                tapes.add(Tape.of(
                        "tape-" + cable.number() + "-" + stream.stream(),
                        cable.label() + ", stream " + stream.stream(),
                        cable.number(),
                        stream.pixel(),
                        stream.pixels(),
                        stream.limit(),
                        "starts at channel " + stream.startChannel() + ", universe " + stream.universe() + " slot "
                                + stream.slot(),
                        pieces(cable, stream.stream())));
            }
        }
        return tapes;
    }

    private static List<Tape.Piece> pieces(CableWalk cable, int stream) {
        List<Tape.Piece> pieces = new ArrayList<>();
        for (BoardStop board : cable.boards()) {
            board.ports().stream()
                    .flatMap(port -> port.strings().stream())
                    .filter(each -> each.stream() == stream)
                    .forEach(each -> pieces.add(piece(each)));
            Outputs outputs = board.board().outputs();
            if (outputs != null && outputs.stream() == stream) {
                int last = outputs.startPixel() + outputs.pixels() - 1;
                pieces.add(new Tape.Piece("outputs", board.id(), Names.id(board), outputs.startPixel(), last, 0));
            }
            board.board()
                    .panels()
                    .forEach(panel -> panel.parts().stream()
                            .filter(part -> part.stream() == stream)
                            .forEach(part -> pieces.add(new Tape.Piece(
                                    panel.prop(),
                                    board.id(),
                                    Names.id(board),
                                    part.startPixel(),
                                    part.startPixel() + part.pixels() - 1,
                                    0))));
        }
        pieces.sort(Comparator.comparingInt(Tape.Piece::first));
        return pieces;
    }

    private static Tape.Piece piece(StringStop string) {
        return new Tape.Piece(
                string.label(),
                string.at(),
                Names.id(string),
                string.use().firstPixel(),
                string.lastPixel(),
                string.use().nulls());
    }
}
