package streamwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Each allowance just met and just missed. */
class NearTest {
    @Test
    void lengthsAreOffByWritingAndByAMillionthAtMost() {
        assertThat(Near.lengths(0.0015, 0)).isTrue();
        assertThat(Near.lengths(0.0016, 0)).isFalse();
        assertThat(Near.lengths(-0.0016, 0)).isFalse();
        assertThat(Near.lengths(1_000_001, 1_000_000)).isTrue();
        assertThat(Near.lengths(999_999, 1_000_000)).isTrue();
        assertThat(Near.lengths(1_000_001.1, 1_000_000)).isFalse();
    }

    @Test
    void ampsAreOffByHalfAHundredthAndByAMillionthAtMost() {
        assertThat(Near.amps(0.005 + 1e-6, 0)).isTrue();
        assertThat(Near.amps(0.00501, 0)).isFalse();
        assertThat(Near.amps(1_000_001, 1_000_000)).isTrue();
        assertThat(Near.amps(1_000_001.1, 1_000_000)).isFalse();
    }

    @Test
    void moneyIsOffByHalfACentAtMost() {
        assertThat(Near.money(0.005 + 1e-6, 0)).isTrue();
        assertThat(Near.money(0.00501, 0)).isFalse();
        assertThat(Near.money(1e9 + 0.01, 1e9)).isFalse();
    }

    @Test
    void limitsAreBrokenBeyondAMillionthAlone() {
        assertThat(Near.over(1e-6, 0)).isFalse();
        assertThat(Near.over(2e-6, 0)).isTrue();
        assertThat(Near.under(-1e-6, 0)).isFalse();
        assertThat(Near.under(-2e-6, 0)).isTrue();
    }

    @Test
    void trustedLengthsStayFinite() {
        assertThat(Near.bounded(1e300)).isEqualTo(1e12);
        assertThat(Near.bounded(-1e300)).isEqualTo(-1e12);
        assertThat(Near.bounded(7)).isEqualTo(7);
    }
}
