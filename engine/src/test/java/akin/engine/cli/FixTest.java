package akin.engine.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import akin.engine.read.BadInput;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** {@code akin fix}: what it writes, what it says, and what it refuses to touch. */
class FixTest {

    private static final Path SAMPLE = Path.of("..", "samples", "night-market", "rig.yaml");
    private static final Path PAIR =
            Path.of("..", "rules", "src", "main", "resources", "akin", "rules", "matched-pair.yaml");
    private static final String ON = "--on=2027-01-01";

    @TempDir
    Path folder;

    @Test
    void mendsTheFileAndSaysWhatIsLeft() throws IOException {
        Path rig = sample("rig.yaml");
        Run run = Run.of("fix", ON, rig.toString());
        assertThat(run.err()).isEmpty();
        assertThat(run.out())
                .contains("\nMENDED\n", "units.B.shutter: 1/60 -> 1/50", "\nLEFT\n", "Not safe: ", "By hand: ")
                .doesNotContain("+++");
        assertThat(run.out().lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(80));
        assertThat(Files.readString(rig)).contains("    shutter: 1/50                # from the last job");
        Run check = Run.of("check", ON, rig.toString());
        assertThat(run.code()).isEqualTo(check.code());
        assertThat(run.out().strip().lines().reduce((a, b) -> b))
                .isEqualTo(check.out().strip().lines().reduce((a, b) -> b));
        onlyThe("rig.yaml");

        Files.setLastModifiedTime(rig, FileTime.fromMillis(0));
        Run again = Run.of("fix", ON, rig.toString());
        assertThat(again.out()).contains("NOTHING MENDED").doesNotContain("\nMENDED\n");
        assertThat(again.code()).isEqualTo(run.code());
        assertThat(Files.getLastModifiedTime(rig)).as("not written again").isEqualTo(FileTime.fromMillis(0));
    }

    @ParameterizedTest
    @CsvSource({"baked-in,0", "lossy,1", "fixable,1", "advice,1", "unchecked,1"})
    void theExitCodeIsThatOfTheResult(String failOn, int code) throws IOException {
        Path rig = sample("rig.yaml");
        assertThat(Run.of("check", ON, "--fail-on", failOn, rig.toString()).code())
                .as("before")
                .isEqualTo(Akin.FAILS);
        assertThat(Run.of("fix", ON, "--fail-on", failOn, rig.toString()).code())
                .isEqualTo(code);
        assertThat(Run.of("check", ON, "--fail-on", failOn, rig.toString()).code())
                .isEqualTo(code);
    }

    @Test
    void whatMatchesIsLeftAlone() throws IOException {
        Path rig = Files.copy(PAIR, folder.resolve("rig.yaml"));
        Run run = Run.of("fix", rig.toString());
        assertThat(run.out()).contains("NOTHING MENDED", "passes").doesNotContain("LEFT");
        assertThat(run.code()).isEqualTo(Akin.PASSES);
        assertThat(rig).hasSameBinaryContentAs(PAIR);
    }

    /** What is on the van, or how fast a pan is, no file makes true. */
    @Test
    void theKitListAndScenesChangeOnlyWhenTheirRuleIsNamed() throws IOException {
        String plan = Files.readString(PAIR).replace("filters: [ND 0.3, ND 0.6, ND 0.9]", "filters: [ND 0.3, ND 0.9]");
        Path rig = Files.writeString(folder.resolve("rig.yaml"), plan);
        Run run = Run.of("fix", ON, rig.toString());
        assertThat(run.out().replaceAll("\\s+", " "))
                .contains("Only when its rule is named (--rule exposure/nd-not-in-kit)", "NOTHING MENDED");
        assertThat(Files.readString(rig)).isEqualTo(plan);
        Run.of("fix", ON, "--rule", "exposure/nd-not-in-kit", rig.toString());
        assertThat(Files.readString(rig)).contains("filters: [ND 0.3, ND 0.9, ND 0.6]\n");
    }

