package streamwright.solve;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import streamwright.solve.Draft.Hung;

/**
 * Ruin and recreate (Schrimpf et al. 2000; Christiaens and Vanden Berghe 2020) under simulated annealing: takes a few
 * neighbouring strings off, puts each back at its cheapest place, and keeps what is not much worse.
 */
final class Search {
    private static final double WORTH = 1e-7;

    /** Strings in a neighbourhood, by which temperatures are measured. */
    private static final double NEIGHBOURHOOD = 50;

    /** With more strings than this, not every best layout met is worth the time to save it. */
    private static final int SMALL = 300;

    private final Draft draft;
    private final Site site;
    private final Insertion insertion;
    private final Polish polish;
    private final Repack repack;
    private final Nearby nearby;
    private final SplittableRandom random;
    private final int[] loose;

    /** Told of plans that are better than all before in one annealing, while it goes on. */
    Consumer<Snapshot> better = plan -> {};

    private int looseCount;

    Search(Draft draft, Nearby nearby, SplittableRandom random) {
        this.draft = draft;
        this.site = draft.site;
        this.nearby = nearby;
        this.random = random;
        insertion = new Insertion(draft);
        polish = new Polish(draft);
        repack = new Repack(draft, polish);
        loose = new int[site.strings.length];
    }

    /** Places every string that is not placed, as far as there is a place. */
    void fill() {
        looseCount = 0;
        gatherLoose();
        recreate(1);
    }

    /** Packs anew where streams are what is short. */
    void repack(BooleanSupplier stop) {
        if (repack.run(stop) && draft.complete()) {
            better.accept(Snapshot.of(draft));
        }
    }

    /** What found no place before is tried again. */
    private void gatherLoose() {
        for (int i = 0; i < draft.at.length && draft.placed + looseCount < draft.at.length; i++) {
            if (draft.at[i] == null && !isLoose(i)) {
                loose[looseCount++] = i;
            }
        }
    }

    private boolean isLoose(int string) {
        for (int i = 0; i < looseCount; i++) {
            if (loose[i] == string) {
                return true;
            }
        }
        return false;
    }

    /** How far an annealing is: 0 at its begin, 1 at its end. */
    interface Progress {
        double at(long step);
    }

    /**
     * Anneals from the draft's layout; leaves the best layout met in the draft.
     *
     * @param hot temperature to begin with, as a share of the cost; falls to {@code cold}
     * @return steps done
     */
    long anneal(Progress progress, double hot, double cold, BooleanSupplier stop) {
        Snapshot best = Snapshot.of(draft);
        double current = draft.cost();
        // a step changes a neighbourhood, whatever the size of the yard
        double scale = draft.money() * Math.min(1, NEIGHBOURHOOD / site.strings.length);
        double temperature = scale * hot;
        // what a step worsens by more than its neighbourhood can win back is not worth polishing
        double band = scale * 0.02;
        long between = site.strings.length <= SMALL ? 0 : site.strings.length;
        long saved = 0;
        long step = 0;
        for (; ; step++) {
            if ((step & 31) == 0) {
                double done = progress.at(step);
                if (done >= 1 || stop.getAsBoolean()) {
                    break;
                }
                temperature = scale * hot * Math.pow(cold / hot, done);
            }
            draft.record();
            ruin();
            gatherLoose();
            recreate(random.nextInt(3) == 0 ? 1 : 0.2 + 0.8 * random.nextDouble());
            double bar = current - temperature * Math.log(random.nextDouble() + 1e-300);
            if (draft.cost() < bar + band) {
                polish.changed();
            }
            // a board taken down joins two hops into one, which may be too long
            if (draft.cost() < bar && draft.changed().stream().allMatch(draft::lengthsHold)) {
                current = draft.cost();
                if (current < best.cost() - WORTH && step >= saved + between) {
                    best = Snapshot.of(draft);
                    saved = step;
                    if (draft.complete()) {
                        better.accept(best);
                    }
                }
            } else {
                draft.undo();
            }
        }
        draft.keep();
        if (draft.cost() >= best.cost()) {
            best.into(draft);
        }
        return step;
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

    private void ruin() {
        looseCount = 0;
        int n = site.strings.length;
        int seed = draft.placed < n && random.nextBoolean() ? unplaced() : random.nextInt(n);
        int choice = random.nextInt(10);
        if (choice < 5) {
            int most = Math.min(n, 2 + random.nextInt(Math.min(n, 18)));
            int skip = random.nextInt(3) == 0 ? 3 : 1000;
            for (int near : nearby.of(seed)) {
                if (looseCount >= most) {
                    break;
                }
                if (random.nextInt(skip) != 0) {
                    loosen(near);
                }
            }
        } else {
            int count = 1 + random.nextInt(choice < 9 ? 3 : 5);
            for (int near : nearby.of(seed)) {
                Hung board = draft.at[near];
                if (board != null && random.nextInt(6) != 0) {
                    empty(board);
                    if (--count == 0) {
                        break;
                    }
                }
            }
        }
    }

    private void empty(Hung board) {
        for (Chain chain : board.ports) {
            for (int k = 0; chain != null && k < chain.strings().length; k++) {
                loose[looseCount++] = chain.strings()[k];
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
                for (int other : chain.strings()) {
                    loose[looseCount++] = other;
                }
                rest = null;
            } else {
                loose[looseCount++] = string;
            }
        } else {
            loose[looseCount++] = string;
        }
        draft.set(board, port, rest, board.stream[port]);
        if (board.used == 0) {
            draft.takeDown(board);
        }
    }

    private void recreate(double boardFactor) {
        sortLoose();
        insertion.boardFactor = boardFactor;
        insertion.choose(random);
        for (int i = 0; i < looseCount; i++) {
            boolean found = insertion.find(loose[i]);
            if (!found) {
                insertion.chooseAny();
                found = insertion.find(loose[i]);
            }
            if (found) {
                insertion.apply();
            }
        }
    }

    private void sortLoose() {
        for (int i = looseCount - 1; i > 0; i--) {
            int j = random.nextInt(i + 1);
            int keep = loose[i];
            loose[i] = loose[j];
            loose[j] = keep;
        }
        int choice = random.nextInt(4);
        if (choice == 0) {
            return;
        }
        long[] keys = new long[looseCount];
        for (int i = 0; i < looseCount; i++) {
            int string = loose[i];
            long key = choice == 1
                    ? -site.pixels[string]
                    : choice == 2 ? -nearby.remoteness(string) : site.leads[string].length;
            keys[i] = (key << 20) + i;
        }
        Arrays.sort(keys);
        int[] was = Arrays.copyOf(loose, looseCount);
        for (int i = 0; i < looseCount; i++) {
            loose[i] = was[(int) (keys[i] & 0xFFFFF)];
        }
    }
}
