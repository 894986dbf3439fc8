package streamwright.solve;

import java.util.Arrays;
import java.util.stream.IntStream;
import streamwright.physics.Power;
import streamwright.plan.Rule;
import streamwright.yard.Drives;

/** What a string, a prop's outputs or a panel need by themselves, whatever else there is. */
final class NeedsOfOne {
    private final Obstructions all;
    private final Site site;

    NeedsOfOne(Obstructions all) {
        this.all = all;
        site = all.site;
    }

    /** Whether some board on offer drives each of them. */
    boolean find() {
        boolean driven = true;
        for (int i = 0; i < site.strings.length; i++) {
            if (drivenAtAll(i)) {
                onAStream(i);
                heard(i);
                if (site.sort[i] == Drives.PIXELS) {
                    onAPort(i);
                    amps(i);
                    volts(i);
                }
                keptChannels(i);
            } else {
                driven = false;
            }
        }
        return driven;
    }

    /** Whether some board on offer drives a string's sort, and of outputs so many. */
    private boolean drivenAtAll(int string) {
        int most = 0;
        for (int m = 0; m < site.offers.length; m++) {
            if (site.drives(m, site.sort[string])) {
                most = Math.max(
                        most,
                        site.sort[string] == Drives.OUTPUTS ? site.model(m).outputs() : 1);
            }
        }
        int needed = Math.max(1, site.outputs[string]);
        if (most == 0) {
            all.add(
                    Rule.PORT_ONCE,
                    all.label(string),
                    needed,
                    0,
                    "%s needs a board that drives %s, but none is on offer: name one under boards",
                    all.label(string),
                    word(site.sort[string]));
        } else if (needed > most) {
            all.add(
                    Rule.PORT_ONCE,
                    all.label(string),
                    needed,
                    most,
                    "%s has %d outputs, but a board on offer has at most %d, and a prop's outputs are on one board",
                    all.label(string),
                    needed,
                    most);
        }
        return needed <= most;
    }

    private static String word(Drives sort) {
        return switch (sort) {
            case PIXELS -> "pixel strings";
            case OUTPUTS -> "mains outputs";
            case PANEL -> "a panel";
        };
    }

    /** Of a panel the most of its parts that lie on one stream, on the board that cuts it finest. */
    private int onOneStream(int string) {
        int parts = 1;
        for (int m = 0; m < site.offers.length; m++) {
            parts = Math.max(parts, site.sort[string] == Drives.PANEL ? site.sockets.parts(m) : 1);
        }
        return (site.pixels[string] + parts - 1) / parts;
    }

    private void onAStream(int string) {
        int most = site.limitMost(site.kind[string]);
        int pixels = onOneStream(string);
        if (pixels > most) {
            all.add(
                    Rule.STREAM_LIMIT,
                    all.label(string),
                    pixels,
                    most,
                    site.sort[string] == Drives.PANEL
                            ? "%s puts %d of its pixels on a stream, but a stream holds at most %d at %s frames a second"
                            : "%s has %d pixels, but a stream holds at most %d at %s frames a second",
                    all.label(string),
                    pixels,
                    most,
                    Obstructions.plain(site.yard.frameRate()));
        }
    }

    /** A board is of use where a cable has the lowest stream that it hears; for a panel, all of its streams. */
    private void heard(int string) {
        int least = Integer.MAX_VALUE;
        for (int m = 0; m < site.offers.length; m++) {
            if (site.suits(m, string)) {
                IntStream streams = site.sort[string] == Drives.PANEL
                        ? IntStream.of(IntStream.of(site.sockets.cut[m]).max().orElse(0))
                        : IntStream.of(site.sockets.heard[m]);
                least = Math.min(least, streams.min().orElse(0));
            }
        }
        int most = Arrays.stream(site.controllers)
                .mapToInt(controller -> controller.model().streams())
                .max()
                .orElse(0);
        if (least > most) {
            all.add(
                    Rule.PORT_STREAM,
                    all.label(string),
                    least,
                    most,
                    "%s needs %sstream %d of its cable for any board on offer, but no controller's cable has more than %d",
                    all.label(string),
                    site.sort[string] == Drives.PANEL ? "" : "at least ",
                    least,
                    most);
        }
    }

    private void onAPort(int string) {
        int port = 0;
        for (int m = 0; m < site.offers.length; m++) {
            port = site.suits(m, string) ? Math.max(port, site.model(m).portMost()) : port;
        }
        if (site.pixels[string] > port) {
            all.add(
                    Rule.PORT_PIXELS,
                    all.label(string),
                    site.pixels[string],
                    port,
                    "%s has %d pixels, but a port of any board on offer passes on at most %d",
                    all.label(string),
                    site.pixels[string],
                    port);
        }
    }

