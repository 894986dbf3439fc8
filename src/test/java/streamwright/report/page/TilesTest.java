package streamwright.report.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import streamwright.report.Demo;
import streamwright.report.Invented;
import streamwright.report.walk.Walk;

class TilesTest {
    private static Chart rows(int strings) {
        var planned = Invented.rows(strings, s -> "lantern " + (s + 1));
        return Surveying.of(Walk.of(planned.yard(), planned.plan()));
    }

    @Test
    void aYardThatCanBeReadOnOneSheetHasNoParts() {
        assertThat(rows(4).tiles()).isEmpty();
    }

    @Test
    void everyMarkOfALargeYardIsOnAPart() {
        Chart chart = Surveying.of(Demo.walk("trail"));
        assertThat(chart.tiles()).isNotEmpty();
        for (Chart.Mark mark : chart.marks()) {
            assertThat(chart.tiles())
                    .anyMatch(tile -> mark.x() >= tile.x()
                            && mark.x() <= tile.x() + tile.width()
                            && mark.y() >= tile.y()
                            && mark.y() <= tile.y() + tile.height());
        }
    }

    /** A part at zoom 2 or 4 is that share of the drawing wide; its boards stand in its heading. */
    @Test
    void partsAreLargerAndTellTheirBoards() {
        Chart chart = Surveying.of(Demo.walk("trail"));
        for (Chart.Tile tile : chart.tiles()) {
            assertThat(tile.zoom()).isGreaterThan(1);
            assertThat(tile.width()).isLessThan(0.6 * chart.width());
            assertThat(tile.heading()).startsWith("x ").contains(", y ");
        }
        List<String> boards = chart.marks().stream()
                .filter(mark -> mark.kind().equals("board"))
                .map(Chart.Mark::tag)
                .toList();
        assertThat(boards)
                .isNotEmpty()
                .allSatisfy(board -> assertThat(chart.tiles())
                        .anyMatch(tile -> (tile.heading() + ",").matches(".*[ ]" + board + ",.*")));
    }

    /** A trail is three times as wide as high: halves of it fill a sheet each, quarters would leave theirs half empty. */
    @Test
    void aFlatYardIsCutAcrossOnly() {
        Chart chart = Surveying.of(Demo.walk("trail"));
        assertThat(chart.height() / chart.width()).isBetween(0.28, 0.35);
        assertThat(chart.tiles())
                .hasSize(2)
                .allSatisfy(tile -> assertThat(tile.height()).isGreaterThanOrEqualTo(chart.height()));
    }

    /** No flag hangs out of the drawing. */
    @Test
    void flagsStayOnTheDrawing() {
        for (String demo : List.of("home", "trail")) {
            Chart chart = Surveying.of(Demo.walk(demo));
            chart.marks().stream()
                    .filter(mark -> mark.kind().equals("board"))
                    .forEach(mark ->
                            assertThat(mark.y() + mark.dy()).as(mark.name()).isBetween(7.5, chart.height() - 7.5));
        }
    }
}
