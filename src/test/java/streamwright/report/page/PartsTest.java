package streamwright.report.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import streamwright.plan.Change;

/** The parts from which other pages are made. */
class PartsTest {
    private static Document page(Part... parts) {
        return Jsoup.parse(new Page("Quay <Lane>", "what if", Map.of("rows", "3"), List.of(parts)).html());
    }

    @Test
    void aPageHoldsItsPartsInOrderAndEscapesItsTitle() {
        Document page = page(
                Part.prose("one", "First", List.of("A & B.")),
                new Grid(List.of("a", ">b"), List.of(List.of("x<y", "3"))).part("two", "Second", ""));
        assertThat(page.select("h1").text()).startsWith("Quay <Lane>");
        assertThat(page.select("main > section").eachAttr("id")).containsExactly("one", "two");
        assertThat(page.select("#one p").text()).isEqualTo("A & B.");
        assertThat(page.select("#two td").eachText()).containsExactly("x<y", "3");
        assertThat(page.select("#two td.n").eachText()).containsExactly("3");
    }

    @Test
    void aPlotSetsEachDotWhereItsFiguresSay() {
        Plot plot = new Plot(
                "boards",
                "cost",
                List.of(
                        new Plot.Series(
                                "40 a second",
                                true,
                                List.of(
                                        new Plot.Dot(12, 700, 650, "12 boards", false),
                                        new Plot.Dot(16, 600, 590, "16 boards", true))),
                        new Plot.Series("30 a second", false, List.of(new Plot.Dot(14, 500, Double.NaN, "", true)))));
        assertThat(plot.x(12)).isLessThan(plot.x(14));
        assertThat(plot.x(14) - plot.x(12)).isCloseTo(plot.x(16) - plot.x(14), within(1e-9));
        assertThat(plot.y(700)).isLessThan(plot.y(500));
        assertThat(plot.ticksUp().get(0)).isLessThanOrEqualTo(500);
        assertThat(plot.ticksUp().get(plot.ticksUp().size() - 1)).isGreaterThanOrEqualTo(700);
        Document page = page(plot.part("plot", "Cost against boards", "More boards, less wire."));
        assertThat(page.select("g > g > path.dot")).hasSize(3);
        assertThat(page.select("path.strong")).hasSize(2);
        // nothing is proved of the last
        assertThat(page.select("path.stem")).hasSize(2);
        assertThat(page.select("polyline.join")).hasSize(1);
        // told apart by shape, not by colour alone
        assertThat(page.select(".key path.dot").eachAttr("d"))
                .doesNotHaveDuplicates()
                .hasSize(2);
    }

    /** A line that climbs to the next dot would go through a label above this one. */
    @Test
    void labelsOfAPlotKeepOffTheLine() {
        Plot.Series valley = new Plot.Series(
                "all",
                true,
                List.of(
                        new Plot.Dot(14, 762, 698, "762", true),
                        new Plot.Dot(16, 696, 678, "696", true),
                        new Plot.Dot(17, 702, 698, "702", true)));
        assertThat(Plot.labelBelow(valley, 0)).isNegative();
        assertThat(Plot.labelBelow(valley, 1)).isPositive();
        assertThat(Plot.labelBelow(valley, 2)).isNegative();
        assertThat(Plot.labelBelow(new Plot.Series("all", false, valley.dots()), 1))
                .isNegative();
        Document page = page(new Plot("boards", "cost", List.of(valley)).part("plot", "Cost", ""));
        assertThat(page.select("g > g > text").eachAttr("y")).containsExactly("-6", "16", "-6");
    }

    @Test
    void aPlotOfOneDotOrNoneHasAxesAllTheSame() {
        Plot one = new Plot(
                "boards",
                "cost",
                List.of(new Plot.Series("one", false, List.of(new Plot.Dot(5, 0, Double.NaN, "free", true)))));
        assertThat(one.ticksAcross()).hasSizeGreaterThan(1);
        assertThat(Double.isFinite(one.y(0))).isTrue();
        assertThat(new Plot("boards", "cost", List.of()).ticksUp()).hasSizeGreaterThan(1);
    }

    @Test
    void changesAreListedInTheirOrderWithABoxEach() {
        Change first =
                new Change("hop", Map.of("board", "B2"), null, Map.of("from", "B1"), 25, "Lay a hop from B1 to B2.");
        Change second = new Change("setting", Map.of("board", "B2"), null, null, 1, "Set B2's <ID> to 5.");
        Document page = page(Changes.part("changes", "What to do", List.of(first, second), 26.0, 20.0));
        assertThat(page.select("#changes .lead").text())
                .isEqualTo("2 changes, 26 minutes of work in all; no repair takes less than 20 minutes.");
        assertThat(page.select("#changes li span:not(.n)").eachText())
                .containsExactly("Lay a hop from B1 to B2.", "Set B2's <ID> to 5.");
        assertThat(page.select("#changes input[type=checkbox]")).hasSize(2);
        assertThat(page(Changes.part("changes", "What to do", List.of(), null, null))
                        .select("#changes .lead")
                        .text())
                .isEqualTo("Nothing has to change.");
    }
}
