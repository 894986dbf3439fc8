package streamwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import streamwright.yard.Controller;
import streamwright.yard.ControllerModel;
import streamwright.yard.PixelKind;
import streamwright.yard.Point;
import streamwright.yard.Yard;

/** Pixels a stream refreshes in time, against figures derived from the timing in the chips' datasheets. */
class StreamLimitFactsTest {
    private static final Controller BOX =
            new Controller("box", new ControllerModel("any", 1, 4, 16, 9999, 65535, 510), new Point(0, 0), 1, 1);

    @ParameterizedTest
    @CsvSource({
        // WS2811 at 800 kbit/s: 24 bits of 1.25 us; the reset of 50 us is from memory
        "24, 1.25, 50, 0, 20, 1665",
        "24, 1.25, 50, 0, 30, 1109",
        "24, 1.25, 50, 0, 40, 831",
        "24, 1.25, 50, 0, 60, 553",
        // WS2811 at 400 kbit/s
        "24, 2.5, 50, 0, 40, 415",
        // WS2812B, later revisions: reset over 280 us
        "24, 1.25, 280, 0, 40, 824",
        // SK6812 with a white channel, reset 80 us, from memory
        "32, 1.25, 80, 0, 40, 623",
        // TM1814, from memory: a prefix of 64 bits before each frame
        "32, 1.25, 200, 80, 30, 826",
        "32, 1.25, 200, 80, 40, 618",
        "32, 1.25, 200, 80, 60, 409",
        // UCS8904B: 64 bits
        "64, 1.25, 50, 0, 40, 311",
        // a whole number of pixels to the last tenth of a microsecond is not lost to binary rounding
        "24, 1.25, 0, 0, 100, 333",
        "10, 0.1, 0, 0, 1000, 1000",
        "3, 0.1, 0.1, 0, 1000, 3333"
    })
    void holdsWhatTheTimingAllows(int bits, double bitTime, double reset, double prefix, double rate, int pixels) {
        PixelKind kind = new PixelKind("chip", 3, bits, bitTime, reset, prefix, 12, 9, 0.05, 0.05, 0.5, "see above");
        Yard yard = Edit.set(Edit.set(Lane.yard(), "frameRate", rate), "spare", 0.0);
        assertThat(StreamRules.limit(yard, BOX, kind)).isEqualTo(pixels);
    }

    @ParameterizedTest
    @CsvSource({"1024, 0.1, 740", "820, 0.1, 738", "500, 0.1, 450", "10, 0.3, 7", "1024, 1, 0"})
    void keepsItsShareSpare(int streamMost, double spare, int pixels) {
        Yard yard = Edit.set(Lane.yard(), "spare", spare);
        Controller box = Edit.set(BOX, "model.streamMost", streamMost);
        assertThat(StreamRules.limit(yard, box, Lane.RGB)).isEqualTo(pixels);
    }
}
