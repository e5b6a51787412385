package akin.engine.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;

/** Several rig files in one call, and several reports of it. */
class ManyRigsTest {

    @TempDir
    Path folder;

    private String good;
    private String blurred;

    @BeforeEach
    void write() throws IOException {
        good = write("good.yaml", CallTest.pair());
        blurred = write("blurred.yaml", CallTest.blurred());
    }

    @Test
    void textHasEveryReportAndOneSummary() {
        Run run = Run.of("check", good, blurred);
        assertThat(run.code()).isEqualTo(Akin.FAILS);
        assertThat(run.err()).isEmpty();
        String alone =
                Run.of("check", good).out() + "\n" + Run.of("check", blurred).out();
        assertThat(run.out()).startsWith(alone + "\nRIG FILES\n    passes      ");
        String end = run.out().substring(alone.length());
        assertThat(end.replaceAll("\\s+", "")).contains(("passes" + good + "fails" + blurred).replaceAll("\\s+", ""));
        assertThat(end.replaceAll("\\s+", " "))
                .containsPattern(
                        "2 rig files: 1 passes, 1 fails; [0-9]+ checks run, 0 unchecked: fails \\(1 baked-in,");
        assertThat(run.out().lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(80));
    }

    @Test
    void jsonHasEveryReportAndTheTotals() {
        JsonNode run =
                Formats.json(Run.of("check", "--format", "json", good, blurred).out());
        assertThat(new akin.engine.equip.Schemas().complaints("run", run)).isEmpty();
        assertThat(run.path("verdict").stringValue()).isEqualTo("fails");
        assertThat(run.at("/rigs/0/verdict").stringValue()).isEqualTo("passes");
        assertThat(run.at("/rigs/1/verdict").stringValue()).isEqualTo("fails");
        assertThat(run.path("reports").size()).isEqualTo(2);
        assertThat(run.at("/reports/1"))
                .isEqualTo(Formats.json(
                        Run.of("check", "--format", "json", blurred).out()));
        for (String count : List.of("baked-in", "lossy", "fixable", "advice", "unchecked", "waived", "checks")) {
            assertThat(run.path("counts").path(count).intValue())
                    .as(count)
                    .isEqualTo(run.at("/reports/0/counts").path(count).intValue()
                            + run.at("/reports/1/counts").path(count).intValue());
        }
    }

    @Test
    void oneThatCannotBeReadLosesNoneOfTheOthers() throws IOException {
        String bad = write("bad.yaml", "akin: 2\n");
        for (String format : Formats.ALL) {
            Run run = Run.of("check", "--format", format, good, bad, blurred);
            assertThat(run.code()).as(format).isEqualTo(Akin.BAD_INPUT);
            assertThat(run.err()).startsWith("akin: " + bad + ":1:7: ").hasLineCount(1);
            assertThat(run.out().replaceAll("\\s+", "")).as(format).contains("good.yaml", "bad.yaml", "blurred.yaml");
            assertThat(run.out()).contains("motion/blur-differs");
        }
        JsonNode json = Formats.json(
                Run.of("check", "--format", "json", good, bad, blurred).out());
        assertThat(new akin.engine.equip.Schemas().complaints("run", json)).isEmpty();
        assertThat(json.path("verdict").stringValue()).isEqualTo("not-read");
        assertThat(json.at("/rigs/1/line").intValue()).isEqualTo(1);
        assertThat(json.at("/rigs/1/column").intValue()).isEqualTo(7);
        assertThat(json.at("/rigs/1/problem").stringValue()).isNotBlank();
        assertThat(json.path("reports").size()).isEqualTo(2);
    }

    @Test
    void oneBadRigByItselfIsReportedToMachinesToo() throws IOException {
        String bad = write("bad.yaml", "akin: 2\n");
        assertThat(Run.of("check", bad).out()).isEmpty();
        assertThat(Run.of("check", "--format", "annotations", bad).out())
                .startsWith("::error file=" + bad + ",line=1,col=7,title=the rig file cannot be read::");
        JsonNode json = Formats.json(Run.of("check", "--format", "json", bad).out());
        assertThat(new akin.engine.equip.Schemas().complaints("run", json)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "good.yaml,,,0",
        "good.yaml,blurred.yaml,,1",
        "blurred.yaml,good.yaml,,1",
        "bad.yaml,blurred.yaml,good.yaml,2",
        "blurred.yaml,gone.yaml,,2",
        "good.yaml,bad.yaml,,2"
    })
    void theExitCodeIsTheWorst(String first, String second, String third, int code) throws IOException {
        write("bad.yaml", "akin: 1\nunits: {A: {rate: fast}}\n");
        List<String> call = new ArrayList<>(List.of("check", "--quiet"));
        for (String name : new String[] {first, second, third}) {
            if (name != null) {
                call.add(folder.resolve(name).toString());
            }
        }
        Run run = Run.of(call.toArray(String[]::new));
        assertThat(run.code()).isEqualTo(code);
        assertThat(run.out()).isEmpty();
    }