    /** One board feeds a whole string, injections and all; one fuse at least a pixel. */
    private void amps(int string) {
        double fuse = 0;
        double board = 0;
        for (int m = 0; m < site.offers.length; m++) {
            if (site.suits(m, string)) {
                fuse = Math.max(fuse, site.model(m).fuse());
                board = Math.max(board, site.model(m).ampsMost());
            }
        }
        double pixel = site.draw[string] / site.pixels[string];
        double share = fuse * site.yard.rules().fuseLoad();
        if (pixel > share + Site.AMPS_ROUNDING) {
            all.add(
                    Rule.FUSE,
                    all.label(string),
                    pixel,
                    share,
                    "one pixel of %s draws %.3f A, but the fuse of any board on offer stands at most %.3f A",
                    all.label(string),
                    pixel,
                    share);
        }
        if (site.draw[string] > board + Site.AMPS_ROUNDING) {
            all.add(
                    Rule.BOARD_AMPS,
                    all.label(string),
                    site.draw[string],
                    board,
                    "%s draws %.2f A, but any board on offer gives at most %.2f A",
                    all.label(string),
                    site.draw[string],
                    board);
        }
        spotAmps(string);
    }

    private void spotAmps(int string) {
        double spot = 0;
        if (site.before[string].length == 0) {
            for (Site.Wire lead : site.leads[string]) {
                spot = Math.max(spot, site.spots[lead.to()].ampsMost());
            }
        } else {
            for (var each : site.spots) {
                spot = Math.max(spot, each.ampsMost());
            }
        }
        // without any spot the lead is what is wrong
        if (spot > 0 && site.draw[string] > spot + Site.AMPS_ROUNDING) {
            all.add(
                    Rule.SPOT_AMPS,
                    all.label(string),
                    site.draw[string],
                    spot,
                    "%s draws %.2f A, but any spot in its reach gives at most %.2f A",
                    all.label(string),
                    site.draw[string],
                    spot);
        }
    }

    /**
     * A string alone on a port can be powered if its first pixel can through the lead, and its last by an injection of
     * its own: each other pixel is nearer. What may follow another string may have its power from that.
     */
    private void volts(int string) {
        if (site.before[string].length > 0 || site.leads[string].length == 0) {
            return;
        }
        double fuse = 0;
        for (Site.Wire lead : site.leads[string]) {
            for (int m = 0; m < site.offers.length; m++) {
                if (site.suits(m, string)) {
                    fuse = Math.max(fuse, site.model(m).fuse());
                    if (site.injections(lead.to(), m, new int[] {string}, lead.length()) < Double.POSITIVE_INFINITY) {
                        return;
                    }
                }
            }
        }
        Power power = Power.of(site.yard, site.kinds[site.kind[string]], fuse);
        if (power.amps(1) > power.ampsMost() + Site.AMPS_ROUNDING) {
            return;
        }
        double least = power.voltsFarthest(site.leads[string][0].length(), site.pixels[string]);
        double low = site.kinds[site.kind[string]].voltsLow();
        all.add(
                Rule.VOLTS,
                all.label(string),
                least,
                low,
                "from the nearest spot a pixel of %s gets %.2f V with nothing else on its wire, but %s needs %.2f V",
                all.label(string),
                least,
                site.kinds[site.kind[string]].name(),
                low);
    }

    private void keptChannels(int string) {
        if (!site.kept.on) {
            return;
        }
        var controller = site.controllers[site.kept.home[string]];
        long first = site.kept.channel[string];
        long last = first + site.kept.length(string) - 1;
        long most = controller.firstChannel() - 1 + site.channelsMost[site.kept.home[string]];
        if (first < controller.firstChannel()) {
            all.add(
                    Rule.CHANNEL_RANGE,
                    all.label(string),
                    (double) first,
                    controller.firstChannel(),
                    "%s keeps its channels from %d on, but those of %s begin at %d",
                    all.label(string),
                    first,
                    controller.id(),
                    controller.firstChannel());
        } else if (last > most) {
            all.add(
                    Rule.CHANNEL_RANGE,
                    all.label(string),
                    (double) last,
                    (double) most,
                    "%s keeps its channels up to %d, but those of %s end at %d",
                    all.label(string),
                    last,
                    controller.id(),
                    most);
        }
    }
}