    @Test
    void commentsInAListStay() throws IOException {
        String plan = Files.readString(PAIR)
                .replace(
                        "    filters: [ND 0.6]\n",
                        "    filters:\n      - ND 0.6   # the round one\n      # in the side box\n      - ND 0.3   # square\n");
        Path rig = Files.writeString(folder.resolve("rig.yaml"), plan);
        Run run = Run.of("fix", ON, "--rule", "exposure/mismatch", rig.toString());
        assertThat(run.out()).contains("units.B.filters: [ND 0.6, ND 0.3] -> [ND 0.6]");
        assertThat(Files.readString(rig))
                .contains("    filters:\n      - ND 0.6   # the round one\n      # in the side box\n    white");
    }

    @Test
    void onlyWhatIsChosen() throws IOException {
        Path rig = sample("rig.yaml");
        Run run = Run.of("fix", "--rule", "tone/levels", "--rule", "white/differs", "--unit", "A", rig.toString());
        assertThat(run.out()).contains("Not chosen.", "[tone/levels, fixable]");
        assertThat(Files.readString(rig))
                .isEqualTo(Files.readString(SAMPLE).replace("reads: full  ", "reads: legal  "));
    }

    /** A dry run's difference is one that patch programs read, and they come to the same bytes. */
    @ParameterizedTest
    @CsvSource({"git,plain", "git,crlf", "git,mark", "git,open", "patch,plain", "patch,crlf", "patch,mark", "patch,open"
    })
    @DisabledOnOs(OS.WINDOWS)
    void aDryRunIsADifferenceThatOthersApply(String program, String saved) throws Exception {
        String text = saved(saved);
        Path rig = Files.writeString(folder.resolve("rig.yaml"), text);
        Run dry = Run.of("fix", ON, "--dry-run", rig.toString());
        assertThat(dry.out()).contains("WOULD BE MENDED", "\nLEFT\n", "--- " + rig, "+++ " + rig);
        assertThat(Files.readString(rig)).as("a dry run changes nothing").isEqualTo(text);
        onlyThe("rig.yaml");

        Path other = Files.createDirectory(folder.resolve("other"));
        Files.writeString(other.resolve("rig.yaml"), text);
        Path difference =
                Files.writeString(folder.resolve("difference"), dry.out().replace(rig.toString(), "rig.yaml"));
        assumeTrue(runs(program), program + " is not installed");
        ProcessBuilder apply = new ProcessBuilder(
                        program.equals("git")
                                ? List.of("git", "apply", "-p0", "--whitespace=nowarn")
                                : List.of("patch", "-p0", "--binary"))
                .directory(other.toFile())
                .redirectInput(difference.toFile())
                .redirectErrorStream(true);
        Process process = apply.start();
        String said = new String(process.getInputStream().readAllBytes(), UTF_8);
        assertThat(process.waitFor(30, TimeUnit.SECONDS)).isTrue();
        assertThat(process.exitValue()).as(said).isZero();

        Run wet = Run.of("fix", ON, rig.toString());
        assertThat(wet.code()).isEqualTo(dry.code());
        assertThat(other.resolve("rig.yaml")).hasSameBinaryContentAs(rig);
        assertThat(Files.readString(rig)).isNotEqualTo(text);
    }

    private static String saved(String how) throws IOException {
        String text = Files.readString(SAMPLE);
        return switch (how) {
            case "crlf" -> text.replace("\n", "\r\n");
            case "mark" -> "\uFEFF" + text;
            case "open" -> text.stripTrailing();
            default -> text;
        };
    }

    private static boolean runs(String program) throws InterruptedException {
        try {
            Process process = new ProcessBuilder(program, "--version")
                    .redirectErrorStream(true)
                    .start();
            process.getInputStream().readAllBytes();
            return process.waitFor(30, TimeUnit.SECONDS) && process.exitValue() == 0;
        } catch (IOException e) {
            return false;
        }
    }

