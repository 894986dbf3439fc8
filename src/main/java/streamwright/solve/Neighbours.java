package streamwright.solve;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** The trunk arcs with which the relaxation begins: all of a small yard, short ones of a large; the rest is priced. */
final class Neighbours {
    private static final int ALL_UP_TO = 12;
    private static final int NEAREST = 8;

    private final Site site;

    Neighbours(Site site) {
        this.site = site;
    }

    /** Pairs of a node (controllers first, then spots) and a spot. */
    List<int[]> arcs() {
        int spots = site.spots.length;
        int controllers = site.controllers.length;
        List<int[]> arcs = new ArrayList<>();
        for (int to = 0; to < spots; to++) {
            int target = to;
            for (int c = 0; c < controllers; c++) {
                arcs.add(new int[] {c, to});
            }
            IntStream.range(0, spots)
                    .filter(from -> from != target)
                    .boxed()
                    .sorted(Comparator.comparingDouble(from -> site.hop(from, target)))
                    .limit(spots <= ALL_UP_TO ? spots : NEAREST)
                    .forEach(from -> arcs.add(new int[] {controllers + from, target}));
        }
        return arcs;
    }
}
