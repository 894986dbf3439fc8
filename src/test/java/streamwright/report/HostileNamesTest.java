package streamwright.report;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import streamwright.report.Invented.Planned;
import streamwright.report.Sheets.Kind;

/** Names that no yard file can hold, but that other callers could bring: they stay text everywhere. */
class HostileNamesTest {
    private static final List<String> NAMES = List.of(
            "=1+1",
            "<script>alert(1)</script>",
            "\"><img src=x onerror=alert(1)>",
            "@SUM(A1:A9)",
            "+49",
            "-2",
            "</style><script>alert(2)</script>",
            "{{7*7}} ${7*7} &lt;b&gt;");

    private static final Planned PLANNED = Invented.rows(NAMES.size(), NAMES::get);

    @Test
    void noCellBeginsLikeAFormula() {
        Map<String, byte[]> files = Sheets.of(PLANNED.yard(), PLANNED.plan(), EnumSet.allOf(Kind.class));
        for (Kind kind : EnumSet.complementOf(EnumSet.of(Kind.PAGE, Kind.WORKBOOK))) {
            for (Map<String, String> row : ListsReadBackTest.rows(new String(files.get(kind.file()), UTF_8))) {
                assertThat(row.values()).noneMatch(cell -> cell.matches("(?s)\\s*[=+@].*"));
                assertThat(row.values()).noneMatch(cell -> cell.matches("(?s)-.*") && !cell.matches("-[0-9.]+"));
            }
        }
        List<Map<String, String>> channels = ListsReadBackTest.rows(new String(files.get("channels.csv"), UTF_8));
        assertThat(channels.get(0)).containsEntry("prop", "'=1+1");
        assertThat(channels.get(1)).containsEntry("prop", "<script>alert(1)</script>");
        assertThat(channels.get(5)).containsEntry("prop", "'-2");
    }

    @Test
    void thePageShowsThemAsTheyAre() {
        String html = new String(
                Sheets.of(PLANNED.yard(), PLANNED.plan(), EnumSet.of(Kind.PAGE)).get("plan.html"), UTF_8);
        Document page = Jsoup.parse(html);
        assertThat(page.select("script")).hasSize(1);
        assertThat(page.select("img")).isEmpty();
        assertThat(page.select("[onerror]")).isEmpty();
        List<String> shown = page.select(".run .string b").eachText();
        assertThat(shown).containsExactlyInAnyOrderElementsOf(NAMES);
    }
}
