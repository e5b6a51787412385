package akin.engine.cli;

import static org.assertj.core.api.Assertions.assertThat;

import akin.engine.equip.Schemas;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;

/** What a production knows and lives with for now does not fail; what is new does. */
class BaselineTest {

    @TempDir
    Path folder;

    private Path rig;
    private String baseline;

    @BeforeEach
    void write() throws IOException {
        rig = Files.createDirectories(folder.resolve("rigs")).resolve("rig.yaml");
        Files.writeString(rig, CallTest.blurred());
        baseline = folder.resolve("akin-baseline.json").toString();
    }

    private Run check(String... more) {
        List<String> call = new java.util.ArrayList<>(List.of("check", rig.toString(), "--baseline", baseline));
        call.addAll(List.of(more));
        return Run.of(call.toArray(String[]::new));
    }

    private Run baseline() {
        return Run.of("baseline", rig.toString(), "--out", baseline);
    }

    private void change(String from, String to) throws IOException {
        String text = Files.readString(rig);
        assertThat(text).contains(from);
        Files.writeString(rig, text.replace(from, to));
    }

    @Test
    void whatStandsInItIsReportedAsKnownAndDoesNotFail() {
        assertThat(check().code()).isEqualTo(Akin.FAILS);
        assertThat(baseline()).isEqualTo(new Run(Akin.PASSES, baseline + ": 3 findings in 1 rig file\n", ""));
        Run run = check("--ci");
        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isEqualTo(Akin.PASSES);
        assertThat(run.out())
                .contains("KNOWN: in the baseline", "motion/blur-differs, baked-in, line ", "passes (0 baked-in,")
                .doesNotContain("BAKED-IN:");
        assertThat(run.out().replaceAll("\\s+", " ")).contains(", 3 known)", ": 3 known, 0 new, 0 gone");
        JsonNode json = Formats.json(check("--format", "json").out());
        assertThat(new Schemas().complaints("report", json)).isEmpty();
        assertThat(json.path("known").size()).isEqualTo(3);
        assertThat(json.at("/baseline/known").intValue()).isEqualTo(3);
        assertThat(json.at("/counts/known").intValue()).isEqualTo(3);
        for (String format : Formats.ALL) {
            assertThat(check("--format", format).out()).as(format).contains("motion/blur-differs");
        }
        String rig = folder.resolve("rigs").resolve("rig.yaml").toString();
        assertThat(Run.of("check", rig, "--baseline", baseline, "--format", "html")
                        .out())
                .contains(
                        "motion/blur-differs",
                        "in the baseline, so it does not fail the check",
                        ": 3 known, 0 new, 0 gone");
    }

    @Test
    void theFileFollowsItsSchemaAndIsTheSameEveryTime() throws IOException {
        baseline();
        String first = Files.readString(Path.of(baseline));
        assertThat(new Schemas().complaints("baseline", Formats.json(first))).isEmpty();
        assertThat(first)
                .contains("\"akin-baseline\" : 1", "\"rig\" : \"rigs/rig.yaml\"", "\"rule\" : \"motion/blur-differs\"")
                .doesNotContain(folder.toString(), "\"line\"", "because");
        assertThat(baseline().out()).isEqualTo(baseline + ": 3 findings in 1 rig file; 0 more than before, 0 gone\n");
        assertThat(Files.readString(Path.of(baseline))).isEqualTo(first);
    }

    @Test
    void linesWordsAndNumbersDoNotMakeAFindingNew() throws IOException {
        baseline();
        change("# The rig", "# A line more.\n# The rig");
        change("name: Small", "name: Smallest");
        change("shutter: 1/30", "shutter: 1/25");
        assertThat(check("--ci").code()).isEqualTo(Akin.PASSES);
    }

    @Test
    void aNewFindingFails() throws IOException {
        baseline();
        // The first unit's alone.
        Files.writeString(rig, Files.readString(rig).replaceFirst("white: 4300 K", "white: 7500 K"));
        Run run = check("--fail-on", "advice");
        assertThat(run.code()).isEqualTo(Akin.FAILS);
        assertThat(run.out()).contains("[white/");
        assertThat(run.out().replaceAll("\\s+", " ")).containsPattern(": 3 known, [1-9]\\d* new, 0 gone");
        JsonNode results = Formats.json(check("--format", "sarif").out()).at("/runs/0/results");
        List<String> states = new java.util.ArrayList<>();
        results.forEach(result -> states.add(result.path("baselineState").asString("")));
        assertThat(states).contains("new", "unchanged");
    }

    @Test
    void whatIsGoneIsSaidAndFailsInCiOnly() throws IOException {
        baseline();
        change("shutter: 1/30", "shutter: 180°");
        Run watched = check();
        assertThat(watched.code()).isEqualTo(Akin.PASSES);
        assertThat(watched.out().replaceAll("\\s+", " "))
                .contains(": 0 known, 0 new, 3 gone gone: rigs/rig.yaml: exposure/mismatch of")
                .contains("gone: rigs/rig.yaml: motion/blur-differs of A, B (units.B.shutter)");
        assertThat(check("--ci").code()).isEqualTo(Akin.FAILS);
        for (String format : Formats.ALL) {
            assertThat(check("--format", format).out()).as(format).contains("gone", "motion/blur-differs");
        }
        assertThat(baseline().out()).endsWith("0 findings in 1 rig file; 0 more than before, 3 gone\n");
        assertThat(check("--ci").code()).isEqualTo(Akin.PASSES);
    }

