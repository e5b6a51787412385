package akin.engine.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** How the command is called, and what it answers. */
class CallTest {

    private static final Path PAIR =
            Path.of("..", "rules", "src", "main", "resources", "akin", "rules", "matched-pair.yaml");

    @TempDir
    Path folder;

    /** A call that cannot be understood. */
    record Wrong(String name, List<String> args, String place, List<String> words) {
        @Override
        public String toString() {
            return name;
        }
    }

    private static Wrong wrong(String name, String args, String place, String... words) {
        return new Wrong(name, List.of(args.split(" ", -1)), place, List.of(words));
    }

    static Stream<Wrong> wrongCalls() {
        return Stream.of(
                new Wrong("no command", List.of(), "command", List.of("a command is missing", "akin check rig.yaml")),
                wrong(
                        "an unknown command",
                        "chekc rig.yaml",
                        "command",
                        "no command is called 'chekc'",
                        "Did you mean 'check'?"),
                wrong("a rig for a command", "rig.yaml", "command", "no command is called 'rig.yaml'", "check"),
                new Wrong("a hostile command", List.of("\u001b[2J\n"), "command", List.of("'\\u001B[2J\\n'")),
                wrong("no rig", "check", "check", "a rig file is missing"),
                wrong(
                        "an unknown option",
                        "check --fromat json rig.yaml",
                        "check",
                        "no option is called '--fromat'",
                        "Did you mean '--format'?"),
                wrong("part of an option", "check --form json rig.yaml", "check", "no option is called '--form'"),
                wrong("an unknown letter", "check -x rig.yaml", "check", "no option is called '-x'"),
                wrong(
                        "no value for an option",
                        "check rig.yaml --format",
                        "check",
                        "the option --format needs a value",
                        "json"),
                wrong(
                        "an option for a value",
                        "check --format --quiet rig.yaml",
                        "check",
                        "the option --format needs a value"),
                wrong(
                        "two formats to the screen",
                        "check --format json --format text rig.yaml",
                        "check",
                        "only one report can go to the standard output",
                        "--format json, --format text",
                        "--format FORMAT --out FILE"),
                wrong(
                        "two formats to the screen beside one to a file",
                        "check --format json --format sarif --out x --format text rig.yaml",
                        "check",
                        "only one report can go to the standard output",
                        "--format json, --format text"),
                wrong(
                        "a file before its format",
                        "check --out x --format json rig.yaml",
                        "check",
                        "--out 'x': no format stands before it"),
                wrong(
                        "a file without a format",
                        "check --format json --out x --out y rig.yaml",
                        "check",
                        "--out 'y': no format stands before it"),
                wrong("two files without a format", "check --out x --out y rig.yaml", "check", "--out 'y': no format"),
                wrong(
                        "two reports in one file",
                        "check --format json --out x --format text --out ./x rig.yaml",
                        "check",
                        "--out './x': two reports in one file"),
                wrong(
                        "an option twice",
                        "check --on 2027-01-01 --on 2027-01-02 rig.yaml",
                        "check",
                        "the option --on stands there twice"),
                wrong("a baseline without a file", "baseline rig.yaml", "baseline", "the option --out is missing"),
                wrong(
                        "a word twice",
                        "check --quiet --quiet rig.yaml",
                        "check",
                        "the option --quiet stands there twice"),
                wrong(
                        "an unknown format",
                        "check --format jsno rig.yaml",
                        "check",
                        "--format: read 'jsno'",
                        "Did you mean 'json'?",
                        "Allowed: text, json, sarif, junit, annotations, markdown"),
                wrong(
                        "an empty format",
                        "check --format= rig.yaml",
                        "check",
                        "--format: read ''",
                        "Allowed: text, json, sarif, junit, annotations, markdown"),
                wrong(
                        "an unknown severity",
                        "check --fail-on lossyy rig.yaml",
                        "check",
                        "--fail-on: read 'lossyy'",
                        "Did you mean 'lossy'?",
                        "baked-in, lossy, fixable, advice, unchecked"),
                wrong("a value for a word", "check --quiet=yes rig.yaml", "check", "--quiet"));
    }

    @ParameterizedTest
    @MethodSource("wrongCalls")
    void aWrongCall(Wrong call) {
        Said.of(Run.of(call.args().toArray(String[]::new)), call.place()).says(call.words());
    }

    @Test
    void anUnknownToleranceProfile() throws IOException {
        Run run = Run.of("check", "--tolerance", "intercot", write("rig.yaml", Rigs.MARKET));
        Said.of(run, "--tolerance").says(List.of("'intercot'", "Did you mean 'intercut'?"));
    }

    @Test
    void aReportThatCannotBeWritten() throws IOException {
        Run run = Run.of("check", write("rig.yaml", Rigs.MARKET), "--out", folder.toString());
        Said.of(run, folder.toString()).says(List.of("the report cannot be written there"));
    }

