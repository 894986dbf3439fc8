package streamwright.solve;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import streamwright.solve.Draft.Cable;
import streamwright.solve.Draft.Hung;
import streamwright.yard.Point;

/**
 * Careful practice by hand: walk to the nearest feed that is not served, hang a board there, fill its ports with the
 * nearest strings and behind each what may follow within a jumper without nulls, walk on; begin a new cable when a limit
 * is met. Where strings are left unserved that way, one begins again and serves those first: a cable goes out to the
 * farthest of them, by a board on the way where one hop is too long, and walks on from there. Common practice, no source.
 */
final class FirstFit {
    /** Unserved feeds among which one looks for the nearest on foot. */
    private static final int LOOK = 64;

    /** Beginnings before one gives up, and strings in all of them: who plans a whole fair does not begin again. */
    private static final int ROUNDS = 10;

    private static final int STRINGS = 10_000;

    private final Draft draft;
    private final Site site;
    private final FirstPorts ports;

    FirstFit(Draft draft) {
        this.draft = draft;
        ports = new FirstPorts(draft);
        site = draft.site;
    }

    /** Lays everything out; false where this practice leaves strings unserved. */
    boolean run() {
        boolean[] first = new boolean[site.strings.length];
        int rounds = Math.max(1, Math.min(ROUNDS, STRINGS / first.length));
        Snapshot best = null;
        for (int round = 0; round < rounds && !draft.complete(); round++) {
            draft.clearAll();
            goOut(first);
            for (Cable cable : draft.cables) {
                if (cable.size == 0 && !draft.complete()) {
                    walk(cable, site.controllers[cable.controller].at());
                }
            }
            if (best == null || draft.cost() < best.cost()) {
                best = Snapshot.of(draft);
            }
            for (int i = 0; i < first.length; i++) {
                first[i] |= draft.at[i] == null;
            }
        }
        if (best != null && best.cost() < draft.cost()) {
            best.into(draft);
        }
        return draft.complete();
    }

    /** Cables to strings that come first, the farthest first, as long as there are jacks. */
    private void goOut(boolean[] first) {
        boolean[] tried = new boolean[first.length];
        while (true) {
            Cable cable = null;
            int target = -1;
            double far = -1;
            for (int i = 0; i < first.length; i++) {
                boolean wanted = first[i] && draft.at[i] == null && !tried[i] && site.leads[i].length > 0;
                Cable nearest = wanted ? nearestJack(i) : null;
                if (nearest != null && site.hopFrom(nearest.controller, spotOf(i)) > far) {
                    far = site.hopFrom(nearest.controller, spotOf(i));
                    cable = nearest;
                    target = i;
                }
            }
            if (cable == null) {
                return;
            }
            if (goOut(cable, target, true) || goOut(cable, target, false)) {
                walk(cable, site.spots[cable.boards[cable.size - 1].spot].at());
            }
            tried[target] = true;
        }
    }

    private int spotOf(int string) {
        return site.leads[string][0].to();
    }

    /** A jack in use by nobody, of the controller nearest to a string. */
    private @Nullable Cable nearestJack(int string) {
        Cable nearest = null;
        for (Cable cable : draft.cables) {
            boolean nearer = nearest == null
                    || site.hopFrom(cable.controller, spotOf(string))
                            < site.hopFrom(nearest.controller, spotOf(string));
            if (cable.size == 0 && nearer) {
                nearest = cable;
            }
        }
        return nearest;
    }

    /**
     * Hangs a board at a far feed, before it as many on the way as the hops ask for; nothing where that fails.
     *
     * @param filling whether each is filled at once; else only when the far feed has found its stream
     */
    private boolean goOut(Cable cable, int target, boolean filling) {
        while (draft.at[target] == null) {
            Hung board = hang(cable, target);
            if (board == null) {
                board = onTheWay(cable, spotOf(target));
            }
            if (board == null || cable.size == cable.boards.length) {
                takeDown(cable);
                return false;
            }
            if (filling) {
                ports.fill(board);
            }
        }
        for (int i = cable.size - 1; i >= 0; i--) {
            ports.fill(cable.boards[i]);
        }
        return true;
    }

