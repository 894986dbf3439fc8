package streamwright.solve;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

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

    private static final long RANKS = 1_000_000;

    /** Where streams differ, one time in so many a board that was taken down comes back elsewhere or not at all. */
    private static final int CLOSED = 3;

    private final Draft draft;
    private final Site site;
    private final Insertion insertion;
    private final Polish polish;
    private final Repack repack;
    private final Nearby nearby;
    private final SplittableRandom random;
    private final Ruin ruin;

    /** Whether strings of one kind are put back before those of the next. */
    private boolean kindByKind;

    /** Told of plans that are better than all before in one annealing, while it goes on. */
    Consumer<Snapshot> better = plan -> {};

    Search(Draft draft, Nearby nearby, SplittableRandom random) {
        this.draft = draft;
        this.site = draft.site;
        this.nearby = nearby;
        this.random = random;
        insertion = new Insertion(draft);
        polish = new Polish(draft);
        repack = new Repack(draft, polish);
        ruin = new Ruin(draft, nearby, random);
    }

    /** Places every string that is not placed, as far as there is a place. */
    void fill() {
        ruin.none();
        recreate(1);
    }

    /** Packs anew where streams are what is short. */
    void repack(BooleanSupplier stop) {
        if (repack.run(stop) && draft.complete()) {
            better.accept(Snapshot.of(draft));
        }
    }

    /** Takes two or three neighbouring cables down and hangs all anew: what they carry changes together then. */
    void shake() {
        ruin.cables(2 + random.nextInt(2));
        kindByKind = random.nextBoolean();
        recreate(0.2 + 0.8 * random.nextDouble());
        kindByKind = false;
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
            ruin.some();
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

    private void recreate(double boardFactor) {
        int[] loose = ruin.loose();
        sort(loose);
        insertion.boardFactor = boardFactor;
        insertion.choose(random, site.streamsDiffer && random.nextInt(CLOSED) == 0 ? ruin.emptied() : -1);
        for (int string : loose) {
            boolean found = insertion.find(string);
            if (!found) {
                insertion.chooseAny();
                found = insertion.find(string);
            }
            if (found) {
                insertion.apply();
            }
        }
    }

    private long key(int choice, int string) {
        return switch (choice) {
            case 1 -> -site.pixels[string];
            case 2 -> -nearby.remoteness(string);
            default -> site.leads[string].length;
        };
    }

    private void sort(int[] loose) {
        for (int i = loose.length - 1; i > 0; i--) {
            int j = random.nextInt(i + 1);
            int keep = loose[i];
            loose[i] = loose[j];
            loose[j] = keep;
        }
        int choice = random.nextInt(4);
        long[] rank = random.longs(kindByKind ? site.kinds.length : 0, 0, RANKS).toArray();
        if (choice == 0 && !kindByKind) {
            return;
        }
        long[] keys = new long[loose.length];
        for (int i = 0; i < loose.length; i++) {
            int string = loose[i];
            keys[i] = ((kindByKind ? rank[site.kind[string]] : key(choice, string)) << 20) + i;
        }
        Arrays.sort(keys);
        int[] was = loose.clone();
        for (int i = 0; i < loose.length; i++) {
            loose[i] = was[(int) (keys[i] & 0xFFFFF)];
        }
    }
}
