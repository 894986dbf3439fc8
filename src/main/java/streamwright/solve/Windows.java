package streamwright.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import streamwright.yard.Drives;

/**
 * Where a stream can lie among kept channels: it begins with one of its strings, so that these are all the places that
 * matter, but those that hold no more than another. None where channels are numbered anew.
 */
final class Windows {
    /** @param holds whether a stream there can carry the strings of each item, which are of its kind */
    record Window(int kind, boolean[] holds) {
        /** Whether it holds any of some items. */
        boolean holdsAny(boolean[] any) {
            return IntStream.range(0, any.length).anyMatch(k -> any[k] && holds[k]);
        }

        private boolean within(Window other) {
            return IntStream.range(0, holds.length).allMatch(k -> !holds[k] || other.holds[k]);
        }
    }

    final List<Window> all = new ArrayList<>();

    Windows(Site site, Items items) {
        for (int first = 0; first < items.size && site.kept.on; first++) {
            if (site.sort[items.sample[first]] == Drives.PIXELS) {
                Window window = from(site, items, items.sample[first]);
                if (all.stream().noneMatch(window::within)) {
                    all.removeIf(other -> other.within(window));
                    all.add(window);
                }
            }
        }
    }

    private static Window from(Site site, Items items, int first) {
        int kind = site.kind[first];
        long width = site.kept.width[kind];
        long begin = site.kept.channel[first];
        long end = begin + Math.max(1, site.limitMost(kind)) * width;
        boolean[] holds = new boolean[items.size];
        for (int k = 0; k < items.size; k++) {
            int string = items.sample[k];
            long from = site.kept.channel[string];
            holds[k] = site.sort[string] == Drives.PIXELS
                    && site.kind[string] == kind
                    && from >= begin
                    && from + site.kept.length(string) <= end
                    && (from - begin) % width == 0;
        }
        return new Window(kind, holds);
    }
}
