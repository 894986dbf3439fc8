package streamwright.solve;

import java.util.List;
import org.jspecify.annotations.Nullable;
import streamwright.solve.Draft.Cable;
import streamwright.solve.Draft.Hung;
import streamwright.yard.Drives;

/** What hand practice ({@link FirstFit}) plugs into a board that it has hung. */
final class FirstPorts {
    private final Draft draft;
    private final Site site;

    FirstPorts(Draft draft) {
        this.draft = draft;
        site = draft.site;
    }

    /** The nearest strings on the free ports of a board, and behind each what may follow. */
    void fill(Hung board) {
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

    /** A string alone on a free port of a board; false where a limit forbids it. */
    boolean put(Hung board, int string) {
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
