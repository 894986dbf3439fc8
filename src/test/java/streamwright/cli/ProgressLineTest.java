package streamwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

class ProgressLineTest {
    @Test
    void tellsElapsedCostBoundAndGap() {
        assertThat(ProgressLine.text(12.4, 200, 150)).isEqualTo("12 s  cost 200.00  bound 150.00  gap 25.0 %");
        assertThat(ProgressLine.text(3, 200, 0)).isEqualTo("3 s  cost 200.00  bound 0.00  nothing proved yet");
        assertThat(ProgressLine.text(0, Double.POSITIVE_INFINITY, 5)).isEqualTo("0 s  no plan yet");
    }

    @Test
    void leavesAnEmptyLineBehind() {
        StringWriter terminal = new StringWriter();
        ProgressLine line = new ProgressLine(new PrintWriter(terminal));
        line.show(10, 5);
        line.close();
        line.close();
        assertThat(terminal.toString()).matches("(?s).*\\r {70}\\r").doesNotContain("\n");
    }
}
