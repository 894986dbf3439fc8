package streamwright.solve;

import java.util.Arrays;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import streamwright.yard.Drives;

/**
 * The strings of one port in the order of the data, or the outputs of one block, or one panel; and what they cost from
 * one spot.
 *
 * @param strings indexes, at least one
 * @param cost of lead, jumpers and injections
 * @param pixels on the stream, nulls included; of a panel on all its streams
 * @param amps drawn from the board, injections included
 * @param kind of its pixels; for outputs, which are whole pixels of any, the kind it lies on
 * @param from with kept channels the channel of its first pixel, null pixels included; else nothing
 * @param pictures where some string has a copy, or is one, of each its picture and nulls; else empty
 */
record Chain(int[] strings, double cost, int pixels, double amps, int kind, long from, long[] pictures) {
    private static final long[] UNTOLD = {};

    /** The chain, or null where a rule of one port forbids it; of outputs {@link Blocks} makes chains. */
    static @Nullable Chain of(Site site, int spot, int model, int[] strings) {
        Drives sort = site.sort[strings[0]];
        Site.Wire lead = site.lead(spot, strings[0]);
        if (lead == null || !site.suits(model, strings[0]) || sort == Drives.OUTPUTS) {
            return null;
        }
        double cost = lead.cost();
        int pixels = lead.nulls() + site.pixels[strings[0]];
        double amps = site.draw[strings[0]];
        for (int i = 1; i < strings.length; i++) {
            Site.Wire jumper = site.jumper(strings[i - 1], strings[i]);
            if (jumper == null) {
                return null;
            }
            cost += jumper.cost();
            pixels += jumper.nulls() + site.pixels[strings[i]];
            amps += site.draw[strings[i]];
        }
        if (pixels > site.model(model).portMost()) {
            return null;
        }
        int kind = site.kind[strings[0]];
        double injections = sort == Drives.PANEL ? 0 : site.injections(spot, model, strings, lead.length());
        return Double.isInfinite(injections)
                ? null
                : new Chain(
                        strings,
                        cost + injections,
                        pixels,
                        amps,
                        kind,
                        site.kept.channel[strings[0]] - lead.nulls() * (long) site.kept.width[kind],
                        anyCopied(site, strings) ? pictures(site, lead.nulls(), strings) : UNTOLD);
    }

    /** The same strings, less or more some of them, from another spot or at another time; null where a rule forbids it. */
    @Nullable
    Chain again(Chains chains, int spot, int model, int[] some) {
        return chains.site.sort[some[0]] == Drives.OUTPUTS
                ? Blocks.of(chains.site, model, some, kind, from)
                : chains.of(spot, model, some);
    }

    private static boolean anyCopied(Site site, int[] strings) {
        for (int string : strings) {
            if (site.copied[string]) {
                return true;
            }
        }
        return false;
    }

    private static long[] pictures(Site site, int leadNulls, int[] strings) {
        long[] pictures = new long[strings.length];
        for (int i = 0; i < strings.length; i++) {
            int nulls = i == 0
                    ? leadNulls
                    : Objects.requireNonNull(site.jumper(strings[i - 1], strings[i]))
                            .nulls();
            pictures[i] = ((long) site.picture[strings[i]] << 32) + nulls;
        }
        return pictures;
    }

    /** Whether two chains show one picture, nulls and all. */
    boolean sameAs(Chain other) {
        return pictures.length > 0 && Arrays.equals(pictures, other.pictures);
    }

    /** Whether some string of both has one picture, but with other nulls before it. */
    boolean unlike(Chain other) {
        for (long mine : pictures) {
            for (long theirs : other.pictures) {
                if (mine != theirs && mine >> 32 == theirs >> 32) {
                    return true;
                }
            }
        }
        return false;
    }

    int head() {
        return strings[0];
    }

    int indexOf(int string) {
        for (int i = 0; i < strings.length; i++) {
            if (strings[i] == string) {
                return i;
            }
        }
        throw new IllegalStateException("string " + string + " is not on this port");
    }

    /** The indexes with one more at a position. */
    int[] with(int position, int string) {
        int[] longer = new int[strings.length + 1];
        System.arraycopy(strings, 0, longer, 0, position);
        longer[position] = string;
        System.arraycopy(strings, position, longer, position + 1, strings.length - position);
        return longer;
    }

    /** The indexes without the one at a position. */
    int[] without(int position) {
        int[] shorter = new int[strings.length - 1];
        System.arraycopy(strings, 0, shorter, 0, position);
        System.arraycopy(strings, position + 1, shorter, position, strings.length - position - 1);
        return shorter;
    }
}
