package streamwright.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import streamwright.physics.Runs;
import streamwright.plan.Rule;
import streamwright.yard.Drives;
import streamwright.yard.Prop;

/** Plain arithmetic that proves a yard impossible before anything is searched. */
final class Obstructions {
    private final Site site;
    private final List<Outcome.Obstruction> found = new ArrayList<>();

    private Obstructions(Site site) {
        this.site = site;
    }

    static List<Outcome.Obstruction> of(Site site) {
        Obstructions all = new Obstructions(site);
        for (int i = 0; i < site.strings.length; i++) {
            if (all.drivenAtAll(i)) {
                all.pixels(i);
                all.lead(i);
            }
        }
        all.streams();
        all.ports();
        return all.found;
    }

    private String label(int string) {
        Prop prop = site.yard.props().get(site.prop[string]);
        return site.strings[string].label(prop.several());
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
            add(
                    Rule.PORT_ONCE,
                    label(string),
                    needed,
                    0,
                    "%s needs a board that drives %s, but none is on offer: name one under boards",
                    label(string),
                    word(site.sort[string]));
        } else if (needed > most) {
            add(
                    Rule.PORT_ONCE,
                    label(string),
                    needed,
                    most,
                    "%s has %d outputs, but a board on offer has at most %d, and a prop's outputs are on one board",
                    label(string),
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

    private void pixels(int string) {
        int most = 0;
        for (int[] limit : site.limit) {
            most = Math.max(most, limit[site.kind[string]]);
        }
        if (site.sort[string] == Drives.PANEL && onOneStream(string) > most) {
            add(
                    Rule.STREAM_LIMIT,
                    label(string),
                    onOneStream(string),
                    most,
                    "%s puts %d of its pixels on a stream, but a stream holds at most %d at %s frames a second",
                    label(string),
                    onOneStream(string),
                    most,
                    plain(site.yard.frameRate()));
        }
        if (site.sort[string] != Drives.PIXELS) {
            return;
        }
        if (site.pixels[string] > most) {
            add(
                    Rule.STREAM_LIMIT,
                    label(string),
                    site.pixels[string],
                    most,
                    "%s has %d pixels, but a stream holds at most %d at %s frames a second",
                    label(string),
                    site.pixels[string],
                    most,
                    plain(site.yard.frameRate()));
        }
        int port = 0;
        for (int m = 0; m < site.offers.length; m++) {
            port = site.drives(m, Drives.PIXELS) ? Math.max(port, site.model(m).portMost()) : port;
        }
        if (site.pixels[string] > port) {
            add(
                    Rule.PORT_PIXELS,
                    label(string),
                    site.pixels[string],
                    port,
                    "%s has %d pixels, but a port of any board on offer passes on at most %d",
                    label(string),
                    site.pixels[string],
                    port);
        }
    }

    private void lead(int string) {
        if (site.leads[string].length > 0 || site.before[string].length > 0) {
            return;
        }
        double nearest = Double.POSITIVE_INFINITY;
        for (var spot : site.spots) {
            nearest = Math.min(
                    nearest, Runs.lead(site.yard.rules(), site.ground.path(spot.at(), site.strings[string].feed())));
        }
        if (site.spots.length == 0) {
            add(
                    Rule.SPOT_MOST,
                    label(string),
                    1,
                    0,
                    "%s needs a board, but no spot is named and no string has a feed where one might hang",
                    label(string));
            return;
        }
        if (site.sort[string] != Drives.PIXELS) {
            fixtureLead(string, nearest);
            return;
        }
        double most = Runs.leadMost(site.yard.rules());
        String units = site.yard.units().symbol();
        add(
                Rule.LEAD_NULLS,
                label(string),
                nearest,
                most,
                "the nearest spot to %s needs a lead of %.2f %s, but with %d nulls a lead reaches %.2f %s",
                label(string),
                nearest,
                units,
                site.yard.rules().nullsMost(),
                most,
                units);
    }

    private void fixtureLead(int string, double nearest) {
        String units = site.yard.units().symbol();
        double most = site.yard.rules().leadData();
        if (Double.isInfinite(nearest)) {
            add(Rule.OBSTACLE, label(string), 0, 1, "no way leads from any spot to %s", label(string));
        } else {
            add(
                    Rule.LEAD_NULLS,
                    label(string),
                    nearest,
                    most,
                    "the nearest spot to %s needs a lead of %.2f %s, but a panel is at most %.2f %s from its board",
                    label(string),
                    nearest,
                    units,
                    most,
                    units);
        }
    }

    /** All pixels against all streams, each kind by its own limit. */
    private void streams() {
        double share = 0;
        int streams = 0;
        for (int c = 0; c < site.controllers.length; c++) {
            streams += site.streams[c] * site.controllers[c].model().jacks();
        }
        for (int i = 0; i < site.strings.length; i++) {
            int most = 1;
            for (int[] limit : site.limit) {
                most = Math.max(most, limit[site.kind[i]]);
            }
            share += site.pixelsAtLeast[i] / (double) most;
        }
        if (Math.ceil(share - 1e-9) > streams) {
            add(
                    Rule.STREAM_LIMIT,
                    "yard",
                    Math.ceil(share - 1e-9),
                    streams,
                    "all pixels fill %d streams, but all jacks together have %d",
                    (long) Math.ceil(share - 1e-9),
                    streams);
        }
    }

    private void ports() {
        long boards = site.yard.boardCount().most();
        long places = 0;
        for (int c = 0; c < site.controllers.length; c++) {
            places += (long) site.controllers[c].model().jacks()
                    * site.controllers[c].model().boardsPerCable();
        }
        boards = Math.min(boards, places);
        if (boards < site.yard.boardCount().least()) {
            add(
                    Rule.BOARD_COUNT,
                    "yard",
                    (double) boards,
                    site.yard.boardCount().least(),
                    "at most %d boards fit the cables, but at least %d are asked for",
                    boards,
                    site.yard.boardCount().least());
        }
        if (boards == 0) {
            add(Rule.BOARD_COUNT, "yard", 1, 0, "strings need boards, but none may be hung");
        }
    }

    private void add(Rule rule, String about, double figure, double limit, String text, Object... values) {
        found.add(new Outcome.Obstruction(rule, about, figure, limit, String.format(Locale.ROOT, text, values)));
    }

    private static String plain(double number) {
        return number == Math.rint(number) ? String.valueOf((long) number) : String.valueOf(number);
    }
}
