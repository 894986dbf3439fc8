package streamwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import streamwright.yard.ControllerModel;
import streamwright.yard.PixelKind;

/** Capacities are arithmetic on the datasheets' timing: floor((1e6 / rate - reset - prefix) / (bits * bit time)). */
class StreamLimitTest {
    private static final ControllerModel SOURCE = new ControllerModel("source", 4, 4, 16, 1024, 65535, 510);

    private static PixelKind kind(double bitTime, int bits, double reset, double prefix) {
        return new PixelKind("kind", 3, bits, bitTime, reset, prefix, 12, 10, 0.05, 0.1, 0.5, "made for this test");
    }

    @ParameterizedTest
    @CsvSource({
        // 1.25 us a bit, 24 bits: worked by hand, 24,700 / 30 = 823.3
        "1.25, 24, 300, 0, 40, 823, 740",
        // the controller's 1,024 is the smaller: 1,024 * 0.9 = 921.6
        "1.25, 24, 50, 0, 20, 1665, 921",
        // settings ahead of the pixels: (33,333.3 - 280) / 40 = 826.3
        "1.25, 32, 200, 80, 30, 826, 743",
    })
    void limitIsTheDatasheetsArithmetic(
            double bitTime, int bits, double reset, double prefix, double rate, long fit, int limit) {
        StreamLimit found = StreamLimit.of(kind(bitTime, bits, reset, prefix), SOURCE, rate, 0.1);
        assertThat(found.fit()).isEqualTo(fit);
        assertThat(found.limit()).isEqualTo(limit);
    }

    @Test
    void stepsShowEveryFigureOnTheWay() {
        String steps = StreamLimit.of(kind(1.25, 24, 300, 0), SOURCE, 40, 0.1).steps();
        assertThat(steps.lines().map(line -> line.strip().replaceAll(" {2,}", "|")))
                .containsExactly(
                        "kind at 40 frames a second, on a stream of source",
                        "one frame|25,000 us|1,000,000 us / 40",
                        "- reset|300 us|quiet that ends a frame",
                        "- prefix|0 us|settings sent before the pixels",
                        "= left for pixels|24,700 us",
                        "/ one pixel|30 us|24 bits of 1.25 us",
                        "= pixels that fit|823|rounded down",
                        "controller's limit|1,024|whatever the frame rate",
                        "smaller of the two|823",
                        "- kept spare|10 %",
                        "= a stream may carry|740|rounded down");
    }

    @ParameterizedTest
    @CsvSource({"1, 0.1", "740, 0.1", "741, 0.1", "823, 0", "921, 0.1", "1024, 0", "500, 0.33"})
    void rateIsTheHighestThatHoldsThePixels(int pixels, double spare) {
        PixelKind kind = kind(1.25, 24, 300, 0);
        double rate = StreamRate.of(kind, SOURCE, pixels, spare).frameRateSpare();
        assertThat(StreamLimit.of(kind, SOURCE, rate, spare).limit()).isGreaterThanOrEqualTo(pixels);
        assertThat(StreamLimit.of(kind, SOURCE, rate + 0.02, spare).limit()).isLessThan(pixels);
    }

    @Test
    void noRateHoldsMoreThanTheControllerDoes() {
        PixelKind kind = kind(1.25, 24, 300, 0);
        assertThat(StreamRate.of(kind, SOURCE, 922, 0.1).frameRateSpare()).isZero();
        assertThat(StreamRate.of(kind, SOURCE, 922, 1).frameRateSpare()).isZero();
        // 1e6 / (300 + 922 * 30) = 35.76
        assertThat(StreamRate.of(kind, SOURCE, 922, 0.1).frameRate()).isEqualTo(35.76);
    }
}
