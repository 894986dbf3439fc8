package streamwright.solve;

import java.util.ArrayList;
import java.util.List;

/**
 * How many of a plan's cables have which make-up.
 *
 * @param sorts make-ups
 * @param cables of each
 * @param streams of a cable
 */
record Makeups(List<Makeup> sorts, List<Integer> cables, int streams) {
    static Makeups any(int kinds, int streams, int cables) {
        return new Makeups(List.of(Makeup.any(kinds, streams)), List.of(cables), streams);
    }

    /**
     * All that this may be, told apart by how many cables of a sort are of the one make-up and how many of the other.
     *
     * @return each with what its sorts were here
     */
    List<Part> apart(MakeupSplit split) {
        List<Part> parts = new ArrayList<>();
        int cables = this.cables.get(split.sort());
        for (int few = 0; few <= cables; few++) {
            List<Makeup> sorts = new ArrayList<>();
            List<Integer> counts = new ArrayList<>();
            List<Integer> from = new ArrayList<>();
            for (int s = 0; s < this.sorts.size(); s++) {
                if (s != split.sort()) {
                    sorts.add(this.sorts.get(s));
                    counts.add(this.cables.get(s));
                    from.add(s);
                    continue;
                }
                if (few > 0) {
                    sorts.add(split.few());
                    counts.add(few);
                    from.add(s);
                }
                if (few < cables) {
                    sorts.add(split.many());
                    counts.add(cables - few);
                    from.add(s);
                }
            }
            parts.add(new Part(new Makeups(sorts, counts, streams), from));
        }
        return parts;
    }

    /** @param from of each sort, which sort of the whole it was */
    record Part(Makeups makeups, List<Integer> from) {}

    /** Whether there may be so many streams of each kind. */
    boolean holds(int[] need) {
        int all = 0;
        for (int k = 0; k < need.length; k++) {
            int sum = 0;
            for (int s = 0; s < sorts.size(); s++) {
                sum += sorts.get(s).most()[k] * cables.get(s);
            }
            if (sum < need[k]) {
                return false;
            }
            all += need[k];
        }
        return all <= streams * cables.stream().mapToInt(Integer::intValue).sum();
    }
}
