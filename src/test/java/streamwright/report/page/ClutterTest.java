package streamwright.report.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import streamwright.report.Demo;
import streamwright.report.walk.Walk;

/** Labels and flags of the map do not hide each other, and keep off lines where they can. */
class ClutterTest {
    private static Clutter.Wish at(double dx, double dy) {
        return new Clutter.Wish(100, 100, dx, dy, 40, 12);
    }

    /** Lines through the first choice, right of the place, then lines that pass it. */
    @ParameterizedTest
    @CsvSource({
        "100, 94, 300, 94, 1",
        "120, 0, 120, 300, 1",
        "0, 0, 300, 260, 1",
        "100, 80, 300, 80, 0",
        "60, 0, 60, 85, 0",
        "200, 100, 300, 100, 0"
    })
    void aLabelGoesWhereItCrossesNoLine(double x1, double y1, double x2, double y2, int choice) {
        Clutter clutter = new Clutter();
        clutter.draw(x1, y1, x2, y2);
        assertThat(clutter.place(List.of(at(8, 4), at(-48, 4)))).containsExactly(choice, 1);
    }

    @Test
    void aLabelCrossesALineRatherThanHide() {
        Clutter clutter = new Clutter();
        clutter.draw(0, 94, 300, 94);
        assertThat(clutter.place(List.of(at(8, 4)))).containsExactly(0, 1);
        // taken now, and closer by they still meet: both stand beside one point
        assertThat(clutter.place(List.of(at(8, 4)))).containsExactly(0, 16);
    }

    /** At zooms 1 and 2 the label is clear of the box, from 1.2 to 1.5 it would lie on it. */
    @Test
    void aLabelThatWouldBeCoveredBetweenTwoZoomsGoesElsewhere() {
        Clutter clutter = new Clutter();
        clutter.keepFree(new Clutter.Wish(100, 100, -20, -60, 40, 15));
        Clutter.Wish below = new Clutter.Wish(100, 60, -20, 6, 40, 12);
        Clutter.Wish left = new Clutter.Wish(100, 60, -78, 6, 40, 12);
        assertThat(clutter.place(List.of(below, left))).containsExactly(1, 1);
    }

    /** Two boxes that stand across each other from their places meet when those move apart. */
    @Test
    void aLabelThatWouldBeCoveredCloserByGoesElsewhere() {
        Clutter clutter = new Clutter();
        clutter.keepFree(new Clutter.Wish(100, 100, -20, -60, 40, 15));
        // 30 above that place: here the box hangs 60 higher, and closer by right on this label's right side
        Clutter.Wish right = new Clutter.Wish(70, 70, 8, 4, 40, 12);
        Clutter.Wish left = new Clutter.Wish(70, 70, -48, 4, 40, 12);
        assertThat(clutter.place(List.of(right, left))).containsExactly(1, 1);
    }

    /** A zoom that shows a label shows it whole, on paper too, and every flag beside it. */
    @ParameterizedTest
    @CsvSource({
        "home, 1",
        "home, 1.19",
        "home, 2",
        "home, 4",
        "trail, 1",
        "trail, 1.41",
        "trail, 1.68",
        "trail, 2",
        "trail, 4",
        "trail, 8"
    })
    void noLabelCoversAFlagOrAnotherLabelAtAnyZoom(String demo, double zoom) {
        Chart chart = Surveying.of(Demo.walk(demo));
        List<Seen> flags = chart.marks().stream()
                .filter(mark -> mark.kind().equals("board"))
                .map(mark -> {
                    double wide = Flags.width(mark.tag()) + 2 * Flags.CLEAR;
                    return new Seen(
                            mark.tag(), mark.x() * zoom - wide / 2, mark.y() * zoom + mark.dy() - 7.5, wide, 15);
                })
                .toList();
        List<Seen> labels = labels(chart, zoom);
        assertThat(labels).hasSizeGreaterThan(20);
        for (Seen label : labels) {
            assertThat(Stream.concat(flags.stream(), labels.stream())
                            .filter(other -> !other.equals(label) && other.meets(label))
                            .map(Seen::what))
                    .as(label.what)
                    .isEmpty();
        }
    }

    /** Sixteen strings of one feed stand around it, and their prop's name beside them all. */
    @ParameterizedTest
    @CsvSource({"home, 1", "home, 1.41", "home, 2", "home, 4", "trail, 1", "trail, 1.19", "trail, 2", "trail, 4"})
    void noLabelTouchesTheDotOfAString(String demo, double zoom) {
        Chart chart = Surveying.of(Demo.walk(demo));
        List<Seen> dots = chart.marks().stream()
                .filter(mark -> mark.kind().equals("string"))
                .map(mark -> new Seen(
                        mark.name(),
                        mark.x() * zoom + mark.dx() - Surveying.DOT,
                        mark.y() * zoom + mark.dy() - Surveying.DOT,
                        2 * Surveying.DOT,
                        2 * Surveying.DOT))
                .toList();
        assertThat(dots).hasSizeGreaterThan(60);
        List<Seen> labels = labels(chart, zoom);
        assertThat(labels).hasSizeGreaterThan(20);
        for (Seen label : labels) {
            assertThat(dots.stream().filter(label::meets).map(Seen::what))
                    .as(label.what)
                    .isEmpty();
        }
    }

    private static List<Seen> labels(Chart chart, double zoom) {
        return chart.texts().stream()
                .filter(text -> text.zoom() <= zoom)
                .map(text -> new Seen(
                        text.text(),
                        text.x() * zoom + text.dx(),
                        text.y() * zoom + text.dy() - Surveying.LETTERS,
                        Svg.width(text.text(), Surveying.LETTERS),
                        Surveying.LETTERS))
                .toList();
    }

    private record Seen(String what, double x, double y, double width, double height) {
        boolean meets(Seen other) {
            return x < other.x + other.width - 0.2
                    && other.x < x + width - 0.2
                    && y < other.y + other.height - 0.2
                    && other.y < y + height - 0.2;
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"home", "trail"})
    void everyFlagOfADemoYardIsSeen(String demo) {
        Walk walk = Demo.walk(demo);
        List<Seen> seen = new ArrayList<>();
        for (Chart.Mark mark : Surveying.of(walk).marks()) {
            if (mark.kind().equals("board")) {
                double wide = Flags.width(mark.tag());
                seen.add(new Seen(mark.tag(), mark.x() - wide / 2, mark.y() + mark.dy() - 7.5, wide, 15));
            } else if (mark.kind().equals("controller")) {
                seen.add(new Seen(mark.name(), mark.x() - 8, mark.y() - 8, 16, 16));
            }
        }
        assertThat(seen).hasSizeGreaterThan(walk.boards().size());
        for (Seen one : seen) {
            assertThat(seen.stream().filter(other -> !other.equals(one) && other.meets(one)))
                    .as(one.what)
                    .isEmpty();
        }
    }
}