    /** Each is written otherwise than the program would, and stays so where it is not mended. */
    static Stream<String> styles() {
        return Stream.of(
                "    white: 5600 K",
                "    white: \"5600 K\" # double",
                "    white: '5600 K'   # single",
                "    white:\n      5600 K",
                "    \"white\": 5600 K",
                "    white:   5600 K  \t # wide");
    }

    @ParameterizedTest
    @MethodSource("styles")
    void aValueIsWrittenAsTheOldOneWas(String written) throws IOException {
        String text = Files.readString(PAIR)
                .replaceFirst("(?s)(  B:.*?)    white: 4300 K", "$1" + written.replace("\\", "\\\\"));
        Path rig = Files.writeString(folder.resolve("rig.yaml"), text);
        Run run = Run.of("fix", "--rule", "white/differs", rig.toString());
        assertThat(run.out()).contains("\nMENDED\n", "units.B.white: 5600 K -> 4300 K");
        assertThat(Files.readString(rig)).isEqualTo(text.replace("5600 K", "4300 K"));
    }

    @Test
    void aWholeUnitInFlowStyleStaysSo() throws IOException {
        String plan = Files.readString(PAIR);
        String flow = plan.substring(0, plan.indexOf("  B:\n    body: small")) + """
                  B: {body: small, mode: open, profile: log, codec: inside,   # in one go
                      lens: {use: long-zoom, focal: 24 mm, stop: "T2.8"}, shutter: 180°, iso: 800, filters: [ND 0.6],
                      white: '5600 K' , tint: +0, stabilisation: none, media: {use: card, count: 2},
                      timecode: {source: jammed, counting: non-drop}, sound: {rate: 48 kHz, scratch: true}, clock: UTC }
                """;
        Path rig = Files.writeString(folder.resolve("rig.yaml"), flow);
        assertThat(Run.of("fix", rig.toString()).code()).isEqualTo(Akin.PASSES);
        assertThat(Files.readString(rig)).isEqualTo(flow.replace("'5600 K' ,", "'4300 K' ,"));
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void permissionsAreKept() throws IOException {
        Path rig = sample("rig.yaml");
        for (String permissions : List.of("rw-r-----", "rwxrw-r--", "rw-rw-rw-")) {
            Files.write(rig, Files.readAllBytes(SAMPLE));
            Files.setPosixFilePermissions(rig, PosixFilePermissions.fromString(permissions));
            Run.of("fix", rig.toString());
            assertThat(rig).content().contains("shutter: 1/50 ");
            assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(rig)))
                    .isEqualTo(permissions);
        }
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void aLinkIsFollowedAndStays() throws IOException {
        Path real = Files.createDirectory(folder.resolve("real"));
        Path rig = Files.copy(SAMPLE, real.resolve("plan.yaml"));
        Path link = Files.createSymbolicLink(folder.resolve("rig.yaml"), Path.of("real", "plan.yaml"));
        Run.of("fix", link.toString());
        assertThat(Files.isSymbolicLink(link)).isTrue();
        assertThat(Files.isSymbolicLink(rig)).isFalse();
        assertThat(rig).content().contains("shutter: 1/50 ");
        assertThat(real.toFile().list()).containsExactly("plan.yaml");
    }

