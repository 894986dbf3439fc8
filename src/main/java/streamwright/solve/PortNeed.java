package streamwright.solve;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import streamwright.physics.Ground;
import streamwright.plan.Rule;
import streamwright.yard.Drives;
import streamwright.yard.Yard;

/**
 * The ports that a yard's strings need at least, whatever hangs where: each string but those that follow another needs
 * one, and at most as many follow as a largest matching of strings to strings behind them has pairs (a relaxation of
 * the smallest path cover; augmenting paths, Kuhn 1955).
 */
public final class PortNeed {
    private final Site site;
    private final int[] follower;

    private PortNeed(Site site) {
        this.site = site;
        follower = new int[site.strings.length];
        Arrays.fill(follower, -1);
    }

    /** Says so where so many boards as the yard allows have fewer ports than its strings need. */
    public static Optional<Outcome.Obstruction> of(Yard yard, Ground ground) {
        Site site = new Site(yard, ground);
        long strings = 0;
        for (Drives sort : site.sort) {
            strings += sort == Drives.PIXELS ? 1 : 0;
        }
        int ports = 0;
        for (var offer : site.offers) {
            ports = Math.max(ports, offer.model().ports().size());
        }
        long most = Math.min(site.yard.boardCount().most(), 1_000_000L) * ports;
        long need = strings - new PortNeed(site).pairs();
        if (need <= most) {
            return Optional.empty();
        }
        String text = String.format(
                Locale.ROOT,
                "with %d boards: %d strings need %d ports, but these have %d",
                site.yard.boardCount().most(),
                strings,
                need,
                most);
        return Optional.of(new Outcome.Obstruction(Rule.BOARD_COUNT, "yard", need, most, text));
    }

    private int pairs() {
        int pairs = 0;
        for (int i = 0; i < site.strings.length; i++) {
            if (site.sort[i] == Drives.PIXELS && augment(i, new boolean[site.strings.length])) {
                pairs++;
            }
        }
        return pairs;
    }

    private boolean augment(int string, boolean[] tried) {
        for (Site.Wire wire : site.after[string]) {
            int next = wire.to();
            if (!tried[next]) {
                tried[next] = true;
                if (follower[next] < 0 || augment(follower[next], tried)) {
                    follower[next] = string;
                    return true;
                }
            }
        }
        return false;
    }
}