    @Test
    void aFolderStandsForItsRigsInOrderAtAnyDepth() throws IOException {
        write("deep/er/z.yml", CallTest.pair());
        write("deep/a.yaml", CallTest.pair());
        write("deep.yaml", CallTest.pair());
        write("gear.yaml", "bodies: {}\n");
        write("list.yaml", "- akin: 1\n- units: 2\n");
        write("several.yaml", "a: 1\n---\nb: 2\n");
        write("akin-only.yaml", "akin: 1\nunit: {}\n");
        write("notes.txt", CallTest.pair());
        write(".hidden/rig.yaml", CallTest.pair());
        write("broken.yaml", "akin: 1\nunits:\n  A: {\n");
        Run run = Run.of("check", "--format", "json", folder.toString());
        JsonNode json = Formats.json(run.out());
        List<String> names = new ArrayList<>();
        json.path("rigs")
                .forEach(rig -> names.add(rig.path("rig")
                        .stringValue()
                        .substring(folder.toString().length() + 1)));
        assertThat(names)
                .containsExactly(
                        "blurred.yaml", "broken.yaml", "deep.yaml", "deep/a.yaml", "deep/er/z.yml", "good.yaml");
        assertThat(json.at("/rigs/1/verdict").stringValue())
                .as("a mistake does not make a rig no rig")
                .isEqualTo("not-read");
        assertThat(json.path("passed-over").intValue()).isEqualTo(4);
        assertThat(run.code()).isEqualTo(Akin.BAD_INPUT);
        assertThat(Run.of("check", "--format", "json", folder + "/").out()).isEqualTo(run.out());
        assertThat(Run.of("check", folder.toString()).out()).contains("4 other YAML files are no rigs");
    }

    @Test
    void aRigThatIsNamedTwiceIsCheckedOnce() {
        JsonNode json = Formats.json(Run.of("check", "--format", "json", good, folder.toString(), blurred, good)
                .out());
        assertThat(json.path("rigs").size()).isEqualTo(2);
        assertThat(json.at("/rigs/0/rig").stringValue()).isEqualTo(good);
    }

    @Test
    void aFolderWithoutRigsIsAMistake() throws IOException {
        Path empty = Files.createDirectories(folder.resolve("empty"));
        Said.of(Run.of("check", empty.toString()), empty.toString())
                .says(List.of("no rig file is in this folder", "akin", "units"));
        write("empty/gear.yaml", "bodies: {}\n");
        Said.of(Run.of("check", good, empty.toString()), empty.toString())
                .says(List.of("of 1 such files none has both"));
    }

    @Test
    void whatIsWrongWithTheCallIsSaidOnce() {
        Said.of(Run.of("check", "--tolerance", "intercot", good, blurred), "--tolerance")
                .says(List.of("Did you mean 'intercut'?"));
    }

    @Test
    void severalFormatsInOneRunAreTheSameAsOneByOne() throws IOException {
        List<String> call = new ArrayList<>(List.of("check", good, "--format", "annotations"));
        for (String format : Formats.ALL) {
            call.addAll(List.of(
                    "--format",
                    format,
                    "--out",
                    folder.resolve("report." + format).toString()));
        }
        call.add(blurred);
        Run run = Run.of(call.toArray(String[]::new));
        assertThat(run.code()).isEqualTo(Akin.FAILS);
        assertThat(run.out())
                .isEqualTo(Run.of("check", "--format", "annotations", good, blurred)
                        .out());
        for (String format : Formats.ALL) {
            assertThat(folder.resolve("report." + format))
                    .hasContent(
                            Run.of("check", "--format", format, good, blurred).out());
        }
    }

    @Test
    void aReportWithoutFormatIsText() throws IOException {
        Path out = folder.resolve("report.txt");
        assertThat(Run.of("check", good, "--out", out.toString())).isEqualTo(new Run(Akin.PASSES, "", ""));
        assertThat(Files.readString(out)).isEqualTo(Run.of("check", good).out());
    }

    @Test
    void aReportThatCannotBeWrittenDoesNotKeepTheOthersFromBeing() {
        Path out = folder.resolve("report.json");
        Run run = Run.of(
                "check",
                good,
                "--format",
                "text",
                "--out",
                folder.toString(),
                "--format",
                "json",
                "--out",
                out.toString());
        assertThat(run.code()).isEqualTo(Akin.BAD_INPUT);
        assertThat(run.err()).startsWith("akin: " + folder + ": the report cannot be written there");
        assertThat(out).isNotEmptyFile();
    }

    @Test
    void noReportIsWrittenOverARigOfAFolder() throws IOException {
        Run run = Run.of("check", folder.toString(), "--format", "json", "--out", good);
        Said.of(run, good).says(List.of("this is the rig file"));
        assertThat(Path.of(good)).hasContent(CallTest.pair());
    }

    @Test
    void quietStillWritesFiles() {
        Path out = folder.resolve("report.json");
        Run run = Run.of("check", "--quiet", good, "--format", "text", "--format", "json", "--out", out.toString());
        assertThat(run).isEqualTo(new Run(Akin.PASSES, "", ""));
        assertThat(out).isNotEmptyFile();
    }

    private String write(String name, String text) throws IOException {
        Path file = folder.resolve(name);
        Files.createDirectories(file.getParent());
        return Files.writeString(file, text).toString();
    }
}
