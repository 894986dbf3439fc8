package streamwright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import streamwright.yard.PixelKind;

class RefreshTest {
    private static PixelKind kind(int bits, double bitTime, double reset, double prefix) {
        return new PixelKind("chip", 3, bits, bitTime, reset, prefix, 12, 10, 0.05, 0.1, 0.5, "see each check");
    }

    /** What the chips' datasheets say a cascade holds at least; quoted from public copies of them. */
    @ParameterizedTest
    @CsvSource({
        // WS2811 datasheet, Worldsemi: at 30 frames/s at least 512 points in low speed mode, 1024 in high speed mode
        "24, 2.5, 50, 30, 512",
        "24, 1.25, 50, 30, 1024",
        // WS2812B datasheet, Worldsemi: at 30 frames/s at least 1024 points
        "24, 1.25, 50, 30, 1024",
        // UCS1903N datasheet: 800 kbit/s, at 30 frames/s at least 1024 points; its 24 us reset is from memory
        "24, 1.25, 24, 30, 1024",
        // UCS8904B datasheet VER1.1: 400 points at 30 frames/s, 200 at 60; reset not stated, 50 us taken
        "64, 1.25, 50, 30, 400",
        "64, 1.25, 50, 60, 200"
    })
    void holdsWhatDatasheetsPromise(int bits, double bitTime, double reset, double rate, long atLeast) {
        assertThat(Refresh.pixels(kind(bits, bitTime, reset, 0), rate)).isGreaterThanOrEqualTo(atLeast);
    }

    /** UCS9812, maker's product page: 1.1 Mbit/s, 240 bits for 4 points, at least 600 points at 30 frames/s. */
    @Test
    void holdsFourPointsAChipAtElevenHundredKilobits() {
        assertThat(4 * Refresh.pixels(kind(240, 1 / 1.1, 0, 0), 30)).isEqualTo(608);
    }

    /**
     * Exact capacities by integer arithmetic in nanoseconds on the chips' figures. Those of SK6812, TM1814 and the
     * 48-bit chip are from memory of their datasheets, as are the 50 us of WS2811; 280 us of later WS2812B and 300 us
     * of WS2815 are in public copies of theirs.
     */
    @ParameterizedTest
    @CsvSource({
        // bits, bit time, reset, prefix, then frames/s and pixels
        "24, 1.25,  50,  0, 20, 1665", // WS2811 at 800 kbit/s, WS2812B
        "24, 1.25,  50,  0, 25, 1331",
        "24, 1.25,  50,  0, 30, 1109",
        "24, 1.25,  50,  0, 40, 831",
        "24, 1.25,  50,  0, 50, 665",
        "24, 1.25,  50,  0, 60, 553",
        "24, 2.5,   50,  0, 20, 832", // WS2811 at 400 kbit/s
        "24, 2.5,   50,  0, 25, 665",
        "24, 2.5,   50,  0, 30, 554",
        "24, 2.5,   50,  0, 40, 415",
        "24, 2.5,   50,  0, 50, 332",
        "24, 2.5,   50,  0, 60, 276",
        "24, 1.25, 280,  0, 20, 1657", // WS2812B, later revisions
        "24, 1.25, 280,  0, 25, 1324",
        "24, 1.25, 280,  0, 30, 1101",
        "24, 1.25, 280,  0, 40, 824",
        "24, 1.25, 280,  0, 50, 657",
        "24, 1.25, 280,  0, 60, 546",
        "24, 1.25,  80,  0, 20, 1664", // SK6812
        "24, 1.25,  80,  0, 25, 1330",
        "24, 1.25,  80,  0, 30, 1108",
        "24, 1.25,  80,  0, 40, 830",
        "24, 1.25,  80,  0, 50, 664",
        "24, 1.25,  80,  0, 60, 552",
        "32, 1.25,  80,  0, 20, 1248", // SK6812 with white
        "32, 1.25,  80,  0, 25, 998",
        "32, 1.25,  80,  0, 30, 831",
        "32, 1.25,  80,  0, 40, 623",
        "32, 1.25,  80,  0, 50, 498",
        "32, 1.25,  80,  0, 60, 414",
        "24, 1.25, 300,  0, 20, 1656", // WS2815
        "24, 1.25, 300,  0, 25, 1323",
        "24, 1.25, 300,  0, 30, 1101",
        "24, 1.25, 300,  0, 40, 823",
        "24, 1.25, 300,  0, 50, 656",
        "24, 1.25, 300,  0, 60, 545",
        "24, 1.25,  24,  0, 20, 1665", // UCS1903
        "24, 1.25,  24,  0, 25, 1332",
        "24, 1.25,  24,  0, 30, 1110",
        "24, 1.25,  24,  0, 40, 832",
        "24, 1.25,  24,  0, 50, 665",
        "24, 1.25,  24,  0, 60, 554",
        "32, 1.25, 200, 80, 30, 826", // TM1814 with its settings before the pixels
        "32, 1.25, 200, 80, 40, 618",
        "32, 1.25, 200, 80, 60, 409",
        "64, 1.25,  50,  0, 30, 416", // UCS8904B
        "64, 1.25,  50,  0, 40, 311",
        "64, 1.25,  50,  0, 60, 207",
        "48, 1.25, 280,  0, 20, 828", // 16 bits a colour
        "48, 1.25, 280,  0, 25, 662",
        "48, 1.25, 280,  0, 30, 550",
        "48, 1.25, 280,  0, 40, 412",
        "48, 1.25, 280,  0, 50, 328",
        "48, 1.25, 280,  0, 60, 273"
    })
    void holdsExactly(int bits, double bitTime, double reset, double prefix, double rate, long pixels) {
        PixelKind chip = kind(bits, bitTime, reset, prefix);
        assertThat(Refresh.pixels(chip, rate)).isEqualTo(pixels);
        assertThat(Refresh.frameRate(chip, pixels)).isGreaterThanOrEqualTo(rate);
        assertThat(Refresh.frameRate(chip, pixels + 1)).isLessThan(rate);
    }

