package streamwright.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import streamwright.physics.GroundPaths;
import streamwright.yard.Drives;
import streamwright.yard.Yard;

/** Ports that strings need at least: beside every way to put them one behind the other. */
class PortNeedTest {
    /** Where a smallest cover by chains needs more, a matching went round. */
    @Test
    void neverMoreThanTheFewestChains() {
        int tight = 0;
        int joined = 0;
        int all = 0;
        for (Yard yard : yards()) {
            Site site = new Site(yard, GroundPaths.of(yard));
            for (int group = 0; group < site.groups; group++) {
                BitSet strings = strings(site, group);
                if (strings.isEmpty()) {
                    continue;
                }
                long need = PortNeed.of(site, group);
                int fewest = fewest(site, strings);
                assertThat(need).as(yard.name()).isBetween((long) families(site, strings), (long) fewest);
                all++;
                tight += need == fewest ? 1 : 0;
                joined += fewest < strings.cardinality() ? 1 : 0;
            }
        }
        assertThat(joined).isGreaterThan(all / 3);
        assertThat(tight).isGreaterThan(all * 9 / 10);
    }

    private static List<Yard> yards() {
        List<Yard> yards = new ArrayList<>();
        for (long seed = 0; seed < 150; seed++) {
            yards.add(AnyYard.of(seed, 2, 8));
            yards.add(MixedYards.of(seed));
        }
        return yards;
    }

    private static BitSet strings(Site site, int group) {
        BitSet strings = new BitSet();
        for (int i = 0; i < site.strings.length; i++) {
            strings.set(i, site.group[i] == group && site.sort[i] == Drives.PIXELS);
        }
        return strings;
    }

    /** Takes the first string that is left, with every chain through it. */
    private static int fewest(Site site, BitSet left) {
        if (left.isEmpty()) {
            return 0;
        }
        int best = Integer.MAX_VALUE;
        int first = left.nextSetBit(0);
        for (int head = left.nextSetBit(0); head >= 0; head = left.nextSetBit(head + 1)) {
            best = Math.min(best, along(site, left, head, first, head == first));
        }
        return best;
    }

    private static int along(Site site, BitSet left, int last, int first, boolean met) {
        BitSet rest = (BitSet) left.clone();
        rest.clear(last);
        int best = met ? 1 + fewest(site, rest) : Integer.MAX_VALUE;
        for (Site.Wire wire : site.after[last]) {
            if (rest.get(wire.to())) {
                best = Math.min(best, along(site, rest, wire.to(), first, met || wire.to() == first));
            }
        }
        return best;
    }

    /** Sets of strings between which there is no jumper. */
    private static int families(Site site, BitSet strings) {
        int[] family = new int[site.strings.length];
        Arrays.setAll(family, i -> i);
        for (boolean more = true; more; ) {
            more = false;
            for (int i = strings.nextSetBit(0); i >= 0; i = strings.nextSetBit(i + 1)) {
                for (Site.Wire wire : site.after[i]) {
                    int least = Math.min(family[i], family[wire.to()]);
                    more |= family[i] != least || family[wire.to()] != least;
                    family[i] = least;
                    family[wire.to()] = least;
                }
            }
        }
        return (int) strings.stream().map(i -> family[i]).distinct().count();
    }
}
