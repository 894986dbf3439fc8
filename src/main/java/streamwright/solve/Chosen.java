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
}
