package streamwright.report.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import streamwright.report.Demo;

/** Nothing hangs out of the window to the side, on a desk or in a hand. */
class WideAndNarrowTest {
    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource({"home, 1400", "trail, 1000", "home, 500"})
    void thePageIsNoWiderThanItsWindow(String demo, int width) throws IOException {
        String html = PlanPage.of(Demo.walk(demo)).html();
        try (Browser browser = Browser.open(Browser.written(html, folder), width, 900)) {
            Object over = browser.driver.executeScript(
                    "return document.documentElement.scrollWidth - document.documentElement.clientWidth");
            assertThat(over).isEqualTo(0L);
        }
    }
}
