package akin.engine.cli;

import static org.assertj.core.api.Assertions.assertThat;

import akin.engine.equip.Schemas;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The sample with shot clips gives the report beside it. {@code -Dakin.golden=write} writes it anew. */
class FootageSampleTest {

    private static final Path SAMPLE = Path.of("..", "samples", "lantern-room");

    @ParameterizedTest
    @CsvSource({"text, expected-footage.txt", "json, expected-footage.json"})
    void givesTheReportBesideIt(String format, String file) throws IOException {
        Run run = Run.of(
                "footage",
                SAMPLE.resolve("rig.yaml").toString(),
                SAMPLE.resolve("footage").toString(),
                "--format",
                format,
                "--on",
                "2027-01-01");
        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isEqualTo(1);
        // The expected reports name a version that a release does not change.
        String said = run.out()
                .replace(SAMPLE.resolve("rig.yaml").toString(), "rig.yaml")
                .replaceFirst("\"akin\" ?: ?\"[^\"]*\"", "\"akin\": \"0.1.0\"");
        Path expected = SAMPLE.resolve(file);
        if ("write".equals(System.getProperty("akin.golden"))) {
            Files.writeString(expected, said);
        }
        assertThat(said).isEqualTo(Files.readString(expected));
        if (format.equals("json")) {
            Schemas schemas = new Schemas();
            assertThat(schemas.complaints("report", schemas.json(said))).isEmpty();
        }
    }
}