    /**
     * 680 pixels, four universes of 170, on one stream at 40 frames/s are an everyday load: common practice, no source.
     * They must fit even with the longest reset of the list, that of WS2815, and a tenth kept free.
     */
    @Test
    void everydayLoadFits() {
        assertThat(Refresh.limit(kind(24, 1.25, 300, 0), 40, 1024, 0.10))
                .isEqualTo(740)
                .isGreaterThanOrEqualTo(680);
    }

    @Test
    void frameThatIsExactlyFullIsFull() {
        // 25 ms less 10 us are 833 pixels of 30 us to the nanosecond; a hair faster or a longer reset holds one less
        assertThat(Refresh.pixels(kind(24, 1.25, 10, 0), 40)).isEqualTo(833);
        assertThat(Refresh.pixels(kind(24, 1.25, 10, 0), 40.001)).isEqualTo(832);
        assertThat(Refresh.pixels(kind(24, 1.25, 10.001, 0), 40)).isEqualTo(832);
        assertThat(Refresh.pixels(kind(24, 1.25, 9.999, 0.001), 40)).isEqualTo(833);
    }

    @Test
    void frameShorterThanItsResetHoldsNothing() {
        assertThat(Refresh.pixels(kind(24, 1.25, 1000, 0), 1000)).isZero();
        assertThat(Refresh.pixels(kind(24, 1.25, 1001, 0), 1000)).isZero();
    }

    @Test
    void limitIsTheControllersLessTheSpareShare() {
        PixelKind chip = kind(24, 1.25, 50, 0);
        assertThat(Refresh.limit(chip, 30, 1024, 0)).isEqualTo(1024);
        assertThat(Refresh.limit(chip, 30, 1024, 0.10)).isEqualTo(921);
        // 0.07 * 100 is 7.000000000000001 in doubles: 93 must stay 93
        assertThat(Refresh.limit(chip, 30, 100, 0.07)).isEqualTo(93);
        assertThat(Refresh.limit(chip, 30, 1024, 1)).isZero();
        assertThat(Refresh.frameRate(chip, 831)).isEqualTo(1e6 / (831 * 30 + 50), within(1e-9));
    }
}
