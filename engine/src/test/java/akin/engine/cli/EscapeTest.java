package akin.engine.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Text of a rig file stays text in every format: the same hostile words stand as the name of the production, a scene and
 * a body, as the reason of a waiver, as a unit (whose name is a short word, so it is refused), in a file that cannot be
 * read and in a file's name.
 */
class EscapeTest {

    private static final String HARMLESS = "late evening";

    @TempDir
    Path folder;

    static Stream<String> table() {
        return Stream.of(
                "\u001b[2J\u001b]0;title\u0007",
                "\u009b31m\u0085",
                "two\nlines\r\nand more",
                "\u202Egnorw\u2066\u2028\u2029\uFEFF",
                "\uFFFE\uFDD0 not for text",
                "]]> <![CDATA[ x",
                "<script>alert(1)</script>",
                "--> <!-- <b onload='x'> \" & &lt; &#10;",
                "[link](javascript:alert) ![picture](http://x.example/y.png)",
                "http://x.example www.x.example someone@x.example <http://x.example>",
                "# heading *strong* _stress_ `code` ~~gone~~ | table | $x$",
                "- list\n- list",
                "1. first",
                "+ more",
                "---",
                "===",
                "| a | b |\n|---|---|",
                "::error file=x,line=1::gone wrong",
                ":::::warning::x",
                "##[error]gone wrong",
                "x%0A::error::y%0D%25%3A%2C",
                "a,title=b::c",
                "\n::error::x",
                "{0} {{x}} %s \\ $1 \\u001b ${x}",
                "'quotes' \"quotes\" \\\"",
                "𝔑 語 é");
    }

    @ParameterizedTest
    @MethodSource("table")
    void hostileTextStaysText(String hostile) throws IOException {
        Run bad = check("bad", hostile);
        Run good = check("good", HARMLESS);
        assertThat(bad.code()).isEqualTo(Akin.BAD_INPUT).isEqualTo(good.code());
        assertThat(bad.err().lines()).hasSize(2).allSatisfy(EscapeTest::steersNothing);
        for (String format : Formats.ALL) {
            String report = report("bad", format);
            String harmless = report("good", format);
            assertThat(harmless).as(format).contains("caution/flashing-light", "motion/blur-differs");
            switch (format) {
                case "text" -> text(report);
                case "json" -> json(report, hostile);
                case "sarif" -> sarif(report, harmless);
                case "junit" -> junit(report, harmless);
                case "annotations" -> annotations(report, harmless);
                case "markdown" -> markdown(report, harmless);
                default -> throw new AssertionError(format);
            }
        }
    }

    private static void text(String report) {
        assertThat(report.lines()).hasSizeGreaterThan(20).allSatisfy(EscapeTest::steersNothing);
    }

    private static void json(String report, String hostile) {
        assertThat(report.lines()).allSatisfy(EscapeTest::steersNothing);
        JsonNode first = Formats.json(report).path("reports").get(0);
        assertThat(first.path("production").stringValue()).as("nothing is lost").isEqualTo(hostile);
        assertThat(first.path("waived").get(0).path("waiver").path("because").stringValue())
                .isEqualTo(hostile);
    }

    private static void sarif(String report, String harmless) {
        assertThat(report.lines()).allSatisfy(EscapeTest::steersNothing);
        JsonNode log = Formats.json(report);
        assertThat(Formats.complaints(log)).isEmpty();
        JsonNode results = log.at("/runs/0/results");
        assertThat(results.size())
                .isEqualTo(Formats.json(harmless).at("/runs/0/results").size())
                .isPositive();
        for (JsonNode result : results) {
            String message = result.path("message").path("text").stringValue();
            // SARIF 2.1.0, sections 3.11.5 and 3.11.6: a single brace is a placeholder, [text](target) a link.
            assertThat(message.replace("{{", "").replace("}}", "")).doesNotContain("{", "}");
            assertThat(message).doesNotContainPattern("(?<!\\\\)\\]\\(");
            message.lines().forEach(EscapeTest::steersNothing);
            assertThat(result.at("/locations/0/physicalLocation/artifactLocation/uri")
                            .stringValue())
                    .matches("[A-Za-z0-9%._~/:-]+");
        }
    }

