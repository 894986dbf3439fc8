package streamwright.solve;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import streamwright.physics.GroundPaths;
import streamwright.yard.Drives;
import streamwright.yard.Follow;
import streamwright.yard.PixelKind;
import streamwright.yard.PixelString;
import streamwright.yard.Point;
import streamwright.yard.Prop;
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

    /** Of each set of strings that jumpers join: one for each string that the best pairing leaves without one before it. */
    @Test
    void isWhatTheBestPairingLeaves() {
        int paired = 0;
        for (Yard yard : yards()) {
            Site site = new Site(yard, GroundPaths.of(yard));
            for (int group = 0; group < site.groups; group++) {
                BitSet strings = strings(site, group);
                int expected = 0;
                for (BitSet left = (BitSet) strings.clone(); !left.isEmpty(); ) {
                    BitSet family = family(site, left);
                    int pairs = pairs(site, family, family.nextSetBit(0), (BitSet) family.clone());
                    expected += Math.max(1, family.cardinality() - pairs);
                    paired += pairs;
                    left.andNot(family);
                }
                assertThat(PortNeed.of(site, group)).as(yard.name()).isEqualTo(expected);
            }
        }
        assertThat(paired).isGreaterThan(100);
    }

    /** The first of the strings that are left, and all that jumpers join to it. */
    private static BitSet family(Site site, BitSet left) {
        BitSet family = new BitSet();
        family.set(left.nextSetBit(0));
        for (int size = 0; size < family.cardinality(); ) {
            size = family.cardinality();
            for (int i = left.nextSetBit(0); i >= 0; i = left.nextSetBit(i + 1)) {
                for (Site.Wire wire : site.after[i]) {
                    if (family.get(i) || family.get(wire.to())) {
                        family.set(i);
                        family.set(wire.to());
                    }
                }
            }
        }
        return family;
    }

    /** The most strings from one on that are each given another behind it, tried in every way. */
    private static int pairs(Site site, BitSet strings, int from, BitSet free) {
        if (from < 0) {
            return 0;
        }
        int next = strings.nextSetBit(from + 1);
        int best = pairs(site, strings, next, free);
        for (Site.Wire wire : site.after[from]) {
            if (free.get(wire.to())) {
                free.clear(wire.to());
                best = Math.max(best, 1 + pairs(site, strings, next, free));
                free.set(wire.to());
            }
        }
        return best;
    }

    /**
     * Two strings that may follow a third, but not both, and many that follow none: up to 2,000 strings two ports for the
     * three; with more strings all that may follow count as following.
     */
    @Test
    void manyStringsAreNotPaired() {
        assertThat(ofStar(1_997)).isEqualTo(1_997 + 2);
        assertThat(ofStar(1_998)).isEqualTo(1_998 + 1);
    }

    private static long ofStar(int others) {
        Yard garden = TinyGarden.of(1);
        PixelKind kind = requireNonNull(garden.props().get(0).pixel());
        Point here = new Point(0, 0);
        Point far = new Point(50, 0);
        List<PixelString> star = List.of(
                new PixelString("star", 1, 10, here, here),
                new PixelString("star", 2, 10, here, far),
                new PixelString("star", 3, 10, here, far));
        List<PixelString> more = new ArrayList<>();
        for (int i = 1; i <= others; i++) {
            more.add(new PixelString("others", i, 10, here, here));
        }
        Yard yard = Changed.with(
                garden,
                "props",
                List.of(
                        Prop.ofStrings("star", kind, Follow.PROP, star),
                        Prop.ofStrings("others", kind, Follow.NONE, more)));
        return PortNeed.of(new Site(yard, GroundPaths.of(yard)), 0);
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
