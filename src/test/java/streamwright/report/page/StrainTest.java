package streamwright.report.page;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StrainTest {
    /** 737 of 740 pixels is 99.6 %: a stream that has room for three more is not full. */
    @ParameterizedTest
    @CsvSource({"737, 740, 99", "740, 740, 100", "600, 740, 81", "741, 740, 100", "760, 740, 103"})
    void onlyALimitThatIsMetIsAHundredPercent(double figure, double limit, long percent) {
        assertThat(new Strain("stream", "shed 1", "", "", figure / limit, false).percent())
                .isEqualTo(percent);
    }
}
