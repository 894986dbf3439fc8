package streamwright.solve;

import org.jspecify.annotations.Nullable;

/**
 * The strings of one port, in the order of the data, and what they cost from one spot.
 *
 * @param strings indexes, at least one
 * @param cost of lead, jumpers and injections
 * @param pixels on the stream, nulls included
 * @param amps drawn from the board, injections included
 */
record Chain(int[] strings, double cost, int pixels, double amps) {

    /** The chain, or null where a rule of one port forbids it. */
    static @Nullable Chain of(Site site, int spot, int model, int[] strings) {
        Site.Wire lead = site.lead(spot, strings[0]);
        if (lead == null) {
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
        double injections = site.injections(spot, model, strings, lead.length());
        return Double.isInfinite(injections) ? null : new Chain(strings, cost + injections, pixels, amps);
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