    @Test
    void aReportIsNotWrittenOverItsRig() throws IOException {
        String rig = write("rig.yaml", Rigs.MARKET);
        Run run = Run.of(
                "check", rig, "--out", folder.resolve(".").resolve("rig.yaml").toString());
        Said.of(run, folder.resolve(".").resolve("rig.yaml").toString()).says(List.of("this is the rig file"));
        assertThat(Path.of(rig)).hasContent(Rigs.MARKET);
    }

    @Test
    void helpAndVersionSayWhatTheyAre() {
        for (String[] call : new String[][] {{"--help"}, {"-h"}, {"check", "--help"}, {"check", "-h", "rig.yaml"}}) {
            Run run = Run.of(call);
            assertThat(run.code()).isEqualTo(Akin.PASSES);
            assertThat(run.err()).isEmpty();
            assertThat(run.out())
                    .contains("akin check", "RIG...", "Exit codes: 0")
                    .doesNotContain("\t");
            assertThat(run.out().lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(80));
        }
        assertThat(Run.of("check", "--help").out())
                .contains("--format", "--out", "--fail-on", "--tolerance", "--quiet");
        Run version = Run.of("--version");
        assertThat(version.code()).isEqualTo(Akin.PASSES);
        assertThat(version.out()).matches("akin [0-9]+\\.[0-9]+\\.[0-9]+\\R");
    }

    @ParameterizedTest
    @CsvSource({"baked-in,1", "lossy,1", "fixable,1", "advice,1", "unchecked,1"})
    void aBakedInFindingFailsWhateverIsAsked(String word, int code) throws IOException {
        String rig = write("rig.yaml", blurred());
        Run run = Run.of("check", "--fail-on", word, rig);
        assertThat(run.err()).isEmpty();
        assertThat(run.out()).contains("[motion/blur-differs, line ");
        assertThat(run.code()).isEqualTo(code);
    }

    @ParameterizedTest
    @CsvSource({"baked-in,0", "lossy,0", "fixable,0", "advice,0", "unchecked,1"})
    void whatIsNotKnownFailsOnlyWhenAsked(String word, int code) throws IOException {
        // Without its shutter a unit cannot be compared; without white, filters or lens it would be found fault with.
        String rig = write("rig.yaml", takenOutOfB(pair(), "    shutter: 180°\n"));
        Run run = Run.of("check", "--fail-on", word, rig);
        assertThat(run.out()).contains("NOT CHECKED");
        assertThat(run.code()).as(run.out()).isEqualTo(code);
        assertThat(run.out()).contains(code == 0 ? ": passes (" : ": incomplete (");
    }

    @Test
    void theMatchedPairPasses() {
        Run run = Run.of("check", "--fail-on", "unchecked", PAIR.toString());
        assertThat(run.out()).contains("0 unchecked: passes (0 baked-in, 0 lossy, 0 fixable, 0 advice)");
        assertThat(run.code()).isEqualTo(Akin.PASSES);
        assertThat(run.err()).isEmpty();
    }

    @Test
    void aLooserToleranceForInsertsLetsMorePass() throws IOException {
        // 1/50 against 1/54: 8 % apart, which inserts may be (15 %) and shots cut back to back may not (5 %).
        String rig = write(
                "rig.yaml",
                pair().replace("shutter: 180°", "shutter: 1/50").replaceFirst("shutter: 1/50", "shutter: 1/54"));
        assertThat(Run.of("check", rig).out())
                .containsPattern("for\\s+intercut")
                .contains("motion/blur-differs");
        assertThat(Run.of("check", "--tolerance", "insert", rig).out())
                .containsPattern("for\\s+insert")
                .doesNotContain("motion/blur-differs");
    }

    @Test
    void quietSaysNothing() throws IOException {
        String rig = write("rig.yaml", blurred());
        assertThat(Run.of("check", "--quiet", rig)).isEqualTo(new Run(Akin.FAILS, "", ""));
        assertThat(Run.of("check", "--quiet", PAIR.toString())).isEqualTo(new Run(Akin.PASSES, "", ""));
    }

    @Test
    void aReportForPrograms() throws IOException {
        String rig = write("rig.yaml", blurred());
        Path report = folder.resolve("report.json");
        Run run = Run.of("check", "--format", "json", "--out", report.toString(), rig);
        assertThat(run).isEqualTo(new Run(Akin.FAILS, "", ""));
        JsonNode json = new JsonMapper().readTree(Files.readString(report));
        assertThat(json.path("rig").stringValue()).isEqualTo(rig);
        assertThat(json.path("verdict").stringValue()).isEqualTo("fails");
        assertThat(json.path("counts").path("baked-in").intValue()).isPositive();
        JsonNode finding = json.path("findings").get(0);
        assertThat(finding.path("rule").stringValue()).isEqualTo("motion/blur-differs");
        int line = finding.path("at").path("line").intValue();
        int column = finding.path("at").path("column").intValue();
        assertThat(blurred().lines().toList().get(line - 1).substring(column - 1))
                .isEqualTo("1/30");
        assertThat(Files.readString(report))
                .isEqualTo(Run.of("check", "--format", "json", rig).out());
    }

