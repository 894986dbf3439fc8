package streamwright.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import streamwright.layout.KeptChannels;
import streamwright.yard.Prop;
import streamwright.yard.Yard;

/** The channels that a sequenced show keeps: of each string, and which of them light nothing. */
final class Kept {
    static final int NONE = -1;

    /** Whether channels are kept at all. */
    final boolean on;

    /** Of each string: the channel of its first pixel or output; {@link #NONE} where channels are numbered anew. */
    final long[] channel;

    /** Of each string: its only controller, {@link #NONE} where any will do. */
    final int[] home;

    /** Of each kind: channels of a pixel. */
    final int[] width;

    /** Of each string: the first of the channels that light nothing and lie right before its own. */
    private final long[] freeFrom;

    private final Site site;

    Kept(Site site) {
        this.site = site;
        Yard yard = site.yard;
        on = yard.keepChannels();
        width = Arrays.stream(site.kinds).mapToInt(kind -> kind.channels()).toArray();
        int n = site.strings.length;
        channel = new long[n];
        home = new int[n];
        freeFrom = new long[n];
        Arrays.fill(channel, NONE);
        Arrays.fill(home, NONE);
        if (on) {
            KeptChannels channels = new KeptChannels(yard);
            for (int i = 0; i < n; i++) {
                channel[i] = channels.of(site.strings[i]);
                home[i] = homeOf(yard.props().get(site.prop[i]));
            }
            for (int c = 0; c < site.controllers.length; c++) {
                findFree(c);
            }
        }
    }

    private int homeOf(Prop prop) {
        for (int c = 0; c < site.controllers.length; c++) {
            if (site.controllers[c].id().equals(prop.controller())) {
                return c;
            }
        }
        return 0;
    }

    /** Channels that a string takes. */
    long length(int string) {
        return site.outputs[string] > 0 ? site.outputs[string] : site.pixels[string] * (long) width[site.kind[string]];
    }

    private void findFree(int controller) {
        List<Integer> here = new ArrayList<>();
        for (int i = 0; i < channel.length; i++) {
            if (home[i] == controller) {
                here.add(i);
            }
        }
        here.sort(Comparator.comparingLong(i -> channel[i]));
        long free = site.controllers[controller].firstChannel();
        long freeBefore = free;
        long last = NONE;
        for (int i : here) {
            // a copy has the channels of its original, and so the same free ones before them
            if (channel[i] != last) {
                freeBefore = free;
                last = channel[i];
            }
            freeFrom[i] = freeBefore;
            free = Math.max(free, channel[i] + length(i));
        }
    }

    /** Whether so many nulls before a string find channels that light nothing. */
    boolean room(int string, int nulls) {
        return !on || channel[string] - nulls * (long) width[site.kind[string]] >= freeFrom[string];
    }

    /** Whether the channels of one string and another go on without a gap but for the nulls of a jumper. */
    boolean mayFollow(int string, int next, int nulls) {
        return !on
                || (home[string] == home[next]
                        && channel[string] + length(string) + nulls * (long) width[site.kind[next]] == channel[next]
                        && room(next, nulls));
    }
}
