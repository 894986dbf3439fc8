package streamwright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import streamwright.yard.Rules;
import streamwright.yard.Units;

class WireTest {
    private static final Rules DEFAULTS = Rules.defaults(Units.M);

    /** The default rules with wire of ideal copper. */
    static Rules ideal(double mm2, double connector) {
        return new Rules(6, 3, 2, 60, 90, 1.1, 1, 0.3, mm2, mm2, 1, connector, 0.8);
    }

    /** IEC 60028:1925: 1/58 ohm mm2/m. */
    @Test
    void copperIsTheInternationalStandard() {
        assertThat(Wire.COPPER).isEqualTo(1.0 / 58, within(5e-7));
    }

    /**
     * Solid copper at 20 C in ohm/km, from the printed ohm/1000 ft of a public wire table (HyperPhysics, American wire
     * gauge), areas by the rule of ASTM B258.
     */
    @ParameterizedTest
    @CsvSource({
        "5.2612, 0.9989",
        "3.3088, 1.588",
        "2.0809, 2.525",
        "1.3087, 4.016",
        "0.8230, 6.385",
        "0.5176, 10.15",
        "0.3255, 16.14",
        "0.2047, 25.67"
    })
    void idealCopperMatchesTheWireTable(double mm2, double ohmsPerThousandFeet) {
        double both = Wire.ohms(ideal(mm2, 0), mm2, 304.8);
        assertThat(both / 2).isCloseTo(ohmsPerThousandFeet, Percentage.withPercentage(0.1));
    }

    /**
     * IEC 60228:2004, maximum ohm/km at 20 C of plain copper, class 5 (flexible), read in public copies of its tables:
     * the factor must lift every size to its maximum and none needlessly far beyond.
     */
    @ParameterizedTest
    @CsvSource({"0.5, 39.0", "0.75, 26.0", "1, 19.5", "1.5, 13.3", "2.5, 7.98", "4, 4.95"})
    void defaultFactorCoversFlexibleWire(double mm2, double most) {
        double one = Wire.ohms(DEFAULTS, mm2, 1000) / 2;
        assertThat(one).isBetween(most, most * 1.03);
    }

    /** 18 AWG solid, 10 m lead, 3 A, 20 C: 1.2569 V, by the constants above. */
    @Test
    void leadDropsWhatItsTwoConductorsDrop() {
        assertThat(3 * Wire.ohms(ideal(0.8230, 0), 0.8230, 10)).isCloseTo(1.2569, Percentage.withPercentage(0.1));
    }

    /** The IEC 60228 class 5 maxima give 2.394 V for 2.5 mm2, 15 m, 10 A and 1.330 V for 1.5 mm2, 10 m, 5 A. */
    @Test
    void flexibleWireIsNeverTakenForBetterThanItsMaximum() {
        assertThat(10 * Wire.ohms(DEFAULTS, 2.5, 15)).isBetween(2.394, 2.394 * 1.01);
        assertThat(5 * Wire.ohms(DEFAULTS, 1.5, 10)).isBetween(1.330, 1.330 * 1.01);
    }
}
