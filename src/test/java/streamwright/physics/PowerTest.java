package streamwright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import streamwright.yard.Costs;
import streamwright.yard.PixelKind;
import streamwright.yard.Rules;
import streamwright.yard.Units;

class PowerTest {
    private static final Costs COSTS = Costs.defaults(Units.M);
    private static final double NO_FUSE = Double.POSITIVE_INFINITY;

    /** Square millimetres of ideal copper of which a metre, there and back, has one ohm. */
    private static final double ONE_OHM = 2 * Wire.COPPER;

    private static PixelKind kind(double voltsLow, double amps, double pitch, double mm2) {
        return new PixelKind("lamp", 3, 24, 1.25, 50, 0, 12, voltsLow, amps, pitch, mm2, "invented");
    }

    private static Power power(Rules rules, PixelKind kind, double fuse) {
        return new Power(rules, COSTS, Units.M, 1, kind, fuse);
    }

    /**
     * 50 equal loads of 60 mA every 0.10 m on a 20 AWG pair fed at one end, the first at 0.10 m: the far end drops
     * r * i * N (N + 1) / 2 = 0.5096 V (IEC 60028 copper, ASTM B258 area).
     */
    @Test
    void equalLoadsDropTheHandbookVolts() {
        Power port = power(WireTest.ideal(0.5176, 0), kind(10, 0.06, 0.10, 0.5176), NO_FUSE);
        assertThat(12 - port.voltsLeast(0.10, new int[] {50}, new double[1], 1)).isEqualTo(0.5096, within(5e-5));
    }

    /** As loads grow many, an evenly loaded line drops half of what it would with all the load at its end. */
    @Test
    void evenLoadDropsHalfOfTheSameAtTheEnd() {
        int many = 100_000;
        Rules rules = WireTest.ideal(1, 0);
        Power port = power(rules, kind(0, 3.0 / many, 10.0 / many, 1), NO_FUSE);
        double atEnd = 3 * Wire.ohms(rules, 1, 10);
        assertThat(12 - port.voltsLeast(0, new int[] {many}, new double[1], 1))
                .isCloseTo(atEnd / 2, Percentage.withPercentage(0.01));
    }

    @Test
    void stringsCutFromOneRunDropTheSameWhenJoinedByItsOwnWire() {
        // jumpers as long as the pitch, of the string's wire, and no connectors: three strings are one
        Power port = power(WireTest.ideal(0.5176, 0), kind(10, 0.06, 0.10, 0.5176), NO_FUSE);
        double whole = port.voltsLeast(2, new int[] {60}, new double[1], 1);
        double cut = port.voltsLeast(2, new int[] {10, 20, 30}, new double[] {99, 0.10, 0.10}, 3);
        assertThat(cut).isEqualTo(whole, within(1e-12));
    }

    @Test
    void connectorDropsUnderTheWholeDraw() {
        PixelKind kind = kind(10, 0.05, 0.10, 0.5176);
        double without = power(WireTest.ideal(0.8, 0), kind, NO_FUSE).voltsLeast(1, new int[] {40}, new double[1], 1);
        double with = power(WireTest.ideal(0.8, 0.02), kind, NO_FUSE).voltsLeast(1, new int[] {40}, new double[1], 1);
        assertThat(without - with).isEqualTo(40 * 0.05 * 0.02, within(1e-12));
    }

    /**
     * A continuous load takes at most 80 % of its fuse (NEC 210.20(A)): 12 A of 15, 16 A of 20, 16.01 A not of 20, 7.2
     * A need 9; sizes met exactly must not be stepped over.
     */
    @ParameterizedTest
    @CsvSource({
        "12, 15, true",
        "12.01, 15, false",
        "16, 20, true",
        "16.01, 20, false",
        "7.2, 9, true",
        "7.2, 8.99, false",
        "3.6, 5, true",
        "6, 7.5, true",
        "8, 10, true",
        "8.01, 10, false",
        "8.01, 15, true"
    })
    void fuseCarriesFourFifths(double amps, double fuse, boolean fits) {
        Power port = power(Rules.defaults(Units.M), kind(0, amps, 0.1, 0.5), fuse);
        assertThat(port.fits(0, 1)).isEqualTo(fits);
        assertThat(port.fits(0, new int[] {1}, new double[1], 1)).isEqualTo(fits);
    }

