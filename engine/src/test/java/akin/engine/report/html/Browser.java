package akin.engine.report.html;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.logging.Level;
import java.util.stream.Stream;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LoggingPreferences;

/** Debian's Chromium, without a window and without a network. */
final class Browser implements AutoCloseable {

    private static final Path PROGRAM = Path.of("/usr/bin/chromium");
    private static final Path DRIVER = Path.of("/usr/bin/chromedriver");

    private final Path profile;
    private final ChromeDriver driver;

    private Browser(Path profile, ChromeDriver driver) {
        this.profile = profile;
        this.driver = driver;
    }

    /** Starts it. Where it is not installed the tests that want it are skipped and say so, except where CI is set. */
    static Browser start() {
        boolean installed = Files.isExecutable(PROGRAM) && Files.isExecutable(DRIVER);
        assumeTrue(
                installed || System.getenv("CI") != null,
                "skipped: chromium and chromium-driver are not installed; .ci/run installs them on Debian");
        try {
            Path profile = Files.createTempDirectory("akin-browser");
            LoggingPreferences logs = new LoggingPreferences();
            logs.enable("browser", Level.ALL);
            logs.enable("performance", Level.ALL);
            ChromeOptions options = new ChromeOptions();
            options.setBinary(PROGRAM.toFile());
            options.addArguments(
                    "--headless",
                    "--no-sandbox",
                    "--disable-gpu",
                    "--disable-dev-shm-usage",
                    "--disable-quic",
                    "--no-first-run",
                    "--disable-background-networking",
                    "--disable-component-update",
                    "--disable-sync",
                    "--hide-scrollbars",
                    "--user-data-dir=" + profile);
            options.setCapability("goog:loggingPrefs", logs);
            ChromeDriverService service = new ChromeDriverService.Builder()
                    .usingDriverExecutable(DRIVER.toFile())
                    .usingAnyFreePort()
                    .build();
            return new Browser(profile, new ChromeDriver(service, options));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    ChromeDriver driver() {
        return driver;
    }

    /** Opens a file in a window of this width, in this colour scheme. */
    void open(Path file, int width, String scheme) {
        driver.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", width, "height", 844, "deviceScaleFactor", 1, "mobile", width < 600));
        driver.executeCdpCommand(
                "Emulation.setEmulatedMedia",
                Map.of("features", List.of(Map.of("name", "prefers-color-scheme", "value", scheme))));
        driver.get(file.toUri().toString());
        driver.executeAsyncScript("const done = arguments[0]; document.fonts.ready.then(() => done())");
    }

    Object run(String script) {
        Object answer = driver.executeScript(script);
        return answer == null ? "" : answer;
    }

    /** What was logged since this was last asked for: by the page, or of its traffic. */
    List<String> log(String kind) {
        return driver.manage().logs().get(kind).getAll().stream()
                .map(LogEntry::getMessage)
                .toList();
    }

    /** The whole page as a picture. */
    byte[] picture() {
        return bytes("Page.captureScreenshot", Map.of("format", "png", "captureBeyondViewport", true));
    }

    /** The page as it is printed. */
    byte[] print() {
        return bytes("Page.printToPDF", Map.of("preferCSSPageSize", true, "paperWidth", 8.27, "paperHeight", 11.69));
    }

    private byte[] bytes(String command, Map<String, Object> options) {
        return Base64.getDecoder()
                .decode(String.valueOf(
                        driver.executeCdpCommand(command, options).get("data")));
    }

    @Override
    public void close() {
        driver.quit();
        try (Stream<Path> files = Files.walk(profile)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(file);
            }
        } catch (IOException e) {
            // the browser's last process may still be writing there; the folder is the system's to clear
        }
    }
}
