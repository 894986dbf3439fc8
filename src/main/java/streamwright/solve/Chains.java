package streamwright.solve;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Chains by spot, model and strings. A search asks for the same ones again and again, and power makes them dear to
 * measure: so the last answers are kept, each in the one place that its hash gives it. Not for several threads.
 */
final class Chains {
    /** A power of two; all together they take a small part of the memory that there is. */
    private static final int KEPT =
            Integer.highestOneBit((int) Math.min(1 << 19, Runtime.getRuntime().maxMemory() >> 12));

    private static final int UNUSED_BITS = 1 + Integer.numberOfLeadingZeros(KEPT);

    private record Answer(
            int spot, int model, int[] strings, @Nullable Chain chain) {}

    final Site site;
    private final @Nullable Answer[] kept = new Answer[KEPT];

    Chains(Site site) {
        this.site = site;
    }

    /** As {@link Chain#of}; the array is kept and must not change. */
    @Nullable
    Chain of(int spot, int model, int[] strings) {
        int hash = (Arrays.hashCode(strings) * 31 + spot) * 31 + model;
        int place = (hash * 0x9E3779B9) >>> UNUSED_BITS;
        Answer answer = kept[place];
        if (answer != null && answer.spot == spot && answer.model == model && Arrays.equals(answer.strings, strings)) {
            return answer.chain;
        }
        Chain chain = Chain.of(site, spot, model, strings);
        kept[place] = new Answer(spot, model, strings, chain);
        return chain;
    }
}