    @Test
    void whatSomebodyElseChangedMeanwhileIsNotOverwritten() throws IOException {
        Path rig = sample("rig.yaml");
        String read = Files.readString(rig);
        String theirs = read + "# one more thought\n";
        Files.writeString(rig, theirs);
        assertThatThrownBy(() -> InPlace.replace(rig.toString(), read, "mended"))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining(rig + ": this file was changed by somebody else meanwhile");
        assertThat(rig).hasContent(theirs);
        onlyThe("rig.yaml");
        Files.delete(rig);
        assertThatThrownBy(() -> InPlace.replace(rig.toString(), read, "mended"))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("nothing was changed");
        onlyThe();
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void whatMayNotBeWrittenIsNot() throws IOException {
        Path rig = sample("rig.yaml");
        Files.setPosixFilePermissions(rig, PosixFilePermissions.fromString("r--r--r--"));
        assumeFalse(Files.isWritable(rig), "the administrator may write everything");
        Said.of(Run.of("fix", rig.toString()), rig.toString()).says(List.of("may not be written"));
        assertThat(rig).hasSameBinaryContentAs(SAMPLE);
    }

    /** What is refused: the file is as it was, to the byte. */
    record Refused(String name, String text, List<String> args, String place, List<String> words) {
        @Override
        public String toString() {
            return name;
        }
    }

    static Stream<Refused> refused() throws IOException {
        String sample = Files.readString(SAMPLE);
        return Stream.of(
                new Refused("no rig", sample, List.of("fix"), "fix", List.of("a rig file is missing")),
                new Refused("two rigs", sample, List.of("fix", "RIG", "RIG"), "fix", List.of("one rig file is wanted")),
                new Refused(
                        "an unknown rule",
                        sample,
                        List.of("fix", "--rule", "tone/level", "RIG"),
                        "--rule",
                        List.of("'tone/level'", "Did you mean 'tone/levels'?")),
                new Refused(
                        "an unknown unit",
                        sample,
                        List.of("fix", "--unit", "b", "RIG"),
                        "--unit",
                        List.of("'b'", "Did you mean 'B'?", "Allowed: A, B")),
                new Refused(
                        "a dry run twice",
                        sample,
                        List.of("fix", "--dry-run", "--dry-run", "RIG"),
                        "fix",
                        List.of("--dry-run stands there twice")),
                new Refused(
                        "an unknown severity",
                        sample,
                        List.of("fix", "--fail-on", "lost", "RIG"),
                        "fix",
                        List.of("Did you mean 'lossy'?")),
                new Refused(
                        "an unknown tolerance",
                        sample,
                        List.of("fix", "--tolerance", "intercot", "RIG"),
                        "--tolerance",
                        List.of("Did you mean 'intercut'?")),
                new Refused(
                        "an anchor and an alias",
                        sample.replace("lights: [dimmed-led]", "lights: &strip [dimmed-led]")
                                .replace("lights: [dimmed-led, flame]", "lights: *strip"),
                        List.of("fix", "RIG"),
                        at(sample, "[dimmed-led]"),
                        List.of("the anchor &strip", "anchors and aliases are not read")),
                new Refused(
                        "an alias",
                        sample.replace("lights: [dimmed-led, flame]", "lights: *strip"),
                        List.of("fix", "RIG"),
                        at(sample, "[dimmed-led, flame]"),
                        List.of("the alias *strip", "write the value itself")),
                new Refused(
                        "a rig that cannot be read",
                        sample.replace("shutter: 1/60", "shutter: fast"),
                        List.of("fix", "RIG"),
                        at(sample, "1/60"),
                        List.of("\"fast\" is not a shutter")));
    }

    /** Where something first stands in a text, as a message says it. */
    private static String at(String text, String what) {
        String before = text.substring(0, text.indexOf(what));
        return "RIG:" + (before.lines().count()) + ":" + (before.length() - before.lastIndexOf('\n'));
    }

    @ParameterizedTest
    @MethodSource("refused")
    void whatIsRefusedIsLeftAsItWas(Refused refused) throws IOException {
        Path rig = Files.writeString(folder.resolve("rig.yaml"), refused.text());
        Run run = Run.of(refused.args().stream()
                .map(arg -> arg.equals("RIG") ? rig.toString() : arg)
                .toArray(String[]::new));
        Said.of(run, refused.place().replace("RIG", rig.toString())).says(refused.words());
        assertThat(rig).hasBinaryContent(refused.text().getBytes(UTF_8));
        onlyThe("rig.yaml");
    }

    private Path sample(String name) throws IOException {
        return Files.copy(SAMPLE, folder.resolve(name));
    }

    /** Nothing is left over beside it. */
    private void onlyThe(String... names) {
        assertThat(folder.toFile().list()).containsExactlyInAnyOrder(names);
    }
}
