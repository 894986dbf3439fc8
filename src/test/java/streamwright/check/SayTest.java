package streamwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Figures as the audit words them: no digit that says nothing, none missing that tells two apart. */
class SayTest {
    @Test
    void numbersHaveThreeDigitsBehindThePointAtMost() {
        assertThat(Say.number(1)).isEqualTo("1");
        assertThat(Say.number(120)).isEqualTo("120");
        assertThat(Say.number(1.2345)).isEqualTo("1.235");
        assertThat(Say.number(-0.0004)).isEqualTo("0");
        assertThat(Say.number(-2.5)).isEqualTo("-2.5");
    }

    @Test
    void figuresOfBrokenPlansStayShort() {
        assertThat(Say.number(999_999_999_999_999.0)).isEqualTo("999999999999999");
        assertThat(Say.number(1e15)).isEqualTo("1.0E15");
        assertThat(Say.number(-1e300)).isEqualTo("-1.0E300");
        assertThat(Say.number(Double.POSITIVE_INFINITY)).isEqualTo("no limit");
        assertThat(Say.number(Double.NEGATIVE_INFINITY)).isEqualTo("below all limits");
        assertThat(Say.number(Double.NaN)).isEqualTo("unknown");
    }

    @Test
    void oneIsOneAndAllElseAreMany() {
        assertThat(Say.count(1, "port", "ports")).isEqualTo("1 port");
        assertThat(Say.count(0, "port", "ports")).isEqualTo("0 ports");
    }

    @Test
    void aFigureStandsBesideItsLimitWithTheUnit() {
        assertThat(Say.over(2, 1.5, "A")).isEqualTo("2 A, more than 1.5 A");
        assertThat(Say.under(9, 10, "V")).isEqualTo("9 V, less than 10 V");
        assertThat(Say.other(7.5, 8, "")).isEqualTo("7.5, where it should be 8");
        assertThat(Say.other(7L, 8L, "pixels")).isEqualTo("7 pixels, where it should be 8 pixels");
        assertThat(Say.other(7L, 8L, "")).isEqualTo("7, where it should be 8");
    }

    @Test
    void digitsGrowUntilTwoFiguresDiffer() {
        assertThat(Say.over(1.0005, 1, "m")).isEqualTo("1.001 m, more than 1 m");
        assertThat(Say.over(1.0004, 1, "m")).isEqualTo("1.0004 m, more than 1 m");
        assertThat(Say.over(1.0000004, 1, "m")).isEqualTo("1.0000004 m, more than 1 m");
        assertThat(Say.over(1 + 1e-12, 1, "m")).isEqualTo("1 m, more than 1 m");
        assertThat(Say.other(1.23456, 1.23456, "")).isEqualTo("1.235, where it should be 1.235");
    }
}
