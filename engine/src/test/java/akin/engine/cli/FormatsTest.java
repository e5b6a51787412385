package akin.engine.cli;

import static org.assertj.core.api.Assertions.assertThat;

import akin.engine.edit.Edits;
import akin.engine.read.YamlReader;
import akin.engine.report.Format;
import akin.model.finding.Edit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** Each format says what the report says, as its standard has it. */
class FormatsTest {

    private static final Path SAMPLES = Path.of("..", "samples");

    @TempDir
    Path folder;

    static List<String> formats() {
        return Formats.ALL;
    }

    @ParameterizedTest
    @MethodSource("formats")
    void theSameInputGivesTheSameBytes(String format) {
        String first = report(format);
        assertThat(first).isNotBlank().doesNotContain(SAMPLES.toAbsolutePath().toString());
        for (int i = 0; i < 5; i++) {
            assertThat(report(format)).isEqualTo(first);
        }
    }

    @Test
    void everyFormatIsTried() {
        assertThat(Format.words())
                .startsWith(Formats.ALL.toArray(String[]::new))
                .endsWith("html")
                .hasSize(Formats.ALL.size() + 1);
    }

    @Test
    void sarifFollowsTheSchemaOfOasis() throws IOException {
        Path broken = Files.writeString(folder.resolve("broken.yaml"), "akin: 2\n");
        Path baseline = folder.resolve("baseline.json");
        Run.of("baseline", market(), "--out", baseline.toString());
        for (List<String> more : List.of(
                List.<String>of(),
                List.of(broken.toString()),
                List.of("--fail-on", "unchecked"),
                List.of("--baseline", baseline.toString()))) {
            List<String> call = new ArrayList<>(List.of("check", "--format", "sarif", SAMPLES.toString()));
            call.addAll(more);
            JsonNode log = Formats.json(Run.of(call.toArray(String[]::new)).out());
            assertThat(Formats.complaints(log)).as("%s", more).isEmpty();
            assertThat(log.at("/runs/0/invocations/0/executionSuccessful").booleanValue())
                    .isEqualTo(!more.contains(broken.toString()));
        }
    }

    /** The check above must be able to fail. */
    @Test
    void theSchemaOfOasisCatchesALogThatIsWrong() {
        JsonNode log = Formats.json(report("sarif"));
        ((ObjectNode) log.at("/runs/0/results/0/locations/0/physicalLocation/region")).put("startLine", 0);
        assertThat(Formats.complaints(log)).isNotEmpty();
    }

    @Test
    void sarifPointsAtTheSettingAndNamesItsRule() throws IOException {
        String rig = Files.readString(Path.of(market()));
        JsonNode run = sarif(market()).at("/runs/0");
        assertThat(run.path("columnKind").stringValue()).isEqualTo("unicodeCodePoints");
        JsonNode blur = results(run, "motion/blur-differs").get(0);
        assertThat(at(rig, blur.at("/locations/0/physicalLocation/region"))).isEqualTo("1/60");
        assertThat(blur.at("/locations/0/physicalLocation/artifactLocation/uri").stringValue())
                .isEqualTo("../samples/night-market/rig.yaml");
        assertThat(blur.at("/locations/0/logicalLocations/0/fullyQualifiedName").stringValue())
                .isEqualTo("units.B.shutter");
        assertThat(blur.path("message").path("text").stringValue()).contains("25 % apart", "Do: Set the shutters");
        for (JsonNode result : run.path("results")) {
            JsonNode rule =
                    run.at("/tool/driver/rules").get(result.path("ruleIndex").intValue());
            assertThat(rule.path("id")).isEqualTo(result.path("ruleId"));
            assertThat(rule.at("/help/markdown").stringValue()).contains("## Fires", "```yaml");
            assertThat(rule.at("/shortDescription/text").stringValue()).isNotBlank();
            assertThat(rule.at("/properties/sources").size()).isPositive();
        }
    }

