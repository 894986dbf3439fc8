package streamwright.report.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;
import streamwright.report.Demo;
import streamwright.report.walk.BoardStop;
import streamwright.report.walk.StringStop;
import streamwright.report.walk.Walk;

/** The page of the demo's home, used as people use it. */
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class PageInBrowserTest {
    @TempDir
    private static Path folder;

    private static Walk walk;
    private static Browser browser;

    @BeforeAll
    static void open() throws IOException {
        walk = Demo.walk("home");
        browser = Browser.open(Browser.written(PlanPage.of(walk).html(), folder), 1280, 1000);
    }

    @AfterAll
    static void close() {
        if (browser != null) {
            browser.close();
        }
    }

    /** First, before anything else is logged. */
    @Test
    @Order(1)
    void loadsFromAFileWithoutAComplaintAndAsksForNothingElse() {
        assertThat(browser.complaints()).isEmpty();
        assertThat(browser.requests())
                .isNotEmpty()
                .allMatch(url -> url.startsWith("data:") || (url.startsWith("file:") && url.endsWith("/plan.html")));
    }

    @Test
    void everyBoardAndStringIsThereAndOnTheMap() {
        List<String> cards = ids(".card");
        assertThat(cards)
                .containsExactlyElementsOf(walk.boards().stream().map(Names::id).toList());
        assertThat(ids(".told"))
                .containsExactlyElementsOf(
                        walk.strings().stream().map(Names::id).toList());
        List<String> marks = browser.driver.findElements(By.cssSelector(".yardmap a.mark")).stream()
                .map(mark -> String.valueOf(mark.getDomAttribute("data-for")))
                .toList();
        assertThat(marks).containsAll(cards).containsAll(ids(".told"));
        for (BoardStop board : walk.boards()) {
            String card = browser.driver.findElement(By.id(Names.id(board))).getText();
            assertThat(card)
                    .contains(
                            board.id(),
                            board.volts(),
                            board.place() + " of " + board.of(),
                            "not network",
                            "terminator");
        }
    }

    private static List<String> ids(String selector) {
        return browser.driver.findElements(By.cssSelector(selector)).stream()
                .map(each -> String.valueOf(each.getDomAttribute("id")))
                .toList();
    }

    @Test
    void pointingAtAMarkTellsItsAddressAndItsReason() {
        StringStop string = walk.strings().get(20);
        WebElement mark = browser.driver.findElement(By.cssSelector("a[data-for='" + Names.id(string) + "'] .feed"));
        new Actions(browser.driver).scrollToElement(mark).moveToElement(mark).perform();
        String reason = browser.driver
                .findElement(By.cssSelector("#" + Names.id(string) + " .note"))
                .getText();
        assertThat(reason).isNotEmpty();
        assertThat(readout()).contains(Names.address(string), reason);
    }

    private static String readout() {
        return browser.driver.findElement(By.id("readout")).getText();
    }

    @Test
    void theMapIsWalkedByKeys() {
        WebElement start = browser.driver.findElement(By.cssSelector(".yardmap a.mark[tabindex='0']"));
        browser.driver.executeScript("arguments[0].focus()", start);
        String first = readout();
        assertThat(first).contains(String.valueOf(start.getDomAttribute("aria-label")));
        for (Keys way : List.of(Keys.ARROW_DOWN, Keys.ARROW_LEFT, Keys.ARROW_RIGHT)) {
            browser.driver.switchTo().activeElement().sendKeys(way);
        }
        WebElement now = browser.driver.switchTo().activeElement();
        assertThat(now.getDomAttribute("data-for")).isNotEqualTo(start.getDomAttribute("data-for"));
        assertThat(readout()).isNotEqualTo(first).contains(String.valueOf(now.getDomAttribute("aria-label")));
        // one stop of the tab key for the whole map
        assertThat(browser.driver.findElements(By.cssSelector(".yardmap a.mark[tabindex='0']")))
                .hasSize(1);
    }

    @Test
    void keysZoomTheMapAndBack() {
        WebElement map = browser.driver.findElement(By.id("yardmap"));
        String whole = map.getDomAttribute("viewBox");
        WebElement start = browser.driver.findElement(By.cssSelector(".yardmap a.mark[tabindex='0']"));
        browser.driver.executeScript("arguments[0].focus()", start);
        start.sendKeys("+");
        assertThat(map.getDomAttribute("data-z")).isEqualTo("2");
        assertThat(map.getDomAttribute("viewBox")).isNotEqualTo(whole);
        start.sendKeys("0");
        assertThat(map.getDomAttribute("data-z")).isEqualTo("1");
    }

    @Test
    void searchFindsNamesChannelsAndSlotsAndEnterGoesThere() {
        StringStop string = walk.strings().get(30);
        long channel = string.use().channel() + 4;
        assertThat(hits("channel " + channel)).containsExactly(string.label());
        assertThat(hits("universe " + string.universe() + " slot " + string.slot()))
                .containsExactly(string.label());
        assertThat(hits(string.label())).contains(string.label());
        // a phrase is not taken for its words, which many others have too
        assertThat(hits("gable 2")).containsExactly("gable 2");
        assertThat(hits("2 gable").size()).isGreaterThan(1);
        assertThat(hits("no such thing anywhere")).isEmpty();
        assertThat(browser.driver.findElement(By.id("found")).getText()).isEqualTo("0 places");
        hits("channel " + channel);
        browser.driver.findElement(By.id("search")).sendKeys(Keys.ENTER);
        assertThat(browser.driver.getCurrentUrl()).endsWith("#" + Names.id(string));
        assertThat(hits("")).isEmpty();
    }

    private static List<String> hits(String question) {
        WebElement field = browser.driver.findElement(By.id("search"));
        field.clear();
        field.sendKeys(question.isEmpty() ? " " : question);
        return browser.driver.findElements(By.cssSelector("#hits a")).stream()
                .map(WebElement::getText)
                .toList();
    }

    @Test
    void axeFindsNoSeriousFault() throws IOException {
        try (InputStream in = PageInBrowserTest.class.getResourceAsStream("/axe.min.js")) {
            browser.driver.executeScript(new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8));
        }
        Object faults = browser.driver.executeAsyncScript("var done = arguments[arguments.length - 1];"
                + "axe.run(document, {resultTypes: ['violations']}).then(function (r) {"
                + "  done(r.violations.filter(function (v) { return v.impact === 'serious' || v.impact === 'critical'; })"
                + "    .map(function (v) { return v.id + ': ' + v.nodes.slice(0, 3).map(function (n) { return n.html; }).join(' | '); }));"
                + "}, function (e) { done(['axe failed: ' + e]); });");
        assertThat((List<?>) faults).isEmpty();
    }
}
