package akin.engine.cli;

import static org.assertj.core.api.Assertions.assertThat;

import akin.engine.equip.Schemas;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The sample with test shots gives the report beside it. {@code -Dakin.golden=write} writes it anew. */
class ProofSampleTest {

    private static final Path SAMPLE = Path.of("..", "samples", "lantern-room");

    @ParameterizedTest
    @CsvSource({"text, expected-proof.txt", "json, expected-proof.json"})
    void givesTheReportBesideIt(String format, String file) throws IOException {
        Path readings = SAMPLE.resolve("readings.yaml");
        Run run = Run.of(
                "prove",
                SAMPLE.resolve("rig.yaml").toString(),
                readings.toString(),
                "--format",
                format,
                "--on",
                "2027-01-01");
        assertThat(run.err()).isEmpty();
        // The expected reports name a version that a release does not change.
        String said = run.out()
                .replace(SAMPLE.resolve("rig.yaml").toString(), "rig.yaml")
                .replace(readings.toString(), "readings.yaml")
                .replaceAll("\"akin\" ?: ?\"[^\"]*\"", "\"akin\" : \"0.1.0\"");
        Path expected = SAMPLE.resolve(file);
        if ("write".equals(System.getProperty("akin.golden"))) {
            Files.writeString(expected, said);
        }
        assertThat(said).isEqualTo(Files.readString(expected));
        Schemas schemas = new Schemas();
        assertThat(schemas.complaints("readings", Files.readString(readings))).isEmpty();
        if (format.equals("json")) {
            assertThat(schemas.complaints("proof", schemas.json(said))).isEmpty();
        }
    }
}