    private static void junit(String report, String harmless) {
        assertThat(report.lines()).allSatisfy(EscapeTest::steersNothing);
        Element bad = Formats.junit(report);
        Element good = Formats.junit(harmless);
        List<String> names =
                Formats.elements(bad, "*").stream().map(Element::getTagName).toList();
        assertThat(new TreeSet<>(names))
                .isSubsetOf("testsuite", "testcase", "failure", "skipped", "error", "system-out");
        assertThat(names).hasSameSizeAs(Formats.elements(good, "*"));
    }

    private static void annotations(String report, String harmless) {
        assertThat(report.lines()).hasSameSizeAs(harmless.lines().toList());
        report.lines().forEach(line -> {
            Formats.Command command = Formats.command(line);
            assertThat(command.name()).isIn("error", "warning", "notice");
            assertThat(command.properties()).containsKey("title");
            assertThat(command.properties().keySet()).isSubsetOf("file", "line", "col", "title");
            assertThat(line.substring(2).chars().noneMatch(Character::isISOControl))
                    .isTrue();
            command.message().lines().forEach(EscapeTest::steersNothing);
        });
    }

    private static void markdown(String report, String harmless) {
        assertThat(report.lines()).allSatisfy(EscapeTest::steersNothing);
        assertThat(Formats.census(report)).isEqualTo(Formats.census(harmless)).doesNotContainKeys("Link", "HtmlBlock");
    }

    /** Nothing that moves a cursor, hides or turns around text, and nothing that a build server takes for a command. */
    private static void steersNothing(String line) {
        assertThat(line.codePoints().filter(EscapeTest::steers)).as(line).isEmpty();
        assertThat(line.strip()).doesNotStartWith("::").doesNotContain("##[");
    }

    private static boolean steers(int c) {
        int type = Character.getType(c);
        return Character.isISOControl(c)
                || type == Character.FORMAT
                || type == Character.LINE_SEPARATOR
                || type == Character.PARAGRAPH_SEPARATOR
                || type == Character.SURROGATE;
    }

    private String report(String kind, String format) throws IOException {
        return Files.readString(folder.resolve(kind).resolve("report." + format));
    }

    private Run check(String kind, String words) throws IOException {
        Path at = Files.createDirectories(folder.resolve(kind));
        String file = words.replaceAll("[/\\x00\\uFFFE\\uFDD0]", "") + ".yaml";
        Path rig = Files.writeString(at.resolve(file), rig(words));
        Path broken = Files.writeString(at.resolve("broken.yaml"), "akin: 1\nunits: " + quoted(words) + "\n");
        String unit = words.codePoints()
                .filter(c -> !steers(c))
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
        Path named = Files.writeString(
                at.resolve("named.yaml"), CallTest.pair().replace("\n  B:\n", "\n  " + quoted(unit + " !") + ":\n"));
        List<String> call = new ArrayList<>(List.of("check", rig.toString(), broken.toString(), named.toString()));
        for (String format : Formats.ALL) {
            call.addAll(List.of(
                    "--format", format, "--out", at.resolve("report." + format).toString()));
        }
        return Run.of(call.toArray(String[]::new));
    }

    private static String rig(String words) throws IOException {
        String scene = "{name: kitchen,";
        String text = CallTest.blurred();
        assertThat(text).contains("name: Matched pair", scene, "name: Small");
        assertThat(text).contains("lights: [tungsten],");
        return text.replace("lights: [tungsten],", "lights: [dimmed-led], mains: 50 Hz,")
                        .replace("name: Matched pair", "name: " + quoted(words))
                        .replace(scene, "{name: " + quoted(words) + ", flashes: 1 Hz,")
                        .replace("name: Small", "name: " + quoted(words))
                + "waivers:\n  - {rule: motion/far-from-half-turn, units: [B], because: "
                + quoted(words) + "}\n";
    }

    /** A JSON string is a YAML string in double quotes; what YAML does not print is escaped. */
    private static String quoted(String words) {
        StringBuilder out = new StringBuilder();
        new JsonMapper().writeValueAsString(words).codePoints().forEach(c -> {
            if (c < 127 || Character.isLetter(c)) {
                out.appendCodePoint(c);
            } else {
                out.append(String.format("\\U%08X", c));
            }
        });
        return out.toString();
    }
}
