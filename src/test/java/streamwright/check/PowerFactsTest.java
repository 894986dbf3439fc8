package streamwright.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import streamwright.plan.Injection;
import streamwright.plan.StringUse;
import streamwright.yard.Follow;
import streamwright.yard.PixelKind;
import streamwright.yard.PixelString;
import streamwright.yard.Point;
import streamwright.yard.Prop;
import streamwright.yard.Units;
import streamwright.yard.Yard;

/** Volts of a stretch against worked drops along copper of standard gauges (ASTM B258 sizes, IEC 60028 resistivity). */
class PowerFactsTest {
    private static final Point BOARD = new Point(0, 0);
    private static final double AWG_18 = 0.8230;
    private static final double AWG_20 = 0.5176;

    /** Bare copper: no factor, no connectors, no slack. */
    private static Yard bare(Units units) {
        Yard yard = Edit.set(Edit.set(Lane.yard(), "units", units), "brightness", 1.0);
        yard = Edit.set(Edit.set(yard, "rules.wireFactor", 1.0), "rules.connector", 0.0);
        return Edit.set(yard, "rules.leadWireMm2", AWG_18);
    }

    private static PixelKind kind(double amps, double pitch, double mm2) {
        return new PixelKind("chip", 3, 24, 1.25, 50, 0, 12, 9, amps, pitch, mm2, "worked examples");
    }

    private static Power.Fed fed(Yard yard, PixelKind kind, int pixels, double away, List<Injection> injections) {
        PixelString string = new PixelString("line", 1, pixels, new Point(away, 0), new Point(away, 0));
        Prop prop = Prop.ofStrings("line", kind, Follow.NONE, List.of(string));
        StringUse use = new StringUse("line", 1, 0, 1, pixels, 1, away);
        Lengths lengths = new Lengths(yard);
        SeenString seen = new SeenString("line", use, prop, string, true, lengths.lead(BOARD, string.feed()));
        return new Power(yard, lengths).fed("port", BOARD, List.of(seen), injections);
    }

    private static double drop(Power.Fed fed, int stretch) {
        return 12 - fed.stretches().get(stretch).volts();
    }

    @Test
    void leadOfGauge18() {
        // 10 m of 18 AWG, 20 m of loop, 3 A at 20 C: 1.2569 V
        assertThat(drop(fed(bare(Units.M), kind(3, 1, AWG_18), 1, 10, List.of()), 0))
                .isCloseTo(1.2569, within(0.0013));
    }

    @Test
    void fiftyLoadsOfGauge20() {
        // 50 loads of 60 mA every 0.10 m of 20 AWG, the first at 0.10 m: 0.5096 V at the last, r i N (N + 1) / 2
        Yard yard = Edit.set(bare(Units.M), "rules.leadWireMm2", AWG_20);
        assertThat(drop(fed(yard, kind(0.060, 0.10, AWG_20), 50, 0.10, List.of()), 0))
                .isCloseTo(0.5096, within(0.0005));
    }

    @Test
    void pitchIsInMetresAlsoInAYardInFeet() {
        double feet = 0.10 / 0.3048;
        Yard yard = Edit.set(bare(Units.FT), "rules.leadWireMm2", AWG_20);
        Power.Fed fed = fed(yard, kind(0.060, 0.10, AWG_20), 50, feet, List.of(new Injection("line", 1, 26)));
        // 25 loads are left to the port
        assertThat(drop(fed, 0)).isCloseTo(0.5096 * (25 * 26.0) / (50 * 51), within(0.0003));
        // the injection's wire reaches the 26th pixel, 2.5 m along the string
        assertThat(fed.stretches().get(1).wire()).isCloseTo(feet + 2.5 / 0.3048, within(1e-9));
    }

    @Test
    void connectorAndFactorCountOnceAWire() {
        // 2.5 mm2 class 5, 15 m, 10 A: 2.394 V by IEC 60228 (7.98 ohm/km), here by a factor on the ideal resistance
        double factor = 7.98 / (17.241 / 2.5);
        Yard yard = Edit.set(Edit.set(bare(Units.M), "rules.leadWireMm2", 2.5), "rules.wireFactor", factor);
        yard = Edit.set(yard, "rules.connector", 0.02);
        assertThat(drop(fed(yard, kind(10, 1, 1), 1, 15, List.of()), 0)).isCloseTo(2.394 + 0.2, within(0.001));
    }

    @Test
    void misplacedInjectionsFeedNothing() {
        List<Injection> wrong = List.of(
                new Injection("line", 1, 1),
                new Injection("line", 1, 0),
                new Injection("line", 1, 51),
                new Injection("line", 2, 5),
                new Injection("other", 1, 5));
        Power.Fed fed = fed(bare(Units.M), kind(0.06, 0.1, AWG_20), 50, 1, wrong);
        assertThat(fed.misplaced()).isEqualTo(wrong);
        assertThat(fed.stretches()).hasSize(1);
    }
}