    @Test
    void brightnessScalesTheDraw() {
        Power dim = new Power(Rules.defaults(Units.M), COSTS, Units.M, 0.25, kind(10, 0.06, 0.1, 0.5), 5);
        assertThat(dim.amps(100)).isEqualTo(1.5, within(1e-12));
    }

    @Test
    void feetAndMetresGiveTheSameVolts() {
        PixelKind kind = kind(10, 0.05, 0.10, 0.5);
        Power metres = power(Rules.defaults(Units.M), kind, 5);
        Power feet = new Power(Rules.defaults(Units.FT), Costs.defaults(Units.FT), Units.FT, 1, kind, 5);
        int[] pixels = {30, 20};
        double inFeet = feet.voltsLeast(5 / 0.3048, pixels, new double[] {0, 2 / 0.3048}, 2);
        assertThat(inFeet).isEqualTo(metres.voltsLeast(5, pixels, new double[] {0, 2}, 2), within(1e-12));
    }

    @Test
    void injectionInFeetCostsTheSameAsInMetres() {
        PixelKind kind = kind(10, 0.05, 0.10, 0.5);
        Power metres = power(Rules.defaults(Units.M), kind, 5);
        Power feet = new Power(Rules.defaults(Units.FT), Costs.defaults(Units.FT), Units.FT, 1, kind, 5);
        Feed inMetres = metres.feed(1, new int[] {100}, new double[1], new double[] {2}, 1)
                .orElseThrow();
        Feed inFeet = feet.feed(1 / 0.3048, new int[] {100}, new double[1], new double[] {2 / 0.3048}, 1)
                .orElseThrow();
        assertThat(inFeet.injections()).isEqualTo(inMetres.injections()).isNotEmpty();
        assertThat(inFeet.cost()).isEqualTo(inMetres.cost(), within(1e-9));
    }

    @Test
    void laterStringMayBeInjectedAtItsFirstPixelThePortItselfNot() {
        // fuse for two pixels, nothing else binds: strings of one and two pixels, the second's feed is next to the
        // board
        Power port = power(Rules.defaults(Units.M), kind(0, 1, 0.1, 0.5), 2.5);
        Optional<Feed> found = port.feed(1, new int[] {1, 2}, new double[2], new double[] {9, 0.3}, 2);
        assertThat(found.map(Feed::injections)).contains(List.of(new Feed.Place(1, 1)));
        assertThat(found.map(Feed::cost)).contains(6 + 0.3 * 1.9);
        assertThat(found.map(Feed::amps)).contains(1.0);
        assertThat(found.map(Feed::ampsAll)).contains(3.0);
    }

    @Test
    void leadTooLongForOnePixelIsBeyondHelp() {
        Power port = power(Rules.defaults(Units.M), kind(11.9, 1, 0.1, 0.5), 5);
        assertThat(port.feed(100, new int[] {2}, new double[1], new double[] {0.3}, 1))
                .isEmpty();
        assertThat(port.feed(0.3, new int[] {2}, new double[1], new double[] {0.3}, 1))
                .isPresent();
    }

    @Test
    void endlessWireFitsNothingAndBreaksNothing() {
        Power dark = new Power(Rules.defaults(Units.M), COSTS, Units.M, 0, kind(10, 0.05, 0.1, 0.5), 5);
        double endless = Double.POSITIVE_INFINITY;
        assertThat(dark.fits(endless, 5)).isFalse();
        assertThat(dark.feed(endless, new int[] {5}, new double[1], new double[] {endless}, 1))
                .isEmpty();
    }

