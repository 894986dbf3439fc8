package streamwright.solve;

import java.util.Arrays;
import streamwright.yard.Drives;

/**
 * The ports that strings need at least, whatever hangs where: each string but those that follow another needs one, and
 * at most as many follow as a largest matching of strings to strings behind them has pairs (a relaxation of the
 * smallest path cover; augmenting paths, Kuhn 1955). Strings that no jumper can join need a port for each such family.
 */
final class PortNeed {
    /** With more strings than this, every string that may follow another counts as following. */
    private static final int STRINGS_MOST = 2_000;

    private final Site site;
    private final int group;
    private final int[] follower;

    private PortNeed(Site site, int group) {
        this.site = site;
        this.group = group;
        follower = new int[site.strings.length];
        Arrays.fill(follower, -1);
    }

    /** Of the strings of one group, which have no board in common with others. */
    static long of(Site site, int group) {
        return new PortNeed(site, group).ports();
    }

    private boolean mine(int string) {
        return site.group[string] == group && site.sort[string] == Drives.PIXELS;
    }

    private long ports() {
        boolean many = site.strings.length > STRINGS_MOST;
        int[] family = families();
        long[] needs = new long[family.length];
        for (int i = 0; i < family.length; i++) {
            if (mine(i)) {
                boolean spared = many ? site.before[i].length > 0 : augment(i, new boolean[site.strings.length]);
                needs[family[i]] += spared ? 0 : 1;
            }
        }
        long ports = 0;
        for (int i = 0; i < family.length; i++) {
            // a matching may go round: then it spares a port too many
            ports += mine(i) && family[i] == i ? Math.max(1, needs[i]) : 0;
        }
        return ports;
    }

    /** Of each string the first of all that are joined to it by jumpers that there might be. */
    private int[] families() {
        int[] family = new int[site.strings.length];
        Arrays.setAll(family, i -> i);
        for (int i = 0; i < family.length; i++) {
            for (Site.Wire wire : site.after[i]) {
                int one = root(family, i);
                int other = root(family, wire.to());
                family[Math.max(one, other)] = Math.min(one, other);
            }
        }
        for (int i = 0; i < family.length; i++) {
            family[i] = root(family, i);
        }
        return family;
    }

    private static int root(int[] family, int string) {
        int root = string;
        while (family[root] != root) {
            family[root] = family[family[root]];
            root = family[root];
        }
        return root;
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