    @Test
    void sarifTellsUrgencyAgreementAndWhatIsNotKnown() {
        JsonNode run = sarif(SAMPLES.toString()).at("/runs/0");
        Map<String, String> levels =
                Map.of("baked-in", "error", "lossy", "error", "fixable", "warning", "advice", "note");
        Set<String> seen = new HashSet<>();
        int open = 0;
        int suppressed = 0;
        int care = 0;
        for (JsonNode result : run.path("results")) {
            suppressed += result.path("suppressions").size();
            if (result.path("kind").stringValue().equals("open")) {
                open++;
                assertThat(result.path("level").stringValue()).isEqualTo("none");
                assertThat(result.at("/message/text").stringValue()).contains("not known: ");
                continue;
            }
            if (result.path("kind").stringValue().equals("informational")) {
                care++;
                assertThat(result.path("ruleId").stringValue()).startsWith("caution/");
                assertThat(result.path("level").stringValue()).isEqualTo("none");
                continue;
            }
            String severity = result.at("/properties/severity").stringValue();
            seen.add(severity);
            assertThat(result.path("level").stringValue()).isEqualTo(levels.get(severity));
        }
        JsonNode counts = Formats.json(
                        Run.of("check", "--format", "json", SAMPLES.toString()).out())
                .path("counts");
        assertThat(seen).isEqualTo(levels.keySet());
        assertThat(care).isPositive();
        assertThat(open).isEqualTo(counts.path("unchecked").intValue()).isPositive();
        assertThat(suppressed).isEqualTo(counts.path("waived").intValue()).isPositive();
    }

    @Test
    void aSarifFixIsTheEditByteForByte() throws IOException {
        int tried = 0;
        for (String sample : List.of("night-market", "regatta")) {
            String file = SAMPLES.resolve(sample).resolve("rig.yaml").toString();
            String rig = Files.readString(Path.of(file));
            Map<String, List<JsonNode>> wanted = new HashMap<>();
            JsonNode json =
                    Formats.json(Run.of("check", "--format", "json", file).out());
            Stream.of("findings", "waived")
                    .forEach(list -> json.path(list)
                            .forEach(finding -> finding.path("fixes")
                                    .forEach(fix -> wanted.computeIfAbsent(
                                                    finding.path("rule").stringValue()
                                                            + finding.at("/at/path")
                                                                    .stringValue()
                                                            + fix.path("effect").stringValue(),
                                                    effect -> new ArrayList<>())
                                            .add(fix.path("edits")))));
            for (JsonNode result : sarif(file).at("/runs/0/results")) {
                for (JsonNode fix : result.path("fixes")) {
                    String effect = fix.at("/description/text")
                            .stringValue()
                            .lines()
                            .findFirst()
                            .orElseThrow();
                    String key = result.path("ruleId").stringValue()
                            + result.at("/locations/0/logicalLocations/0/fullyQualifiedName")
                                    .stringValue()
                            + effect.replace("{{", "{").replace("}}", "}");
                    List<String> edited = new ArrayList<>();
                    wanted.get(key).forEach(edits -> {
                        List<Edit> made = new ArrayList<>();
                        edits.forEach(edit -> made.add(new Edit(
                                edit.path("path").stringValue(),
                                edit.path("to").isNull()
                                        ? null
                                        : edit.path("to").stringValue())));
                        edited.add(made.isEmpty() ? "" : Edits.apply(YamlReader.read(file, rig), made));
                    });
                    assertThat(replaced(rig, fix.at("/artifactChanges/0/replacements")))
                            .isIn(edited);
                    tried++;
                }
            }
        }
        assertThat(tried).isGreaterThan(20);
    }

    @Test
    void aFingerprintStaysWhenLinesAndNumbersMoveAndDiffersFromAllOthers() throws IOException {
        String rig = CallTest.blurred();
        Path file = folder.resolve("rig.yaml");
        Files.writeString(file, rig);
        List<String> before = fingerprints(file);
        Files.writeString(file, "# a line more\n" + rig.replace("shutter: 1/30", "shutter:   1/25"));
        assertThat(fingerprints(file)).containsAll(before);
        assertThat(new HashSet<>(before)).hasSameSizeAs(before).hasSizeGreaterThan(2);
    }

