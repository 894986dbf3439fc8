package streamwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import streamwright.report.Invented.Planned;
import streamwright.report.Sheets.Kind;

/** Boards of mains outputs and of panels beside one of strings. */
class MainsAndPanelTest {
    private static final Planned PLANNED = Invented.mainsAndPanel();
    private static final Map<String, byte[]> FILES =
            Sheets.of(PLANNED.yard(), PLANNED.plan(), EnumSet.allOf(Kind.class));

    private static Element card(String board) {
        String html = new String(FILES.get("plan.html"), java.nio.charset.StandardCharsets.UTF_8);
        return Objects.requireNonNull(Jsoup.parse(html).getElementById("board-" + board));
    }

    private static List<Map<String, String>> rows(String file) {
        return ListsReadBackTest.rows(new String(FILES.get(file), java.nio.charset.StandardCharsets.UTF_8));
    }

    @Test
    void aMainsCardSaysFirstThatMainsKills() {
        String text = card("B2").text();
        assertThat(card("B2").select(".volts").text()).isEqualTo("mains");
        assertThat(text).contains("Mains can kill.", "flood 4 channel 154", "at most 2 A an output", "not network");
        assertThat(text.indexOf("Mains can kill.")).isLessThan(text.indexOf("flood 1"));
        assertThat(text.indexOf("licensed practice decide")).isLessThan(text.indexOf("2 A an output"));
    }

    /** 80 pixels of 40 mA. */
    @Test
    void aPanelCardTellsItsPartsAndItsAmps() {
        assertThat(card("B3").text())
                .contains(
                        "sign a panel of 80 pixels",
                        "Stream 1 from start pixel 53, 40 pixels, from channel 157",
                        "Stream 2 from start pixel 1, 40 pixels, from channel 277",
                        "3.2 A at 12 V");
        assertThat(card("B3").select(".id svg").attr("aria-label")).contains("rotary switch at 3 (ID 3)");
    }

    @Test
    void theListsHaveThemToo() {
        assertThat(rows("channels.csv").stream()
                        .map(row -> row.get("prop") + " " + row.get("port") + " " + row.get("start channel")))
                .containsExactly(
                        "flood output 1 151",
                        "flood output 2 152",
                        "flood output 3 153",
                        "flood output 4 154",
                        "arch 1 1",
                        "sign panel 1 157",
                        "sign panel 1 277");
        assertThat(rows("boards.csv").stream().map(row -> row.get("volts"))).containsExactly("mains", "12 V", "12 V");
        // the last of the panel: channel 277 and 39 pixels of 3 more
        assertThat(rows("commissioning.csv").stream().map(row -> row.get("send at full")))
                .contains("channel 151", "channels 157-159", "channels 394-396");
    }

    @Test
    void theCautionStandsFirstInEveryListWithMainsAndNothingIsSaidOfAmpsThatNobodyKnows() {
        for (String file : List.of("channels.csv", "boards.csv", "commissioning.csv")) {
            assertThat(rows(file).get(0).get("caution")).as(file).isEqualTo(Cautions.line());
        }
        assertThat(rows("boards.csv").stream().map(row -> row.get("amps at show")))
                .startsWith("")
                .endsWith("");
    }

    /** Four outputs on a channel each, and two halves of the panel of 40 pixels with three channels a pixel. */
    @Test
    void searchFindsOutputsAndPanelsByNameAndChannel() {
        assertThat(card("B2").select("[data-c0]").eachAttr("data-c0")).containsExactly("151", "152", "153", "154");
        assertThat(card("B2").select("[data-find^=flood 3 ]")).hasSize(1);
        assertThat(card("B3").select("[data-find^=sign ]").eachAttr("data-c1")).containsExactly("276", "396");
    }
}
