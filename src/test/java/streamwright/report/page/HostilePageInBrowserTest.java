package streamwright.report.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import streamwright.report.Invented;
import streamwright.report.Invented.Planned;

class HostilePageInBrowserTest {
    private static final List<String> NAMES = List.of(
            "<script>window.caught=1</script>",
            "\"><svg onload=window.caught=1>",
            "' onmouseover='window.caught=1",
            "</style><script>window.caught=1</script>");

    @TempDir
    private Path folder;

    @Test
    void aNameIsTextEvenAfterASearchForIt() throws IOException {
        Planned planned = Invented.rows(NAMES.size(), NAMES::get);
        String html = PlanPage.of(planned.yard(), planned.plan()).html();
        try (Browser browser = Browser.open(Browser.written(html, folder), 1000, 800)) {
            assertThat(browser.complaints()).isEmpty();
            browser.driver.findElement(By.id("search")).sendKeys("window.caught");
            assertThat(browser.driver.findElements(By.cssSelector("#hits a")).stream()
                            .map(WebElement::getText))
                    .containsExactlyElementsOf(NAMES);
            assertThat(browser.driver.executeScript("return window.caught === undefined"))
                    .isEqualTo(true);
        }
    }
}
