package streamwright.report.whatif;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;

/** Words and page of comparisons that were made up. */
class WhatIfPageTest {
    private static WhatIf row(int boards, double rate, double cost, double bound) {
        return new WhatIf(
                boards,
                rate,
                0.1,
                "quad",
                "feasible",
                cost,
                bound,
                1 - bound / cost,
                100.0 + boards,
                50.0,
                2,
                0.9,
                false,
                null,
                "");
    }

    private static WhatIf impossible(int boards, double rate, String text) {
        return WhatIf.unplanned(boards, rate, 0.1, "quad", new WhatIf.Breaks("board-count", 44, 4.0 * boards), text);
    }

    private static final List<WhatIf> ROWS = WhatIfWords.told(WhatIf.marked(List.of(
            impossible(10, 40, "43 strings need 41 ports"),
            impossible(11, 40, "43 strings need 44 ports"),
            row(12, 40, 700, 650),
            row(13, 40, 600, 590),
            row(14, 40, 640, 610),
            row(12, 50, 800, 0),
            row(13, 50, 750, 720),
            row(14, 50, 690, 650),
            row(15, 50, 700, 655))));

    @Test
    void eachCurveHasItsKneeAndItsFirstImpossibleRow() {
        assertThat(WhatIfRemarks.of(ROWS))
                .containsExactly(
                        "The knee is at 13 boards, 40 frames a second: from 12 boards, 40 frames a second to it 100.00"
                                + " is saved, from it to 14 boards, 40 frames a second 40.00 is added.",
                        "The first row that cannot be is 11 boards, 40 frames a second: 43 strings need 44 ports.",
                        "The knee is at 14 boards, 50 frames a second: from 13 boards, 50 frames a second to it 60.00"
                                + " is saved, from it to 15 boards, 50 frames a second 10.00 is added.");
    }

    /** 640 is 40 more than 600, and no plan of 14 boards costs less than 610: 10 of it is sure. */
    @Test
    void aRowTellsWhatIsProvedOfItsDifference() {
        assertThat(ROWS.get(4).text())
                .isEqualTo("40.00 more than 13 boards, 40 frames a second, of which 10.00 is proved");
        assertThat(ROWS.get(5).text()).endsWith("which the search leaves open: no difference is proved");
        assertThat(ROWS.get(3).text()).isEqualTo("the cheapest row found");
    }

    /** Two rows of one cost are not both the cheapest. */
    @Test
    void aRowThatCostsTheSameSaysAsWhich() {
        List<WhatIf> rows = WhatIfWords.told(List.of(row(8, 30, 500, 480), row(8, 40, 500, 490), row(8, 50, 520, 500)));
        assertThat(rows.get(0).text()).isEqualTo("the cheapest row found");
        assertThat(rows.get(1).text()).isEqualTo("costs the same as 30 frames a second");
        assertThat(rows.get(2).text())
                .isEqualTo("20.00 more than 30 frames a second, which the search leaves open: no difference is proved");
    }

    /** Frame rates alone are a curve too, in their order and not in that in which they were asked for. */
    @Test
    void theKneeOfFrameRatesFollowsTheRates() {
        assertThat(WhatIfRemarks.of(List.of(row(8, 50, 520, 0), row(8, 30, 500, 0), row(8, 40, 501, 0))))
                .containsExactly("The knee is at 40 frames a second: from 30 frames a second to it 1.00 is added,"
                        + " from it to 50 frames a second 19.00 is added.");
    }

    @Test
    void thePagePlotsEachCurveAndListsEachRow() {
        Document page = Jsoup.parse(WhatIfPage.of("Quay <Lane>", "m", ROWS).html());
        assertThat(page.select("h1").text()).startsWith("Quay <Lane>");
        assertThat(page.select("#cost g > g > path.dot")).hasSize(7);
        // of one row nothing is proved
        assertThat(page.select("#cost path.stem")).hasSize(6);
        assertThat(page.select("#cable path.stem")).isEmpty();
        assertThat(page.select("#cost .key span").eachText())
                .containsExactly("40 frames a second", "50 frames a second");
        assertThat(page.select("#rows tbody tr")).hasSize(9);
        assertThat(page.select("#answer p")).hasSize(3);
        assertThat(page.select("#rows th").get(6).text()).isEqualTo("cost");
    }
}
