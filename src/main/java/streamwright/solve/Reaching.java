package streamwright.solve;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import streamwright.physics.Runs;
import streamwright.plan.Rule;
import streamwright.yard.Drives;

/** Whether a cable reaches some spot, and a lead or a chain of jumpers from there each string. */
final class Reaching {
    private static final double NEVER = Double.POSITIVE_INFINITY;

    /** With more spots than this, those beyond a first hop count as reached. */
    private static final int SPOTS_MOST = 2_000;

    private final Obstructions all;
    private final Site site;

    /** Of each spot: the least cable from a controller to it by hops that are short enough, however long in all. */
    private final double[] cable;

    Reaching(Obstructions all) {
        this.all = all;
        site = all.site;
        cable = cables();
    }

    void find() {
        boolean[] served = new boolean[site.strings.length];
        Deque<Integer> queue = new ArrayDeque<>();
        for (int i = 0; i < served.length; i++) {
            served[i] = Arrays.stream(site.leads[i]).anyMatch(lead -> cable[lead.to()] <= site.cableMost);
            if (served[i]) {
                queue.add(i);
            }
        }
        while (!queue.isEmpty()) {
            for (Site.Wire jumper : site.after[queue.remove()]) {
                if (!served[jumper.to()]) {
                    served[jumper.to()] = true;
                    queue.add(jumper.to());
                }
            }
        }
        for (int i = 0; i < served.length; i++) {
            if (!served[i]) {
                if (site.leads[i].length > 0) {
                    trunk(i);
                } else {
                    lead(i);
                }
            }
        }
    }

    /** Dijkstra's shortest ways from all controllers at once. */
    private double[] cables() {
        int n = site.spots.length;
        double[] least = new double[n];
        boolean[] done = new boolean[n];
        for (int s = 0; s < n; s++) {
            least[s] = NEVER;
            for (int c = 0; c < site.controllers.length; c++) {
                double hop = site.hopFrom(c, s);
                least[s] = hop <= site.hopMost ? Math.min(least[s], hop) : least[s];
            }
        }
        if (n > SPOTS_MOST) {
            return Arrays.stream(least).map(each -> 0).toArray();
        }
        while (true) {
            int nearest = -1;
            for (int s = 0; s < n; s++) {
                nearest = !done[s] && least[s] < NEVER && (nearest < 0 || least[s] < least[nearest]) ? s : nearest;
            }
            if (nearest < 0) {
                return least;
            }
            done[nearest] = true;
            for (int s = 0; s < n; s++) {
                double hop = done[s] ? NEVER : site.hop(nearest, s);
                least[s] = hop <= site.hopMost ? Math.min(least[s], least[nearest] + hop) : least[s];
            }
        }
    }

    /** No cable comes to any spot from which a lead would reach the string. */
    private void trunk(int string) {
        double hop = NEVER;
        double whole = NEVER;
        for (Site.Wire lead : site.leads[string]) {
            int spot = lead.to();
            whole = Math.min(whole, cable[spot]);
            for (int c = 0; c < site.controllers.length; c++) {
                hop = Math.min(hop, site.hopFrom(c, spot));
            }
            for (int s = 0; s < site.spots.length; s++) {
                hop = cable[s] < NEVER ? Math.min(hop, site.hop(s, spot)) : hop;
            }
        }
        String units = site.yard.units().symbol();
        String label = all.label(string);
        if (whole < NEVER) {
            double most = site.yard.rules().cableMost();
            all.add(
                    Rule.CABLE_LENGTH,
                    label,
                    whole,
                    most,
                    "the board of %s needs %.2f %s of cable from the controller, but a cable is at most %.2f %s long",
                    label,
                    whole,
                    units,
                    most,
                    units);
        } else if (hop < NEVER) {
            double most = site.yard.rules().hopMost();
            all.add(
                    Rule.HOP_LENGTH,
                    label,
                    hop,
                    most,
                    "the board of %s needs a hop of %.2f %s, but a hop is at most %.2f %s long",
                    label,
                    hop,
                    units,
                    most,
                    units);
        } else {
            all.add(Rule.OBSTACLE, label, 0, 1, "no way leads from a controller to any spot in reach of %s", label);
        }
    }

    /** No spot is near enough, nor anything that the string might follow. */
    private void lead(int string) {
        String label = all.label(string);
        if (site.spots.length == 0) {
            String text = "%s needs a board, but no spot is named and no string has a feed where one might hang";
            all.add(Rule.SPOT_MOST, label, 1, 0, text, label);
            return;
        }
        double nearest = NEVER;
        for (var spot : site.spots) {
            nearest = Math.min(
                    nearest, Runs.lead(site.yard.rules(), site.ground.path(spot.at(), site.strings[string].feed())));
        }
        boolean panel = site.sort[string] == Drives.PANEL;
        double most = panel ? site.yard.rules().leadData() : Runs.leadMost(site.yard.rules());
        String units = site.yard.units().symbol();
        if (Double.isInfinite(nearest)) {
            all.add(Rule.OBSTACLE, label, 0, 1, "no way leads from any spot to %s", label);
        } else if (nearest <= most + Site.LENGTH_ROUNDING) {
            all.add(
                    Rule.CHANNEL_KEEP,
                    label,
                    Runs.leadNulls(site.yard.rules(), nearest),
                    0,
                    "the lead to %s needs null pixels, but the channels before those that it keeps are not free",
                    label);
        } else if (panel) {
            all.add(
                    Rule.LEAD_NULLS,
                    label,
                    nearest,
                    most,
                    "the nearest spot to %s needs a lead of %.2f %s, but a panel is at most %.2f %s from its board",
                    label,
                    nearest,
                    units,
                    most,
                    units);
        } else {
            all.add(
                    Rule.LEAD_NULLS,
                    label,
                    nearest,
                    most,
                    "the nearest spot to %s needs a lead of %.2f %s, but with %d nulls a lead reaches %.2f %s",
                    label,
                    nearest,
                    units,
                    site.yard.rules().nullsMost(),
                    most,
                    units);
        }
    }
}
