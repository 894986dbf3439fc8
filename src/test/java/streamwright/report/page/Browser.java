package streamwright.report.page;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.logging.Level;
import java.util.stream.Stream;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;

/** A browser without a window, as Debian's packages chromium and chromium-driver bring it. */
final class Browser implements AutoCloseable {
    private static final List<String> FLAGS = List.of(
            "--headless",
            "--no-sandbox",
            "--disable-gpu",
            "--no-first-run",
            "--disable-background-networking",
            "--disable-component-update",
            "--disable-sync",
            "--force-prefers-reduced-motion");

    final ChromeDriver driver;

    private Browser(ChromeDriver driver) {
        this.driver = driver;
    }

    /** Opens a page in a window of that size; skips the test, saying so, where there is no browser. */
    static Browser open(Path page, int width, int height) {
        Optional<File> chromium = found("chromium");
        Optional<File> chromedriver = found("chromedriver");
        assumeTrue(
                chromium.isPresent() && chromedriver.isPresent(),
                "Skipped: there is no chromium and chromedriver here, so the page is not tried in a browser.");
        LoggingPreferences logs = new LoggingPreferences();
        logs.enable(LogType.BROWSER, Level.ALL);
        logs.enable(LogType.PERFORMANCE, Level.ALL);
        ChromeOptions options = new ChromeOptions();
        options.setBinary(chromium.get());
        options.addArguments(FLAGS);
        options.addArguments("--window-size=" + width + "," + height);
        options.setCapability("goog:loggingPrefs", logs);
        options.setPageLoadTimeout(Duration.ofMinutes(4));
        options.setScriptTimeout(Duration.ofMinutes(4));
        ChromeDriverService service = new ChromeDriverService.Builder()
                .usingDriverExecutable(chromedriver.get())
                .build();
        Browser browser = new Browser(new ChromeDriver(service, options));
        browser.driver.get(page.toUri().toString());
        return browser;
    }

    private static Optional<File> found(String program) {
        String path = Optional.ofNullable(System.getenv("PATH")).orElse("");
        return Stream.of(path.split(File.pathSeparator))
                .map(folder -> Path.of(folder, program))
                .filter(Files::isExecutable)
                .map(Path::toFile)
                .findFirst();
    }

    /** What the page complained of. */
    List<String> complaints() {
        return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
                .filter(entry -> entry.getLevel().intValue() >= Level.WARNING.intValue())
                .map(entry -> entry.getMessage())
                .toList();
    }

    /** Every address that was asked for since the page was opened. */
    List<String> requests() {
        return driver.manage().logs().get(LogType.PERFORMANCE).getAll().stream()
                .map(entry -> entry.getMessage())
                .filter(message -> message.contains("\"Network.requestWillBeSent\""))
                .map(message -> message.replaceAll("(?s).*\"request\":\\{.*?\"url\":\"([^\"]*)\".*", "$1"))
                .toList();
    }

    static Path written(String html, Path folder) throws IOException {
        return Files.writeString(folder.resolve("plan.html"), html);
    }

    @Override
    public void close() {
        driver.quit();
    }
}