    @Test
    void hostileNamesNeitherSteerTheTerminalNorBreakTheColumns() throws IOException {
        String hostile = "\\u001b[2J\\a\\r\\u0085\\u2028\\u202Egnorw\\t" + "𝔑".repeat(200) + "語".repeat(90) + " end";
        String rig = write(
                "语".repeat(60) + "\u0007.yaml",
                blurred()
                        .replace("name: Matched pair", "name: \"" + hostile + "\"")
                        .replace("name: kitchen", "name: \"" + hostile + "\"")
                        .replace("name: Large", "name: \"" + hostile + "\"")
                        .replace("name: Wide prime", "name: \"" + hostile + "\""));
        Run run = Run.of("check", rig);
        assertThat(run.err()).isEmpty();
        assertThat(run.out().lines()).allSatisfy(line -> {
            assertThat(line.codePoints().noneMatch(CallTest::steers)).as(line).isTrue();
            assertThat(columns(line)).as(line).isLessThanOrEqualTo(80);
        });
        assertThat(new JsonMapper()
                        .readTree(Run.of("check", "--format", "json", rig).out())
                        .path("production")
                        .stringValue())
                .startsWith("\u001b[2J\u0007\r\u0085\u2028\u202Egnorw\t𝔑");
    }

    private static boolean steers(int c) {
        int type = Character.getType(c);
        return Character.isISOControl(c)
                || type == Character.FORMAT
                || type == Character.LINE_SEPARATOR
                || type == Character.PARAGRAPH_SEPARATOR;
    }

    /** Han characters take two columns of a terminal (Unicode Standard Annex #11, East Asian Width). */
    private static long columns(String line) {
        return line.codePoints().map(c -> Character.isIdeographic(c) ? 2 : 1).sum();
    }

    @Test
    void tooLittleMemoryIsNoVerdict() {
        StringWriter err = new StringWriter();
        PrintWriter full = new PrintWriter(new StringWriter()) {
            @Override
            public void println(String line) {
                throw new OutOfMemoryError("made up");
            }
        };
        assertThat(Akin.run(full, new PrintWriter(err, true), "--version")).isEqualTo(Akin.DEFECT);
        assertThat(err.toString()).contains("AKIN_JAVA_OPTS=-Xmx512m").hasLineCount(1);
    }

    @Test
    void aDefectIsSaidToBeOne() {
        StringWriter err = new StringWriter();
        Writer broken = new Writer() {
            @Override
            public void write(char[] text, int from, int length) {
                throw new IllegalStateException("broken");
            }

            @Override
            public void flush() {}

            @Override
            public void close() {}
        };
        int code = Akin.run(new PrintWriter(broken), new PrintWriter(err, true), "--version");
        assertThat(code).isEqualTo(Akin.DEFECT);
        assertThat(err.toString())
                .startsWith("akin: a defect in Akin, please report it: ")
                .hasLineCount(1);
    }

    @Test
    void theReportIsTheSameEveryTime() throws IOException {
        String rig = write("rig.yaml", blurred());
        for (String format : Formats.ALL) {
            String first = Run.of("check", "--format", format, rig).out();
            for (int i = 1; i < 10; i++) {
                assertThat(Run.of("check", "--format", format, rig).out()).isEqualTo(first);
            }
        }
    }

    static String pair() throws IOException {
        return Files.readString(PAIR);
    }

    /** The matched pair with the second unit at 1/30. */
    static String blurred() throws IOException {
        String pair = pair();
        int at = pair.lastIndexOf("shutter: 180°");
        return pair.substring(0, at) + "shutter: 1/30" + pair.substring(at + "shutter: 180°".length());
    }

    private static String takenOutOfB(String pair, String line) {
        int at = pair.lastIndexOf(line);
        return pair.substring(0, at) + pair.substring(at + line.length());
    }

    private String write(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text).toString();
    }

    @ParameterizedTest
    @CsvSource({
        "blur-differs, motion/blur-differs",
        "mains-beat, flicker/mains-beat",
        "motion/blur-difers, motion/blur-differs",
        "flicker/blur-differs, motion/blur-differs",
        "view/diffraction, focus/diffraction",
    })
    void suggestsTheRuleWhereItsTopicIsLeftOutOrMistaken(String read, String meant) {
        Said.of(Run.of("explain", read), "explain").says(List.of("Did you mean '" + meant + "'?"));
    }
}