    private static List<String> fingerprints(Path file) {
        List<String> fingerprints = new ArrayList<>();
        sarif(file.toString())
                .at("/runs/0/results")
                .forEach(result -> fingerprints.add(
                        result.path("partialFingerprints").iterator().next().stringValue()));
        return fingerprints;
    }

    @Test
    void junitHasASuiteForEachRigAndACaseForEachCheck() throws IOException {
        Path broken = Files.writeString(folder.resolve("broken.yaml"), "akin: 2\n");
        Element suites = Formats.junit(Run.of("check", "--format", "junit", SAMPLES.toString(), broken.toString())
                .out());
        assertThat(suites.getTagName()).isEqualTo("testsuites");
        counts(suites);
        List<Element> each = Formats.elements(suites, "testsuite");
        assertThat(each)
                .extracting(suite -> suite.getAttribute("name"))
                .containsExactly(
                        "../samples/lantern-room/rig.yaml",
                        "../samples/night-market/rig.yaml",
                        "../samples/regatta/rig.yaml",
                        broken.toString());
        each.forEach(FormatsTest::counts);
        String baseline = folder.resolve("gone.json").toString();
        Element watched = Formats.junit(Run.of("check", "--format", "junit", "--baseline", baseline, SAMPLES.toString())
                .out());
        Element ci =
                Formats.junit(Run.of("check", "--format", "junit", "--ci", "--baseline", baseline, SAMPLES.toString())
                        .out());
        counts(watched);
        counts(ci);
        assertThat(Formats.elements(ci, "failure"))
                .hasSize(Formats.elements(watched, "failure").size() + 1);
        assertThat(each.get(3).getAttribute("errors")).isEqualTo("1");
        assertThat(each.get(0).getAttribute("failures")).isEqualTo("0");
        Element market = each.get(1);
        JsonNode json =
                Formats.json(Run.of("check", "--format", "json", market()).out());
        List<Element> cases = Formats.elements(market, "testcase");
        assertThat(cases).extracting(one -> one.getAttribute("name")).doesNotHaveDuplicates();
        assertThat(cases.stream()
                        .filter(one -> Formats.elements(one, "skipped").isEmpty())
                        .count())
                .isGreaterThanOrEqualTo(json.path("counts").path("checks").intValue());
        List<String> failing = new ArrayList<>();
        json.path("findings").forEach(finding -> {
            if (Set.of("baked-in", "lossy").contains(finding.path("severity").stringValue())) {
                failing.add(finding.path("rule").stringValue() + " of "
                        + String.join(", ", strings(finding.path("units"))));
            }
        });
        assertThat(cases)
                .filteredOn(one -> !Formats.elements(one, "failure").isEmpty())
                .extracting(one -> one.getAttribute("name"))
                .containsExactlyInAnyOrderElementsOf(new HashSet<>(failing));
        assertThat(Formats.elements(market, "skipped"))
                .isNotEmpty()
                .allSatisfy(
                        skipped -> assertThat(skipped.getAttribute("message")).contains("units.", "not known"));
    }

    @Test
    void junitFailsAtTheSeverityThatWasAskedForAndForWhatIsUncheckedOnlyThen() {
        String lossy = Formats.junit(report("junit")).getAttribute("failures");
        Element strict =
                Formats.junit(Run.of("check", "--format", "junit", "--fail-on", "unchecked", SAMPLES.toString())
                        .out());
        assertThat(Integer.parseInt(strict.getAttribute("failures"))).isGreaterThan(Integer.parseInt(lossy));
        assertThat(strict.getAttribute("skipped")).isEqualTo("0");
        assertThat(Formats.elements(strict, "failure"))
                .anyMatch(failure -> failure.getAttribute("type").equals("unchecked"));
    }

