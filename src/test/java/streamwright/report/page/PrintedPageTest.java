package streamwright.report.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import streamwright.report.Demo;

/** On paper two lid cards stand on a page, and no line of the title block breaks. */
class PrintedPageTest {
    /** CSS: 96 pixels to the inch. */
    private static final double MM = 96 / 25.4;

    /** Of A4, 297 mm high, half of what its margins of 12 mm leave. */
    private static final double HALF = (297 - 2 * 12) / 2.0 * MM;

    @TempDir
    private Path folder;

    /** Of the 34 cards of the trail, 20 take no more; those of seven strings and more, each with its reasons, do. */
    @ParameterizedTest
    @CsvSource({"home, 1.0", "trail, 0.5"})
    void mostCardsTakeHalfAPage(String demo, double most) throws IOException {
        try (Browser browser = printed(demo)) {
            List<Number> heights = numbers(
                    browser, "[...document.querySelectorAll('.card')].map(c => c.getBoundingClientRect().height)");
            assertThat(heights).hasSize(Demo.walk(demo).boards().size());
            long half =
                    heights.stream().filter(each -> each.doubleValue() <= HALF).count();
            assertThat((double) half / heights.size()).isGreaterThanOrEqualTo(most);
            assertThat(numbers(
                            browser,
                            "[...document.querySelectorAll('.block dd')].map(d => d.getBoundingClientRect().height"
                                    + " / parseFloat(getComputedStyle(d).lineHeight))"))
                    .hasSize(6)
                    .allSatisfy(lines -> assertThat(lines.doubleValue()).isLessThan(1.5));
            Object over = browser.driver.executeScript(
                    "return document.documentElement.scrollWidth - document.documentElement.clientWidth");
            assertThat(over).isEqualTo(0L);
        }
    }

    /** The page as it is laid out on A4, without its sheets of landscape. */
    private Browser printed(String demo) throws IOException {
        Path page = Browser.written(PlanPage.of(Demo.walk(demo)).html(), folder);
        Browser browser = Browser.open(page, 1000, 900);
        browser.driver.executeCdpCommand("Emulation.setEmulatedMedia", Map.of("media", "print"));
        browser.driver.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", (int) (186 * MM), "height", 1000, "deviceScaleFactor", 1, "mobile", false));
        return browser;
    }

    private static List<Number> numbers(Browser browser, String script) {
        Object list = browser.driver.executeScript("return " + script);
        return ((List<?>) Objects.requireNonNull(list))
                .stream().map(Number.class::cast).toList();
    }
}
