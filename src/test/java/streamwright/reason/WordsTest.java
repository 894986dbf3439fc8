package streamwright.reason;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import streamwright.plan.Reason;
import streamwright.plan.Rule;
import streamwright.yard.Units;

/** Sentences show figures as the tables beside them do. */
class WordsTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"3298.75 | 3,298.75", "999.999 | 1,000.00", "0.5 | 0.50", "-1234 | -1,234.00"})
    void moneyAndLengthsSetThousandsApart(double figure, String told) {
        assertThat(Words.two(figure)).isEqualTo(told);
        assertThat(new Words(Units.FT).length(figure)).isEqualTo(told + " ft");
    }

    @Test
    void countsSetThousandsApart() {
        assertThat(Words.whole(1320)).isEqualTo("1,320");
        assertThat(Words.count(82_465, "pixel", "pixels")).isEqualTo("82,465 pixels");
        assertThat(Words.count(1, "pixel", "pixels")).isEqualTo("1 pixel");
    }

    @Test
    void whatIsNotChosenDoesToo() {
        Reason.Instead broken =
                new Reason.Instead("one cable fewer", null, new Reason.Broken(Rule.STREAM_LIMIT.label(), 1320, 1024));
        Reason.Instead dearer = new Reason.Instead("a second cable", 1298.5, null);
        assertThat(new Words(Units.M).sentence("The plan is", List.of(broken, dearer)))
                .isEqualTo("The plan is: one cable fewer would put 1,320 pixels on a stream that holds 1,024"
                        + " (stream-limit); a second cable would cost 1,298.50 more.");
    }
}
