package streamwright.report.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import streamwright.report.Demo;
import streamwright.report.walk.StringStop;
import streamwright.report.walk.Walk;

class TapesTest {
    /** Measured on the drawing, every string is as long as it has pixels, and begins and ends once. */
    @ParameterizedTest
    @ValueSource(strings = {"home", "trail"})
    void everyStringIsOnItsTapeToScale(String demo) {
        Walk walk = Demo.walk(demo);
        List<Tape> tapes = Tapes.of(walk);
        assertThat(tapes)
                .hasSize(walk.cables().stream()
                        .mapToInt(cable -> cable.cable().streams().size())
                        .sum());
        for (StringStop string : walk.strings()) {
            double pixels = 0;
            int ends = 0;
            for (Tape tape : tapes) {
                for (Tape.Row row : tape.rows()) {
                    for (Tape.Span span : row.spans()) {
                        if (span.target().equals(Names.id(string))) {
                            pixels += (span.to() - span.from()) * tape.span() / Tape.WIDTH;
                            ends += (span.begins() ? 1 : 0) + (span.ends() ? 1 : 0);
                        }
                    }
                }
            }
            assertThat(pixels).isCloseTo(string.use().pixels(), within(0.01));
            assertThat(ends).isEqualTo(2);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"home", "trail"})
    void spansOfOneLineDoNotMeetAndNullsAreAllThere(String demo) {
        Walk walk = Demo.walk(demo);
        int nulls = 0;
        for (Tape tape : Tapes.of(walk)) {
            for (Tape.Row row : tape.rows()) {
                nulls += row.nulls().size();
                List<Tape.Span> spans = row.spans();
                for (int one = 0; one < spans.size(); one++) {
                    for (int other = one + 1; other < spans.size(); other++) {
                        assertThat(apart(spans.get(one), spans.get(other))).isTrue();
                    }
                }
            }
        }
        assertThat(nulls).isEqualTo(walk.plan().totals().nulls());
    }

    private static boolean apart(Tape.Span one, Tape.Span other) {
        return one.level() != other.level() || one.to() <= other.from() + 1 || other.to() <= one.from() + 1;
    }
}
