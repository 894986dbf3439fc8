package streamwright.solve;

import java.util.Arrays;
import java.util.BitSet;
import java.util.SplittableRandom;
import streamwright.solve.Draft.Cable;
import streamwright.solve.Draft.Hung;
import streamwright.yard.Drives;

/** Takes strings off a draft, so that they can be put back elsewhere. */
final class Ruin {
    /** One in so many is a whole stream where streams are not all alike, and one a whole cable. */
    private static final int WIDE = 32;

    /** One in so many neighbours is passed over where cables are taken down. */
    private static final int SKIPPED = 3;

    private final Draft draft;
    private final Site site;
    private final Nearby nearby;
    private final SplittableRandom random;
    private final int[] loose;

    /** Spots of boards that were taken down whole. */
    private final BitSet emptied = new BitSet();

    private int count;

    Ruin(Draft draft, Nearby nearby, SplittableRandom random) {
        this.draft = draft;
        site = draft.site;
        this.nearby = nearby;
        this.random = random;
        loose = new int[site.strings.length];
    }

    /** Some string that found no place; room for it is made around it. */
    private int unplaced() {
        int n = site.strings.length;
        int i = random.nextInt(n);
        while (draft.at[i] != null) {
            i = (i + 1) % n;
        }
        return i;
    }

    /** Takes some neighbouring strings off, or boards. */
    void some() {
        clear();
        // what a stream carries limits all of its cable then, and neighbours alone change too little
        int wide = site.streamsDiffer ? random.nextInt(WIDE) : WIDE;
        if (wide == 0) {
            stream(random.nextInt(draft.at.length));
        } else if (wide == 1) {
            cable(random.nextInt(draft.at.length));
        } else {
            near();
        }
        gather();
    }

    /** Takes neighbouring cables down, no more than so many. */
    void cables(int most) {
        clear();
        int left = most;
        for (int near : nearby.of(random.nextInt(draft.at.length))) {
            if (left > 0 && draft.at[near] != null && random.nextInt(SKIPPED) != 0) {
                cable(near);
                left--;
            }
        }
        gather();
    }

    /** Takes nothing off. */
    void none() {
        clear();
        gather();
    }

    private void clear() {
        count = 0;
        emptied.clear();
    }

    /** The spot of some board that was taken down whole; -1 where none was. */
    int emptied() {
        return emptied.isEmpty()
                ? -1
                : emptied.stream()
                        .skip(random.nextInt(emptied.cardinality()))
                        .findFirst()
                        .orElse(-1);
    }

    /** What is off, in the order in which it came off. */
    int[] loose() {
        return Arrays.copyOf(loose, count);
    }

    private void near() {
        int n = site.strings.length;
        int seed = draft.placed < n && random.nextBoolean() ? unplaced() : random.nextInt(n);
        int choice = random.nextInt(10);
        if (choice < 5) {
            int most = Math.min(n, 2 + random.nextInt(Math.min(n, 18)));
            int skip = random.nextInt(3) == 0 ? 3 : 1000;
            for (int near : nearby.of(seed)) {
                if (count >= most) {
                    break;
                }
                if (random.nextInt(skip) != 0) {
                    loosen(near);
                }
            }
        } else {
            int boards = 1 + random.nextInt(choice < 9 ? 3 : 5);
            for (int near : nearby.of(seed)) {
                Hung board = draft.at[near];
                if (board != null && random.nextInt(6) != 0) {
                    empty(board);
                    if (--boards == 0) {
                        break;
                    }
                }
            }
        }
    }

    private void empty(Hung board) {
        emptied.set(board.spot);
        for (Chain chain : board.ports) {
            if (chain != null) {
                off(chain);
            }
        }
        draft.takeDownWhole(board);
    }

    private void loosen(int string) {
        Hung board = draft.at[string];
        if (board == null) {
            return;
        }
        int port = draft.portOf[string];
        Chain chain = board.ports[port];
        Chain rest = null;
        if (chain.strings().length > 1) {
            rest = chain.again(draft.chains, board.spot, board.model, chain.without(chain.indexOf(string)));
            boolean fits = rest != null
                    && rest.pixels() <= chain.pixels()
                    && (site.plain || draft.loads.takes(board.cable, board.stream[port], board.model, chain, rest));
            if (!fits) {
                off(chain);
                rest = null;
            } else {
                loose[count++] = string;
            }
        } else {
            loose[count++] = string;
        }
        draft.set(board, port, rest, board.stream[port]);
        if (board.used == 0) {
            draft.takeDown(board);
        }
    }

    /** All that hangs on the stream of a string. */
    private void stream(int string) {
        Hung at = draft.at[string];
        if (at == null) {
            return;
        }
        Cable cable = at.cable;
        int stream = at.stream[draft.portOf[string]];
        for (int b = cable.size - 1; b >= 0; b--) {
            Hung board = cable.boards[b];
            for (int p = 0; p < board.ports.length; p++) {
                Chain chain = board.ports[p];
                if (chain != null && board.stream[p] == stream && site.sort[chain.head()] == Drives.PIXELS) {
                    off(chain);
                    draft.set(board, p, null, stream);
                }
            }
            if (board.used == 0) {
                draft.takeDown(board);
            }
        }
    }

    /** The cable of a string with all that hangs on it. */
    private void cable(int string) {
        Hung at = draft.at[string];
        if (at != null) {
            Cable cable = at.cable;
            while (cable.size > 0) {
                empty(cable.boards[cable.size - 1]);
            }
        }
    }

    private void off(Chain chain) {
        for (int string : chain.strings()) {
            loose[count++] = string;
        }
    }

    /** What found no place before is tried again. */
    private void gather() {
        for (int i = 0; i < draft.at.length && draft.placed + count < draft.at.length; i++) {
            if (draft.at[i] == null && !isLoose(i)) {
                loose[count++] = i;
            }
        }
    }

    private boolean isLoose(int string) {
        for (int i = 0; i < count; i++) {
            if (loose[i] == string) {
                return true;
            }
        }
        return false;
    }
}