    @Test
    void equallyCheapWaysUseTheFewestInjections() {
        Costs free = new Costs(0, 0, 0, 0, 0, 0);
        Power port = new Power(Rules.defaults(Units.M), free, Units.M, 1, kind(0, 1, 0.1, 0.5), 5);
        // four pixels a stretch: ten need three stretches
        Feed feed =
                port.feed(1, new int[] {10}, new double[1], new double[] {1}, 1).orElseThrow();
        assertThat(feed.injections()).hasSize(2);
    }

    /** One pixel of 1 A behind one ohm gets 11 of 12 V: enough where it needs just these. */
    @Test
    void voltsExactlyAtTheLowestAreEnough() {
        Power port = power(WireTest.ideal(ONE_OHM, 0), kind(11, 1, 0.1, 1), NO_FUSE);
        assertThat(port.fits(1, 1)).isTrue();
        assertThat(port.fits(1.000001, 1)).isFalse();
    }

    @Test
    void oneStringBehindALeadIsJudgedLikeAPortOfOneString() {
        Power port = power(Rules.defaults(Units.M), kind(11, 0.06, 0.1, 0.5), 4);
        int fitting = 0;
        for (int pixels = 1; pixels <= 80; pixels++) {
            for (double lead = 0.3; lead < 12; lead += 0.3) {
                boolean fits = port.fits(lead, pixels);
                assertThat(fits)
                        .as("%d pixels behind %s m", pixels, lead)
                        .isEqualTo(port.fits(lead, new int[] {pixels}, new double[1], 1));
                fitting += fits ? 1 : 0;
            }
        }
        // both answers must have been met: of 80 * 39 a good part
        assertThat(fitting).isBetween(300, 2800);
    }

    @Test
    void aStretchMayDrawTheShareOfItsFuse() {
        assertThat(power(Rules.defaults(Units.M), kind(10, 0.06, 0.1, 0.5), 5).ampsMost())
                .isEqualTo(4, within(1e-12));
    }

    /** A lead of 2 ohms and wires of half as many to where it ends; 10 pixels a metre apart; 0.1 A each, nothing shared. */
    @Test
    void eachPixelOnAWireOfItsOwnGetsTheMostThatAnyCan() {
        Rules rules = new Rules(6, 3, 2, 60, 90, 1.1, 1, 0.3, ONE_OHM, 2 * ONE_OHM, 1, 0, 0.8);
        Power port = power(rules, kind(10, 0.1, 1, 1), NO_FUSE);
        // the only pixel hangs on the lead
        assertThat(port.voltsFarthest(2, 1)).isEqualTo(12 - 0.1 * 2, within(1e-12));
        // the wire to the last of a few is better than the lead
        assertThat(port.voltsFarthest(2, 2)).isEqualTo(12 - 0.1 * 2, within(1e-12));
        // to the last of many it is worse: 2 m and nine steps of a metre
        assertThat(port.voltsFarthest(2, 10)).isEqualTo(12 - 0.1 * 11 / 2, within(1e-12));
    }

    /**
     * The second string is fed from afar, and neither the port nor a wire to it bears it: no way that the strings behind
     * it have to be fed mends that, however many were looked at.
     */
    @Test
    void whatNoWireReachesStaysDarkWhateverTheRestCosts() {
        Power port = power(WireTest.ideal(ONE_OHM, 0), kind(10, 1, 0.001, 1000), NO_FUSE);
        int[] pixels = {1, 1, 1, 1, 1};
        double[] near = {0.3, 1.9, 0.1, 0.9, 0.5};
        double[] far = {0.3, 3, 0.1, 0.9, 0.5};
        assertThat(port.feed(1.5, pixels, new double[5], near, 5).map(Feed::injections))
                .contains(List.of(new Feed.Place(1, 1), new Feed.Place(2, 1)));
        assertThat(port.feed(1.5, pixels, new double[5], far, 5)).isEmpty();
        // a better lead bears both
        assertThat(port.feed(0.9, pixels, new double[5], far, 5).map(Feed::injections))
                .contains(List.of(new Feed.Place(2, 1)));
    }
}
