package streamwright.solve;

import java.util.BitSet;

/** Spots of which it is supposed that no board hangs there, or that one does. */
record Chosen(BitSet empty, BitSet used) {
    static final Chosen NONE = new Chosen(new BitSet(), new BitSet());

    Chosen withEmpty(int spot) {
        BitSet more = (BitSet) empty.clone();
        more.set(spot);
        return new Chosen(more, used);
    }

    Chosen withUsed(int spot) {
        BitSet more = (BitSet) used.clone();
        more.set(spot);
        return new Chosen(empty, more);
    }

    /** Of the spots of which nothing is supposed, the one that is least decided; -1 where there is none. */
    int leastDecided(double[] used) {
        int least = -1;
        for (int p = 0; p < used.length; p++) {
            boolean free = !this.empty.get(p) && !this.used.get(p);
            if (free && (least < 0 || Math.abs(used[p] - 0.5) < Math.abs(used[least] - 0.5))) {
                least = p;
            }
        }
        return least;
    }
}
