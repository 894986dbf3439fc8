package streamwright.report.page;

import streamwright.report.Figures;
import streamwright.report.FullWhite;
import streamwright.report.walk.BoardStop;
import streamwright.report.walk.PortStop;
import streamwright.report.walk.StringStop;

/** What things are called on a page, in links and in words. */
final class Names {
    private Names() {}

    /** Of a board's card. */
    static String id(BoardStop board) {
        return "board-" + slug(board.id());
    }

    /** Of a string on its board's card. */
    static String id(StringStop string) {
        return "string-" + slug(string.use().prop()) + "-" + string.use().string();
    }

    /** Ids of elements hold no blanks; other characters than these are told apart by their number. */
    private static String slug(String id) {
        StringBuilder slug = new StringBuilder();
        id.codePoints().forEach(c -> {
            if ((c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9')) {
                slug.appendCodePoint(c);
            } else {
                slug.append('_').append(Integer.toHexString(c));
            }
        });
        return slug.toString();
    }

    /** Where a string is, in every way of saying it. */
    static String address(StringStop string) {
        return string.label() + ": " + port(string) + numbers(string);
    }

    /** The part of its address that stands on the card beside it too. */
    static String port(StringStop string) {
        return "board " + string.board() + " port " + string.port() + ", "
                + string.controller().id() + " " + string.jack() + " stream " + string.stream() + ", ";
    }

    static String numbers(StringStop string) {
        var use = string.use();
        return span("pixel", use.firstPixel(), string.lastPixel()) + ", "
                + span("channel", use.channel(), string.lastChannel()) + ", from universe " + string.universe()
                + " slot " + string.slot();
    }

    static String span(String thing, long first, long last) {
        return first == last ? thing + " " + first : thing + "s " + first + "-" + last;
    }

    /** Amps with two decimals at most. */
    static String amps(double amps) {
        return Figures.plain(Math.round(amps * 100) / 100.0) + " A";
    }

    /** Whether all channels full would draw more than the port's fuse. */
    static boolean overFuse(PortStop port) {
        return FullWhite.blows(port.ampsFull(), port.fuse());
    }
}
