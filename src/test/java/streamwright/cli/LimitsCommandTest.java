package streamwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LimitsCommandTest {
    @Test
    void tableOfAllKindsWithoutOptions() {
        Ran ran = Ran.of("limits");
        assertThat(ran.status()).isZero();
        assertThat(ran.err()).isEmpty();
        // 280 us of reset, 24 bits of 1.25 us: 1657 ... 546, the datasheet's timing in the capacity formula
        assertThat(ran.out().lines().filter(line -> line.contains("ws2812b")))
                .singleElement()
                .asString()
                .contains("1657 (921)", "1324 (921)", "1101 (921)", "824 (741)", "657 (591)", "546 (491)");
        assertThat(ran.out()).contains("at 20", "at 60");
    }

    @Test
    void oneKindAtOneRateShowsItsArithmetic() {
        Ran ran = Ran.of("limits", "--pixel", "ws2811", "--frame-rate", "40");
        assertThat(ran.status()).isZero();
        assertThat(ran.out()).contains("24,700 us", "24 bits of 1.25 us", "= a stream may carry", "740", "source");
    }

    @Test
    void pixelsAskForTheFrameRate() {
        Ran ran = Ran.of("limits", "--pixel", "ws2811", "--pixels", "900", "--json");
        assertThat(ran.status()).isZero();
        // 1e6 / (300 + 900 * 30) = 36.630; with a tenth spare 1,000 pixels must fit: 1e6 / 30,300 = 33.003
        assertThat(ran.out().replaceAll("\\s+", "")).contains("\"frameRate\":36.63,", "\"frameRateSpare\":33.0}");
    }

    @Test
    void jsonHasEveryFigure() {
        Ran ran = Ran.of("limits", "--pixel", "ws2811", "--frame-rate", "40", "--json");
        assertThat(ran.status()).isZero();
        assertThat(ran.out().replaceAll("\\s+", ""))
                .isEqualTo("[{\"pixel\":\"ws2811\",\"frameRate\":40.0,\"frame\":25000.0,\"reset\":300.0,\"prefix\":0.0,"
                        + "\"bits\":24,\"bitTime\":1.25,\"perPixel\":30.0,\"fit\":823,\"controller\":\"source-4\","
                        + "\"streamMost\":1024,\"spare\":0.1,\"limit\":740}]");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                // as near to ws2811, but only its end is missing
                "--pixel|ws2812|no pixel kind 'ws2812'. Did you mean 'ws2812b'?",
                "--controller|source-5|Did you mean 'source-4'?",
                "--frame-rate|0|--frame-rate 40",
                "--frame-rate|1001|--frame-rate 40",
                "--frame-rate|NaN|--frame-rate 40",
                "--frame-rate|fast|fast",
                "--spare|1.5|--spare 0.1",
                "--pixels|0|--pixels 900",
            })
    void wrongValuesAreToldWithWhatWouldBeRight(String option, String value, String told) {
        Ran ran = Ran.of("limits", option, value);
        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).contains(told);
    }

    @Test
    void rateAndPixelsTogetherAskNothing() {
        Ran ran = Ran.of("limits", "--frame-rate", "40", "--pixels", "900");
        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.err()).contains("not both");
    }
}
