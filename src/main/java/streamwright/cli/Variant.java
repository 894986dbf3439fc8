package streamwright.cli;

import java.util.List;
import streamwright.yard.BoardCount;
import streamwright.yard.BoardOffer;
import streamwright.yard.Yard;

/** The same yard with something of it otherwise. */
final class Variant {
    private Variant() {}

    static Yard of(Yard yard, double frameRate, double spare, List<BoardOffer> boards) {
        return of(yard, frameRate, spare, boards, yard.boardCount());
    }

    static Yard of(Yard yard, double frameRate, double spare, List<BoardOffer> boards, BoardCount boardCount) {
        return new Yard(
                yard.name(),
                yard.units(),
                frameRate,
                spare,
                yard.brightness(),
                yard.keepChannels(),
                yard.controllers(),
                boards,
                boardCount,
                yard.spots(),
                yard.props(),
                yard.obstacles(),
                yard.rules(),
                yard.costs(),
                yard.work());
    }
}