    @Test
    void aWaiverTakesAFindingOutOfIt() throws IOException {
        baseline();
        Files.writeString(
                rig,
                CallTest.blurred() + "waivers:\n"
                        + "  - {rule: motion/far-from-half-turn, units: [B], because: the boxer sees it}\n");
        assertThat(check().out().replaceAll("\\s+", " "))
                .contains(": 2 known, 0 new, 1 gone gone: rigs/rig.yaml: motion/far-from-half-turn of B");
    }

    @Test
    void aMissingOneIsSaidAndFailsInCiOnly() {
        Run watched = check("--fail-on", "baked-in");
        assertThat(watched.code()).isEqualTo(Akin.FAILS);
        assertThat(watched.err()).startsWith("akin: " + baseline + ": there is no such file; akin baseline RIG");
        assertThat(watched.out()).contains("motion/blur-differs").contains("not compared");
        Run ci = check("--ci", "--format", "json");
        assertThat(ci.code()).isEqualTo(Akin.BAD_INPUT);
        assertThat(Formats.json(ci.out()).path("findings").size())
                .as("nothing is lost")
                .isEqualTo(3);
    }

    @Test
    void oneOfAnotherVersionIsSaidAndFailsInCiOnly() throws IOException {
        Files.writeString(Path.of(baseline), "{\"akin-baseline\": 2, \"cameras\": []}");
        Run watched = check();
        assertThat(watched.code()).isEqualTo(Akin.FAILS);
        assertThat(watched.err()).contains("it is of format version 2, this Akin reads 1");
        assertThat(check("--ci").code()).isEqualTo(Akin.BAD_INPUT);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "[]",
                "{}",
                "{\"akin-baseline\": 1}",
                "{\"akin-baseline\": 1, \"rigs\": [{\"rig\": \"a\"}]}",
                "{\"akin-baseline\": 1, \"rigs\": [], \"more\": 1}",
                "{\"akin-baseline\": 1, \"rigs\": [{\"rig\": \"a\", \"findings\": []}, {\"rig\": \"a\", \"findings\": []}]}",
                "{\"akin-baseline\": 1, \"rigs\": [{\"rig\": \"a\", \"findings\": [{\"rule\": \"a/b\", \"units\": [\"A\"],"
                        + " \"path\": \"p\", \"count\": 0}]}]}",
            })
    void oneThatIsNoBaselineIsBadInput(String text) throws IOException {
        Files.writeString(Path.of(baseline), text);
        Said.of(check(), baseline);
        Said.of(baseline(), baseline);
        assertThat(Path.of(baseline)).hasContent(text);
    }

    @Test
    void rigsThatWereNotLookedAtAreNotGoneAndThoseThatAreNoLongerThereAre() throws IOException {
        Path other = folder.resolve("rigs").resolve("other.yaml");
        Files.writeString(other, CallTest.blurred());
        assertThat(Run.of("baseline", folder.toString(), "--out", baseline).out())
                .endsWith(": 6 findings in 2 rig files\n");
        assertThat(check("--ci").code()).isEqualTo(Akin.PASSES);
        Files.writeString(other, "akin: 2\nunits: {}\n");
        Run unread = Run.of("check", "--ci", "--baseline", baseline, folder.toString());
        assertThat(unread.code()).isEqualTo(Akin.BAD_INPUT);
        assertThat(unread.out().replaceAll("\\s+", " ")).contains(": 3 known, 0 new, 0 gone");
        Files.delete(other);
        assertThat(check("--ci").code()).isEqualTo(Akin.FAILS);
        assertThat(check().out().replaceAll("\\s+", " ")).contains(": 3 known, 0 new, 3 gone");
    }

    @Test
    void aCheckNeverWritesOne() throws IOException {
        check();
        assertThat(Path.of(baseline)).doesNotExist();
        baseline();
        String before = Files.readString(Path.of(baseline));
        change("shutter: 1/30", "shutter: 180°");
        check("--ci");
        assertThat(Path.of(baseline)).hasContent(before);
        Said.of(check("--format", "json", "--out", baseline), baseline).says(List.of("this is the baseline"));
    }

    @Test
    void oneIsNotWrittenOverItsRigNorForARigThatCannotBeRead() throws IOException {
        Said.of(Run.of("baseline", rig.toString(), "--out", rig.toString()), rig.toString())
                .says(List.of("this is the rig file"));
        Files.writeString(rig, "akin: 2\n");
        Said.of(baseline(), rig.toString()).isAt("1:7");
        assertThat(Path.of(baseline)).doesNotExist();
    }
}
