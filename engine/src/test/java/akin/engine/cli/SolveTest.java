package akin.engine.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import akin.engine.assess.Checker;
import akin.engine.assess.RuleBase;
import akin.engine.book.CompiledBook;
import akin.engine.book.Examples;
import akin.engine.book.Shelf;
import akin.engine.equip.Catalogue;
import akin.engine.equip.Terms;
import akin.engine.read.Binder;
import akin.engine.read.YamlReader;
import akin.model.derived.CollectedLight;
import akin.model.rig.Unit;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
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
        String[] keeps = {"--keep", "B.shutter", "--keep", "B.lens"};
        Run run = Run.of("solve", rig, keeps[0], keeps[1], keeps[2], keeps[3]);
        JsonNode unit = new JsonMapper()
                .readTree(Run.of("solve", rig, keeps[0], keeps[1], keeps[2], keeps[3], "--format", "json")
                        .out())
                .at("/units/0");
        unit.path("answers")
                .forEach(answer -> answer.path("changes")
                        .forEach(change -> change.path("edits")
                                .forEach(edit -> assertThat(edit.path("path").asString())
                                        .isNotIn("units.B.shutter", "units.B.white")
                                        .doesNotStartWith("units.B.lens"))));
        assertThat(unit.at("/relaxations/0/keep").asString()).isEqualTo("shutter");
        assertThat(run.out())
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

    private JsonNode json(String rig, String... more) {
        Run run = Run.of(Stream.concat(Stream.of("solve", rig, "--format", "json"), Stream.of(more))
                .toArray(String[]::new));
        assertThat(run.err()).isEmpty();
        return new JsonMapper().readTree(run.out());
    }

    private static List<String> moved(JsonNode json, String unit) {
        List<String> moved = new ArrayList<>();
        json.path("units").forEach(one -> {
            if (one.path("unit").asString().equals(unit)) {
                one.at("/answers/0/changes")
                        .forEach(change -> change.path("edits")
                                .forEach(edit -> moved.add(edit.path("path").asString()
                                        + " to "
                                        + edit.path("to").asString())));
            }
        });
        return moved;
    }

    @Test
    void theHeroMovesOnlyWhenAsked() throws IOException {
        // Both at 45 degrees match, but half a turn is wanted of each.
        String rig = rig("units: {A: {shutter: 45°, filters: []}, B: {shutter: 45°, filters: [ND 0.3]}}");
        JsonNode stays = json(rig);
        assertThat(moved(stays, "A")).isEmpty();
        assertThat(stays.path("units")).hasSize(1);
        JsonNode moves = json(rig, "--move-hero");
        assertThat(moved(moves, "A")).anySatisfy(edit -> assertThat(edit).startsWith("units.A.shutter to "));
        assertThat(moved(moves, "B")).anySatisfy(edit -> assertThat(edit).startsWith("units.B.shutter to "));
        assertThat(moves.path("verdict").asString()).isEqualTo("passes");
        assertThat(moves.at("/units/0/answers/0/counts/advice").asInt())
                .isLessThan(stays.at("/units/0/answers/0/counts/advice").asInt());
    }

    @Test
    void aSoundHeroIsNotBentToTheMistakesOfOthers() throws IOException {
        String rig = rig("units: {B: {shutter: 1/96, iso: 200, white: 5600 K, lens: {stop: T5.6}}}");
        JsonNode json = json(rig, "--move-hero");
        assertThat(moved(json, "A")).isEmpty();
        assertThat(moved(json, "B")).contains("units.B.white to 4300 K");
        assertThat(json.path("verdict").asString()).isEqualTo("passes");
    }

    @Test
    void theHerosExposureStaysWhereItsCrewPutIt() throws IOException {
        // At ISO 200 the hero is under its floor; what is set instead records no more and no less light.
        String rig = rig("units: {A: {iso: 200, filters: []}}");
        JsonNode json = json(rig, "--move-hero");
        List<String> moved = moved(json, "A");
        assertThat(moved).anySatisfy(edit -> assertThat(edit).startsWith("units.A.iso to "));
        String written = Files.readString(Path.of(rig));
        Run.of("solve", rig, "--move-hero", "--write");
        CollectedLight before = light(written, rig);
        CollectedLight after = light(Files.readString(Path.of(rig)), rig);
        assertThat(after.iso().value()).isGreaterThanOrEqualTo(400);
        assertThat(after.stopsFrom(before)).isCloseTo(0, within(1.0 / 6));
    }

    private static CollectedLight light(String rig, String name) {
        Binder binder = new Binder();
        Unit hero = new Checker(RuleBase.builtIn(), CompiledBook.load(), binder, Catalogue.builtIn(binder))
                .equip(YamlReader.read(name, rig), Terms.OF_THE_RIG)
                .units()
                .get(0);
        return (CollectedLight) CollectedLight.derive(hero).get(0);
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