    private static void counts(Element element) {
        assertThat(element.getAttribute("tests"))
                .isEqualTo(String.valueOf(Formats.elements(element, "testcase").size()));
        for (String kind : List.of("failure", "error", "skipped")) {
            assertThat(element.getAttribute(kind.equals("skipped") ? kind : kind + "s"))
                    .isEqualTo(String.valueOf(Formats.elements(element, kind).size()));
        }
    }

    @Test
    void annotationsStandBesideTheLine() {
        List<Formats.Command> commands = Run.of("check", "--format", "annotations", market())
                .out()
                .lines()
                .map(Formats::command)
                .toList();
        JsonNode json =
                Formats.json(Run.of("check", "--format", "json", market()).out());
        int i = 0;
        for (JsonNode finding : json.path("findings")) {
            Formats.Command command = commands.get(i++);
            String severity = finding.path("severity").stringValue();
            assertThat(command.name())
                    .isEqualTo(
                            switch (severity) {
                                case "baked-in", "lossy" -> "error";
                                case "fixable" -> "warning";
                                default -> "notice";
                            });
            assertThat(command.properties())
                    .containsEntry("file", market())
                    .containsEntry("line", finding.path("at").path("line").asString())
                    .containsEntry("col", finding.path("at").path("column").asString())
                    .containsEntry(
                            "title", severity + ": " + finding.path("title").stringValue());
            assertThat(command.message()).startsWith(finding.path("because").stringValue() + "\n");
        }
        assertThat(commands).last().satisfies(last -> {
            assertThat(last.name()).isEqualTo("notice");
            assertThat(last.message()).startsWith("1 rig file: 1 fails; ");
        });
    }

    /** Every sentence of the text report stands in the Markdown one, in the same order. */
    @Test
    void markdownSaysWhatTheTextSays() {
        String text = words(report("text"));
        String markdown = words(Formats.text(report("markdown")));
        assertThat(markdown).isEqualTo(text).hasSizeGreaterThan(5_000);
    }

    /** Words alone: the one breaks its lines, the other leaves numbers and rules of dashes to the reader. */
    private static String words(String report) {
        return report.replaceAll("[\\s\\[\\]]+", "");
    }

    private static String report(String format) {
        return Run.of("check", "--format", format, SAMPLES.toString()).out();
    }

    private static JsonNode sarif(String rig) {
        return Formats.json(Run.of("check", "--format", "sarif", rig).out());
    }

    private static String market() {
        return SAMPLES.resolve("night-market").resolve("rig.yaml").toString();
    }

    private static List<JsonNode> results(JsonNode run, String rule) {
        List<JsonNode> results = new ArrayList<>();
        run.path("results").forEach(result -> {
            if (result.path("ruleId").stringValue().equals(rule)) {
                results.add(result);
            }
        });
        return results;
    }

    private static List<String> strings(JsonNode array) {
        List<String> strings = new ArrayList<>();
        array.forEach(value -> strings.add(value.stringValue()));
        return strings;
    }

    /** What stands in a region, as a viewer finds it: lines and columns from 1, columns in code points. */
    private static String at(String text, JsonNode region) {
        return text.substring(
                offset(
                        text,
                        region.path("startLine").intValue(),
                        region.path("startColumn").intValue()),
                offset(
                        text,
                        region.path("endLine").intValue(),
                        region.path("endColumn").intValue()));
    }

    private static String replaced(String text, JsonNode replacements) {
        String out = text;
        for (int i = replacements.size() - 1; i >= 0; i--) {
            JsonNode region = replacements.get(i).path("deletedRegion");
            int from = offset(
                    text,
                    region.path("startLine").intValue(),
                    region.path("startColumn").intValue());
            int to = offset(
                    text,
                    region.path("endLine").intValue(),
                    region.path("endColumn").intValue());
            out = out.substring(0, from)
                    + replacements.get(i).at("/insertedContent/text").stringValue()
                    + out.substring(to);
        }
        return out;
    }

    private static int offset(String text, int line, int column) {
        int at = 0;
        for (int i = 1; i < line; i++) {
            at = text.indexOf('\n', at) + 1;
        }
        return text.offsetByCodePoints(at, column - 1);
    }
}
