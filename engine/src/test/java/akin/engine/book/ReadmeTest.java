package akin.engine.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** What the README shows is what Akin prints. */
class ReadmeTest {

    @Test
    void theReportInTheReadmeStandsInThatOfTheSample() throws IOException {
        String readme = Files.readString(Path.of("..", "README.md"));
        String report = Files.readString(Path.of("..", "samples", "night-market", "expected.txt"));
        int start = readme.indexOf("```\nBAKED-IN") + 4;
        String shown = readme.substring(start, readme.indexOf("```", start));
        assertThat(shown.lines().count()).isGreaterThan(10);
        assertThat(report).contains("\n" + shown);
    }
}
