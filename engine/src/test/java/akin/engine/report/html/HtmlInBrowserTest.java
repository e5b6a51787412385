package akin.engine.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import akin.engine.report.SampleRigs;
import com.deque.html.axecore.results.Results;
import com.deque.html.axecore.selenium.AxeBuilder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The page in a real browser, at the widths of a phone and of a desk, light and dark. What it looked like is left in
 * {@code target/screens}.
 */
class HtmlInBrowserTest {

    private static final Path SCREENS = Path.of("target", "screens");

    @TempDir
    static Path folder;

    private static Browser browser;

    @BeforeAll
    static void start() throws IOException {
        browser = Browser.start();
        Files.createDirectories(SCREENS);
    }

    @AfterAll
    static void stop() {
        if (browser != null) {
            browser.close();
        }
    }

    @ParameterizedTest
    @CsvSource({
        "night-market, 390, light", "night-market, 390, dark", "night-market, 1280, light", "night-market, 1280, dark",
        "regatta, 390, light", "regatta, 390, dark", "regatta, 1280, light", "regatta, 1280, dark",
        "lantern-room, 390, light", "lantern-room, 1280, dark", "crowd, 390, light", "crowd, 1280, dark",
        "nasty, 390, light", "nasty, 1280, dark",
    })
    void everybodyCanReadItEverywhere(String sample, int width, String scheme) throws IOException {
        Path file = page(sample);
        browser.log("performance");
        browser.log("browser");
        browser.open(file, width, scheme);
        Files.write(SCREENS.resolve(sample + "-" + width + "-" + scheme + ".png"), browser.picture());
        assertThat(browser.log("browser")).as("complaints of the browser").isEmpty();
        assertThat(browser.log("performance"))
                .filteredOn(line -> line.contains("\"Network.requestWillBeSent\""))
                .isNotEmpty()
                .as("requests that leave the file")
                .allMatch(line -> line.contains("\"url\":\"file:") || line.contains("\"url\":\"data:"));
        assertThat(browser.run("return getComputedStyle(document.body).backgroundColor"))
                .isEqualTo(scheme.equals("dark") ? "rgb(21, 23, 26)" : "rgb(251, 249, 245)");
        assertThat(browser.run("return document.documentElement.scrollWidth <= " + width))
                .as("nothing scrolls sideways")
                .isEqualTo(true);
        assertThat(asList(browser.run("""
                        return [...document.querySelectorAll('.scroll')].filter(e => e.scrollWidth > e.clientWidth)
                            .map(e => e.innerText)"""))).as("tables that scroll sideways").isEmpty();
        assertThat(asList(browser.run(NAMELESS))).as("pictures without a name").isEmpty();
        assertThat(asList(browser.run(OVERLAPS)))
                .as("labels that overlap or leave their picture")
                .isEmpty();
        Results results = new AxeBuilder().analyze(browser.driver());
        assertThat(results.getPasses()).hasSizeGreaterThan(10);
        assertThat(results.getViolations())
                .extracting(rule -> rule.getId() + ": " + rule.getNodes())
                .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"night-market", "regatta"})
    void itPrintsWithItsNumbersAndPictures(String sample) throws IOException {
        browser.open(page(sample), 1280, "dark");
        byte[] print = browser.print();
        Files.write(SCREENS.resolve(sample + "-print.pdf"), print);
        try (PDDocument pdf = Loader.loadPDF(print)) {
            assertThat(pdf.getNumberOfPages()).isBetween(3, 20);
            assertThat(new PDFTextStripper().getText(pdf))
                    .contains("Fails", "Tone curves", "stops from 18 % grey", "The numbers")
                    .as("numbers that are folded away on a screen")
                    .containsPattern("ripple\\s+–\\s+[0-9]+ %");
        }
    }

    private static final String NAMELESS = """
            return [...document.querySelectorAll('svg:not([aria-hidden])')].filter(svg => {
              const names = (svg.getAttribute('aria-labelledby') || '').split(' ')
                  .map(id => document.getElementById(id)).filter(e => e && e.textContent.trim());
              return svg.getAttribute('role') !== 'img' || names.length < 2;
            }).map(svg => svg.outerHTML.slice(0, 80))""";

    private static final String OVERLAPS = """
            const found = [];
            for (const svg of document.querySelectorAll('svg.picture')) {
              const field = svg.getBoundingClientRect();
              const texts = [...svg.querySelectorAll('text')].map(e => [e, e.getBoundingClientRect()]);
              texts.forEach(([e, r], i) => {
                if (r.left < field.left - 1 || r.right > field.right + 1 || r.top < field.top - 1
                    || r.bottom > field.bottom + 1) {
                  found.push(svg.parentNode.id + ': ' + e.textContent + ' leaves the picture');
                }
                texts.slice(i + 1).forEach(([f, s]) => {
                  const across = Math.min(r.right, s.right) - Math.max(r.left, s.left);
                  const down = Math.min(r.bottom, s.bottom) - Math.max(r.top, s.top);
                  if (across > 1 && down > r.height * 0.35) {
                    found.push(svg.parentNode.id + ': ' + e.textContent + ' / ' + f.textContent);
                  }
                });
              });
            }
            return found""";

    private static List<?> asList(Object answer) {
        return (List<?>) answer;
    }

    private static Path page(String sample) throws IOException {
        return Files.writeString(folder.resolve(sample + ".html"), SampleRigs.html(sample));
    }
}
