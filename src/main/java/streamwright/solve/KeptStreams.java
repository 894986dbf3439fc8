package streamwright.solve;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import streamwright.plan.Rule;
import streamwright.yard.Drives;

/**
 * Streams that kept channels need. A stream carries a window of consecutive channels, gaps and all, of one kind of
 * pixels; what lies farther apart than the longest window needs a stream each. The windows that hold a string begin in an
 * interval, from its last channel less a window to its first; so many intervals that no two of them meet need so many
 * windows, and taking always the one that ends first finds the most of them (as for the fewest points that meet all).
 */
final class KeptStreams {
    private final Obstructions all;
    private final Site site;

    KeptStreams(Obstructions all) {
        this.all = all;
        site = all.site;
    }

    void find() {
        for (int c = 0; c < site.controllers.length; c++) {
            long need = 0;
            for (int k = 0; k < site.kinds.length; k++) {
                need += streams(c, k);
            }
            long most = (long) site.streams[c] * site.controllers[c].model().jacks();
            if (need > most) {
                all.add(
                        Rule.CHANNEL_KEEP,
                        "yard",
                        (double) need,
                        (double) most,
                        "the channels that are kept fill %d streams, gaps and all, but the jacks of %s have %d",
                        need,
                        site.controllers[c].id(),
                        most);
            }
        }
    }

    /** Outputs lie on a stream of any kind, and a panel on several: only pixel strings count. */
    private long streams(int controller, int kind) {
        long window = site.limit[controller][kind] * (long) site.kept.width[kind];
        List<Integer> strings = IntStream.range(0, site.strings.length)
                .filter(i -> site.kept.home[i] == controller)
                .filter(i -> site.kind[i] == kind && site.sort[i] == Drives.PIXELS)
                .boxed()
                .sorted(Comparator.comparingLong(i -> site.kept.channel[i]))
                .toList();
        long streams = 0;
        long start = Long.MIN_VALUE;
        for (int i : strings) {
            if (site.kept.channel[i] + site.kept.length(i) - window > start) {
                streams++;
                start = site.kept.channel[i];
            }
        }
        return streams;
    }
}
