package akin.engine.cli;

import static org.assertj.core.api.Assertions.assertThat;

import akin.engine.book.Examples;
import akin.engine.book.Shelf;
import akin.engine.read.YamlReader;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The settings that match, from the command line. */
class SolveTest {

    @TempDir
    Path folder;

    private String rig(String changes) throws IOException {
        Path file = folder.resolve("rig.yaml");
        Files.writeString(
                file,
                "# ours\n"
                        + Examples.lay(YamlReader.read("rig.yaml", changes), Shelf.matchedPair())
                                .text()
                        + "\n");
        return file.toString();
    }

    @Test
    void whatMatchesStaysAsItIsPlanned() throws IOException {
        Run run = Run.of("solve", rig("production: {name: Quiet}"));
        assertThat(run.out()).contains("B stays as it is planned").contains(": passes (");
        assertThat(run.code()).isZero();
    }

    @Test
    void whatMovesTogetherIsSetTogetherAndSaysWhatItIsFor() throws IOException {
        String rig = rig("units: {B: {shutter: 1/96, iso: 200, lens: {stop: T4}, filters: []}}");
        Run run = Run.of("solve", rig);
        assertThat(run.out())
                .contains("units.B.shutter: 1/96 -> ", "Otherwise baked-in: B exposes each frame for 10.42 ms")
                .contains("units.B.iso: 200 -> ", "0 baked-in, 0 lossy, 0 fixable");
        assertThat(run.code()).isZero();
        assertThat(Files.readString(Path.of(rig))).as("nothing was written").contains("1/96");
    }

    @Test
    void writingKeepsCommentsAndTheFileThenPasses() throws IOException {
        String rig = rig("units: {B: {shutter: 1/96, iso: 200}}");
        assertThat(Run.of("check", rig).code()).isEqualTo(1);
        Run run = Run.of("solve", rig, "--write");
        assertThat(run.out()).contains("B is set");
        assertThat(Files.readString(Path.of(rig))).startsWith("# ours\n").doesNotContain("shutter: 1/96");
        assertThat(Run.of("check", rig).code()).isZero();
        assertThat(Run.of("solve", rig).out()).contains("B stays as it is planned");
    }

    @Test
    void whatIsKeptStaysAndWhatStandsAgainstAMatchIsNamed() throws IOException {
        String rig = rig("units: {B: {shutter: 1/96, keep: [white]}}");
        Run run = Run.of("solve", rig, "--keep", "B.shutter", "--keep", "B.lens");
        assertThat(run.out())
                .doesNotContain("units.B.shutter: 1/96 -> 1/48\n        Otherwise")
                .contains("What is kept of B stands against a match: shutter.")
                .contains("Letting go of shutter is enough: ");
        assertThat(run.code()).isEqualTo(1);
    }

    @Test
    void whereNoSettingHelpsItSaysSo() throws IOException {
        String rig = rig("""
                gear: {bodies: {small: {modes: {open: {rates: [25]}}}}}
                """);
        Run run = Run.of("solve", rig);
        assertThat(run.out()).contains("No setting of B that was tried removes: ", "cadence/rate-not-offered");
        assertThat(run.code()).isEqualTo(1);
    }

    @Test
    void theHeroMovesOnlyWhenAsked() throws IOException {
        String rig = rig("units: {A: {shutter: 45°}, B: {shutter: 45°}}");
        assertThat(Run.of("solve", rig).out()).doesNotContain("units.A.");
        assertThat(Run.of("solve", rig, "--move-hero").out()).contains("A");
    }

    @Test
    void programsGetEverythingByItsSchema() throws IOException {
        String rig = rig("units: {B: {shutter: 1/96, iso: 200, keep: [white]}}");
        Run run = Run.of("solve", rig, "--format", "json", "--keep", "B.shutter");
        JsonNode unit = new JsonMapper().readTree(run.out()).at("/units/0");
        assertThat(unit.at("/unit").asString()).isEqualTo("B");
        assertThat(unit.at("/answers/0/changes/0/edits/0/path").asString()).startsWith("units.B.");
        assertThat(unit.at("/conflict/0").asString()).isEqualTo("shutter");
        assertThat(unit.at("/relaxations/0/passes").asBoolean()).isTrue();
        assertThat(SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                        .getSchema(Files.readString(Path.of("../shared/schema/solve.schema.json")), InputFormat.JSON)
                        .validate(run.out(), InputFormat.JSON))
                .isEmpty();
        assertThat(Run.of("solve", rig, "--format", "json", "--keep", "B.shutter")
                        .out())
                .as("same input, same bytes")
                .isEqualTo(run.out());
    }

    @ParameterizedTest
    @CsvSource({
        "B.shuter, Did you mean 'shutter'?",
        "shutter, a unit and a setting belong here",
        "C.shutter, no unit is called 'C'",
    })
    void aKeepThatIsNoneIsRefused(String keep, String said) throws IOException {
        Run run = Run.of("solve", rig("production: {name: Quiet}"), "--keep", keep);
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains(said);
    }
}