    /** A board at an unserved feed within a hop, nearer to where the cable goes and with the least detour. */
    private @Nullable Hung onTheWay(Cable cable, int to) {
        int from = cable.size == 0 ? -1 : cable.boards[cable.size - 1].spot;
        double left = from < 0 ? site.hopFrom(cable.controller, to) : site.hop(from, to);
        int[] order = IntStream.range(0, site.strings.length)
                .filter(i -> draft.at[i] == null && site.leads[i].length > 0 && site.hop(spotOf(i), to) < left)
                .filter(i -> draft.detour(cable, cable.size, spotOf(i)) <= site.hopMost)
                .boxed()
                .sorted(Comparator.comparingDouble(
                        i -> draft.detour(cable, cable.size, spotOf(i)) + site.hop(spotOf(i), to)))
                .mapToInt(Integer::intValue)
                .toArray();
        return hangFirst(cable, order);
    }

    /** A board for the first of some strings that no limit forbids. */
    private @Nullable Hung hangFirst(Cable cable, int[] order) {
        for (int string : order) {
            Hung board = hang(cable, string);
            if (board != null) {
                return board;
            }
        }
        return null;
    }

    private void takeDown(Cable cable) {
        while (cable.size > 0) {
            draft.takeDownWhole(cable.boards[cable.size - 1]);
        }
    }

    private void walk(Cable cable, Point begin) {
        Point from = begin;
        while (cable.size < cable.boards.length) {
            Hung board = hangNearest(cable, from);
            if (board == null) {
                return;
            }
            from = site.spots[board.spot].at();
            ports.fill(board);
        }
    }

    /** A board at the spot nearest to the nearest feed where one may hang; null where a limit is met. */
    private @Nullable Hung hangNearest(Cable cable, Point from) {
        int[] order = Arrays.stream(nearest(from))
                .boxed()
                .sorted(Comparator.comparingDouble(i -> site.ground.path(from, site.strings[i].feed())))
                .mapToInt(Integer::intValue)
                .toArray();
        return hangFirst(cable, order);
    }

    /** A board that carries a string at the end of a cable, by the cheapest lead that a limit does not forbid. */
    private @Nullable Hung hang(Cable cable, int string) {
        for (Site.Wire lead : site.leads[string]) {
            for (int m = 0; m < site.offers.length; m++) {
                if (!mayHang(cable, lead.to(), m)) {
                    continue;
                }
                Hung board = draft.hang(cable, cable.size, lead.to(), m);
                if (draft.lengthsHold(cable) && ports.put(board, string)) {
                    return board;
                }
                draft.takeDown(board);
            }
        }
        return null;
    }

    /** The unserved strings whose feeds are nearest by straight way: who walks on looks no farther. */
    private int[] nearest(Point from) {
        int[] unserved = IntStream.range(0, site.strings.length)
                .filter(i -> draft.at[i] == null)
                .toArray();
        if (unserved.length <= LOOK) {
            return unserved;
        }
        double[] straight = Arrays.stream(unserved)
                .mapToDouble(i -> Grid.straight(from, site.strings[i].feed()))
                .toArray();
        double[] sorted = straight.clone();
        Arrays.sort(sorted);
        return IntStream.range(0, unserved.length)
                .filter(k -> straight[k] <= sorted[LOOK - 1])
                .map(k -> unserved[k])
                .toArray();
    }

    private boolean mayHang(Cable cable, int spot, int model) {
        if (!draft.mayHang(spot, model)) {
            return false;
        }
        return cable.size == 0
                || (site.sockets.addressed[model]
                        && site.sockets.addressed[cable.boards[0].model]
                        && (!site.idsMatter || Ids.enough(site, cable, model)));
    }
}
