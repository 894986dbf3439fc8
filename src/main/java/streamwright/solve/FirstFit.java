package streamwright.solve;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import streamwright.solve.Draft.Cable;
import streamwright.solve.Draft.Hung;
import streamwright.yard.Drives;
import streamwright.yard.Point;

/**
 * Careful practice by hand: walk to the nearest feed that is not served, hang a board there, fill its ports with the
 * nearest strings and behind each what may follow within a jumper without nulls, walk on; begin a new cable when a limit
 * is met. Common practice, no source.
 */
final class FirstFit {
    /** Unserved feeds among which one looks for the nearest on foot. */
    private static final int LOOK = 64;

    private final Draft draft;
    private final Site site;

    FirstFit(Draft draft) {
        this.draft = draft;
        site = draft.site;
    }

    /** Lays everything out; false where this practice leaves strings unserved. */
    boolean run() {
        for (Cable cable : draft.cables) {
            if (draft.complete()) {
                return true;
            }
            walk(cable);
        }
        return draft.complete();
    }

    private void walk(Cable cable) {
        Point from = site.controllers[cable.controller].at();
        while (cable.size < cable.boards.length) {
            Hung board = hangNearest(cable, from);
            if (board == null) {
                return;
            }
            from = site.spots[board.spot].at();
            fill(board);
        }
    }

    /** A board at the spot nearest to the nearest feed where one may hang; null where a limit is met. */
    private @Nullable Hung hangNearest(Cable cable, Point from) {
        int[] order = Arrays.stream(nearest(from))
                .boxed()
                .sorted(Comparator.comparingDouble(i -> site.ground.path(from, site.strings[i].feed())))
                .mapToInt(Integer::intValue)
                .toArray();
        for (int string : order) {
            for (Site.Wire lead : site.leads[string]) {
                for (int m = 0; m < site.offers.length; m++) {
                    if (!mayHang(cable, lead.to(), m)) {
                        continue;
                    }
                    Hung board = draft.hang(cable, cable.size, lead.to(), m);
                    if (draft.lengthsHold(cable) && put(board, string)) {
                        return board;
                    }
                    draft.takeDown(board);
                }
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

    private void fill(Hung board) {
        extend(board);
        if (site.drives(board.model, Drives.OUTPUTS)) {
            fillBlock(board);
            return;
        }
        for (Site.Wire near : site.reach[board.spot]) {
            if (board.used == board.ports.length) {
                return;
            }
            if (draft.at[near.to()] == null && put(board, near.to())) {
                extend(board);
            }
        }
    }

    /** The nearest outputs that still find room. */
    private void fillBlock(Hung board) {
        for (Site.Wire near : site.reach[board.spot]) {
            Chain block = board.ports[0];
            if (block == null || site.sort[near.to()] != Drives.OUTPUTS || draft.at[near.to()] != null) {
                continue;
            }
            Blocks.joined(site, board.model, block, near.to()).stream()
                    .filter(more -> takes(board.cable, board.stream[0], board.model, block, more))
                    .findFirst()
                    .ifPresent(more -> draft.set(board, 0, more, board.stream[0]));
        }
    }

    /** Behind each port's last string, what may follow without a null. */
    private void extend(Hung board) {
        for (int p = 0; p < board.ports.length; p++) {
            boolean longer = true;
            while (board.ports[p] != null && longer) {
                longer = follow(board, p);
            }
        }
    }

    private boolean follow(Hung board, int port) {
        Chain chain = board.ports[port];
        int last = chain.strings()[chain.strings().length - 1];
        for (Site.Wire jumper : site.after[last]) {
            if (draft.at[jumper.to()] != null || jumper.nulls() > 0) {
                continue;
            }
            Chain longer = draft.chains.of(board.spot, board.model, chain.with(chain.strings().length, jumper.to()));
            if (longer != null
                    && takes(board.cable, board.stream[port], board.model, chain, longer)
                    && draft.powerTakes(board, longer.amps() - chain.amps())
                    && longer.cost() - chain.cost() <= jumper.cost() + 1e-9) {
                draft.set(board, port, longer, board.stream[port]);
                return true;
            }
        }
        return false;
    }

    private boolean put(Hung board, int string) {
        for (Chain alone : alone(board, string)) {
            if (draft.powerTakes(board, alone.amps()) && put(board, alone)) {
                return true;
            }
        }
        return false;
    }

    private List<Chain> alone(Hung board, int string) {
        if (site.sort[string] == Drives.OUTPUTS) {
            return Blocks.all(site, board.model, new int[] {string});
        }
        Chain alone = draft.chains.of(board.spot, board.model, new int[] {string});
        return alone == null ? List.of() : List.of(alone);
    }

    private long weight(Hung board, int stream, Chain alone) {
        return site.kept.on ? draft.loads.weight(board.cable, stream, board.model, alone) : board.cable.load[stream];
    }

    /** Whether a stream takes a chain even if none of its pictures were there yet: practice numbers each prop anew. */
    private boolean takes(Cable cable, int stream, int model, @Nullable Chain now, Chain then) {
        int more = now == null ? then.pixels() : then.pixels() - now.pixels();
        boolean counted = site.kept.on
                || then.pictures().length == 0
                || cable.load[stream] + more <= site.limit[cable.controller][then.kind()];
        return counted && draft.loads.takes(cable, stream, model, now, then);
    }

    private boolean put(Hung board, Chain alone) {
        int bestPort = -1;
        int bestStream = -1;
        long least = Long.MAX_VALUE;
        for (int p = 0; p < board.ports.length; p++) {
            for (int s = 0; s < board.cable.load.length && board.ports[p] == null; s++) {
                long weight = site.sockets.hears(board.model, p, s) ? weight(board, s, alone) : Long.MAX_VALUE;
                if (weight < least && takes(board.cable, s, board.model, null, alone)) {
                    bestPort = p;
                    bestStream = s;
                    least = weight;
                }
            }
        }
        if (bestPort >= 0) {
            draft.set(board, bestPort, alone, bestStream);
        }
        return bestPort >= 0;
    }
}
