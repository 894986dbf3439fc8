package streamwright.solve;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import streamwright.yard.Drives;

/**
 * Chains of mains outputs: the props on one board's block. The block takes one channel for each output of the board, in
 * whole pixels; leads to outputs are wired on site and cost nothing.
 */
final class Blocks {
    private static final long[] NO_PICTURES = {};

    private Blocks() {}

    /**
     * The block, or null where the board has too few outputs or the channels do not lie in it.
     *
     * @param from with kept channels the channel of the block's first output
     */
    static @Nullable Chain of(Site site, int model, int[] props, int kind, long from) {
        int outputs = site.model(model).outputs();
        int taken = 0;
        for (int prop : props) {
            taken += site.outputs[prop];
            boolean outside = site.kept.on
                    && (site.kept.channel[prop] < from
                            || site.kept.channel[prop] + site.outputs[prop] > from + outputs
                            || site.kept.home[prop] != site.kept.home[props[0]]);
            if (outside) {
                return null;
            }
        }
        if (taken > outputs || !site.drives(model, Drives.OUTPUTS)) {
            return null;
        }
        int pixels = (outputs + site.kept.width[kind] - 1) / site.kept.width[kind];
        return new Chain(props, 0, pixels, 0, kind, from, NO_PICTURES);
    }

    /** All blocks that could carry the props: of every kind, and with kept channels from every channel. */
    static List<Chain> all(Site site, int model, int[] props) {
        List<Chain> all = new ArrayList<>();
        int outputs = site.model(model).outputs();
        long last = Kept.NONE;
        long first = Kept.NONE;
        if (site.kept.on) {
            last = Long.MAX_VALUE;
            for (int prop : props) {
                last = Math.min(last, site.kept.channel[prop]);
                first = Math.max(first, site.kept.channel[prop] + site.outputs[prop] - outputs);
            }
        }
        for (int kind = 0; kind < site.kinds.length; kind++) {
            for (long from = last; from >= first; from--) {
                Chain block = of(site, model, props, kind, from);
                if (block != null) {
                    all.add(block);
                }
            }
        }
        return all;
    }

    /** The blocks that one chain could become with one more prop: where numbers are free, of its own kind alone. */
    static List<Chain> joined(Site site, int model, Chain block, int prop) {
        int[] props = block.with(block.strings().length, prop);
        if (site.kept.on) {
            return all(site, model, props);
        }
        Chain longer = of(site, model, props, block.kind(), block.from());
        return longer == null ? List.of() : List.of(longer);
    }
}
