package akin.engine.cli;

import static org.assertj.core.api.Assertions.assertThat;

import akin.engine.equip.Schemas;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** {@code akin gear}: looking at what is known, and writing down more. */
class GearTest {

    private static final Path PAIR =
            Path.of("..", "rules", "src", "main", "resources", "akin", "rules", "matched-pair.yaml");

    @TempDir
    Path folder;

    @Test
    void listsByKindWithWhereEachComesFrom() throws IOException {
        String kit = write("kit/a.yaml", """
                akin-gear: 1
                amends: [corvane-plover]
                bodies:
                  corvane-plover: {firmware: "9"}
                  crane: {name: Crane}
                """);
        Run run = Run.of("gear", "list", "--gear", folder.resolve("kit").toString());
        String out = squeezed(run.out());
        assertThat(run.code()).isEqualTo(Akin.PASSES);
        assertThat(out)
                .contains(
                        "BODIES corvane-plover: Corvane Plover " + kit + ":4:3, amending"
                                + " gear/bodies/corvane-plover.yaml:5:3 crane: Crane " + kit + ":5:3",
                        "LENSES ",
                        "acescc: ACEScc the catalogue: encodings/acescc.yaml:2:5",
                        "TOLERANCES insert the catalogue: ");
        String lenses = Run.of("gear", "list", "lenses").out();
        assertThat(lenses).contains("LENSES").doesNotContain("BODIES");
    }

    /** Every id that is listed can be shown, and what is shown names a place for every fact. */
    @Test
    void showsEveryEntryOfTheCatalogue() {
        List<String> ids = Run.of("gear", "list")
                .out()
                .lines()
                .filter(line -> line.matches(" {4}[a-z0-9-]+(:.*)?"))
                .map(line -> line.strip().replaceAll(":.*", ""))
                .toList();
        assertThat(ids).hasSizeGreaterThan(50);
        for (String id : ids) {
            Run run = Run.of("gear", "show", id);
            assertThat(run.code()).as(run.err()).isEqualTo(Akin.PASSES);
            assertThat(run.out()).containsAnyOf("NOT KNOWN", "NOTHING IS UNKNOWN");
        }
    }

    @Test
    void showsFactsWithSourcesAndWhatIsUnknown() throws IOException {
        String kit = write("kit/a.yaml", """
                akin-gear: 1
                source: the leaflet
                bodies:
                  crane:
                    mount: alder
                    iso: {value: [800, 3200], source: the manual}
                    modes:
                      all: {source: the test, picture: 1920x1080, crop-factor: 1.5 by width}
                      half: {picture: 960x540}
                """);
        Run run = Run.of("gear", "show", "--gear", folder.resolve("kit").toString(), "crane");
        assertThat(squeezed(run.out()))
                .startsWith("BODIES crane " + kit + ":4:3 ")
                .contains(
                        "mount: alder from: the leaflet [" + kit + ":5:12]",
                        "iso: [800, 3200] from: the manual [" + kit + ":6:18]",
                        "modes.all.picture: 1920x1080 from: the test [" + kit + ":8:40]",
                        "modes.half.picture: 960x540 from: the leaflet");
        String unknown = run.out().substring(run.out().indexOf("NOT KNOWN"));
        assertThat(unknown)
                .contains("    modes.all.readout: ", "    modes.half.area: ", "    shutter: ", "    profiles: ")
                .doesNotContain("modes.all.area", "modes.all.picture", "    mount: ", "modes.all.profiles");
    }

    /** Facts taken out of a body of which all is known are the facts that the trial asks for, rule by rule. */
    @Test
    void theTrialOfABodyOfWhichAllIsKnownWaitsForNothing() throws IOException {
        write("kit/small.yaml", small());
        Run run = Run.of("gear", "test", folder.resolve("kit").toString());
        assertThat(run.code()).isEqualTo(Akin.PASSES);
        assertThat(run.out())
                .contains(": valid, 1 file, 1 entry", "BODY known", "Can be checked by ", "view/width-differs")
                .doesNotContain("Cannot be checked");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "readout: 12 ms, |frame/readout-differs|modes.open.readout (a test the crew can shoot)",
                "iso-floor: 400, |exposure/iso-below-floor|profiles.log.iso-floor (the maker's manual)",
                "headroom: 7 stops, |exposure/headroom-differs|profiles.log.headroom (a test the crew can shoot)",
                "area: 24.0x13.5 mm, |view/width-differs|modes.open.area (the maker's specification sheet)",
                "connector: 12g-sdi, |link/bandwidth|outputs.out.connector (the maker's specification sheet)",
                "ppm: 0.5, |sync/drift|clock.ppm (a test the crew can shoot)",
            })
    void theTrialNamesTheFactThatARuleWaitsFor(String fact, String rule, String missing) throws IOException {
        String text = small();
        assertThat(text).contains(fact);
        write("kit/small.yaml", text.replaceFirst(java.util.regex.Pattern.quote(fact), ""));
        String out = Run.of("gear", "test", folder.resolve("kit").toString()).out();
        assertThat(out).contains("Cannot be checked by ");
        String can = out.substring(0, out.indexOf("Cannot be checked"));
        String cannot = out.substring(out.indexOf("Cannot be checked"));
        assertThat(squeezed(can)).doesNotContain(rule + ",");
        assertThat(squeezed(cannot))
                .containsPattern(java.util.regex.Pattern.quote(rule) + "( [^/]+)?"
                        + java.util.regex.Pattern.quote(" " + missing));
    }

    @Test
    void aBodyOfWhichNothingIsKnownIsTriedAsWell() throws IOException {
        write("kit/a.yaml", "akin-gear: 1\nbodies: {crane: {name: Crane}}\n");
        Run run = Run.of("gear", "test", folder.resolve("kit").toString());
        assertThat(run.code()).isEqualTo(Akin.PASSES);
        assertThat(run.out())
                .contains("modes.any.area (the maker's specification sheet)", "profiles.any.encoding", "    mount (")
                .doesNotContain("units.B", "recorders.");
    }

    /** The small body of the matched pair, as a file of its own. */
    private static String small() throws IOException {
        String pair = Files.readString(PAIR);
        int start = pair.indexOf("    small:\n");
        return "akin-gear: 1\nbodies:\n"
                + pair.substring(start, pair.indexOf("  lenses:\n", start))
                        .replaceAll("(?m)^  ", "")
                        .replace("small:", "known:");
    }

    static Stream<List<String>> unknownWords() {
        return Stream.of(
                List.of("mount: aldre", "3:18", "Did you mean 'alder'?"),
                List.of("profiles: {log: {encoding: acesc}}", "3:38", "Did you mean 'acescc'?"),
                List.of("profiles: {log: {gamut: bt708}}", "3:35", "Did you mean 'bt709'?"),
                List.of("modes: {all: {profiles: [log]}}, profiles: {lag: {look: true}}", "3:36", "'lag'"),
                List.of("modes: {all: {codecs: [x]}}", "3:34", "Allowed: none"),
                List.of("modes: {all: {iso-floors: {log: 800}}}", "3:43", "nothing is called 'log'"),
                List.of("outputs: {out: {encoding: nothing}}", "3:37", "nothing is called 'nothing'"));
    }

    @ParameterizedTest
    @MethodSource("unknownWords")
    void testingFindsWordsThatNothingAnswersTo(List<String> bad) throws IOException {
        String file = write("kit/a.yaml", "akin-gear: 1\nbodies:\n  crane: {" + bad.get(0) + "}\n");
        Said.of(Run.of("gear", "test", folder.resolve("kit").toString()), file)
                .isAt(bad.get(1))
                .says(List.of(bad.get(2)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"body", "lens", "recorder", "media", "adapter", "mount"})
    void aNewSheetIsValidAtOnceAndWhenItsLinesAreFilledIn(String kind) throws IOException {
        Path file = folder.resolve("new.yaml");
        Run run = Run.of("gear", "new", kind, "crane", "--out", file.toString());
        assertThat(run)
                .isEqualTo(new Run(
                        0,
                        file + ": written. Fill in what else is known; akin gear test says what it is good for.\n",
                        ""));
        String text = Files.readString(file);
        assertThat(new Schemas().complaints("gear", text)).isEmpty();
        assertThat(text).contains("source: }", "#source:");
        assertThat(Run.of("gear", "test", folder.toString()).code()).isEqualTo(Akin.PASSES);
        // Every commented line stands where it belongs: without its # the reader knows the key.
        String name = kind.equals("adapter") ? "electronics" : kind.equals("mount") ? "flange" : "maker";
        String value = name.equals("electronics") ? "true" : name.equals("flange") ? "30 mm" : "Thorn";
        String filled = text.replaceFirst(
                "#" + name + ": \\{value: , source: }", name + ": {value: " + value + ", source: the leaflet}");
        assertThat(filled).isNotEqualTo(text);
        Files.writeString(file, filled);
        assertThat(squeezed(Run.of("gear", "show", "--gear", folder.toString(), "crane")
                        .out()))
                .contains(name + ": " + value + " from: the leaflet");
    }

    @Test
    void aNewSheetHasTheValuesThatAreGiven() throws IOException {
        Path file = folder.resolve("new.yaml");
        Run run = Run.of(
                "gear",
                "new",
                "body",
                "crane",
                "--out",
                file.toString(),
                "--set",
                "source=the leaflet",
                "--set",
                "mount=alder",
                "--set",
                "mount.source=the badge: seen",
                "--set",
                "firmware=1.30",
                "--set",
                "iso={from: 100, to: 6400}",
                "--set",
                "modes.all.picture=1920x1080",
                "--set",
                "modes.all.readout=12 ms",
                "--set",
                "modes.all.readout.source=LED strip",
                "--set",
                "codecs.fine.chroma=4:2:2");
        assertThat(run.err()).isEmpty();
        assertThat(Files.readString(file))
                .contains(
                        "\nsource: the leaflet\n",
                        "\n    mount: {value: alder, source: 'the badge: seen'}\n",
                        "\n    firmware: '1.30'\n",
                        "\n    iso: {from: 100, to: 6400}\n",
                        "\n        readout: {value: 12 ms, source: 'LED strip'}\n",
                        "\n        chroma: '4:2:2'\n",
                        "\n        #area: {value: , source: }\n");
        assertThat(squeezed(Run.of("gear", "show", "--gear", folder.toString(), "crane")
                        .out()))
                .contains(
                        "mount: alder from: the badge: seen",
                        "modes.all.readout: 12 ms from: LED strip",
                        "iso: {from: 100, to: 6400} from: the leaflet");
    }

    @Test
    void aNewEncodingFormatAndToleranceProfile() {
        assertThat(Run.of(
                                "gear",
                                "new",
                                "encoding",
                                "own-log",
                                "--out",
                                folder.resolve("a.yaml").toString(),
                                "--set",
                                "kind=log",
                                "--set",
                                "code-scale=full",
                                "--set",
                                "pieces=[{linear: {slope: 1, offset: 0}}]",
                                "--set",
                                "source=invented")
                        .err())
                .isEmpty();
        assertThat(Run.of(
                                "gear",
                                "new",
                                "format",
                                "own-format",
                                "--out",
                                folder.resolve("b.yaml").toString(),
                                "--set",
                                "area=20 x 10 mm")
                        .err())
                .isEmpty();
        assertThat(Run.of(
                                "gear",
                                "new",
                                "tolerance",
                                "tight",
                                "--out",
                                folder.resolve("tight.yaml").toString(),
                                "--set",
                                "blur=2 %")
                        .err())
                .isEmpty();
        assertThat(Run.of("gear", "list", "--gear", folder.toString()).out())
                .contains("    own-log", "    own-format", "    tight");
        assertThat(Run.of("check", "--gear", folder.toString(), "--tolerance", "tight", PAIR.toString())
                        .code())
                .isEqualTo(Akin.PASSES);
    }

    /** A call that is refused: what is said, and that nothing is written. */
    static Stream<List<String>> refused() {
        return Stream.of(
                List.of("gear", "gear", "a word is missing, such as: akin gear list"),
                List.of("gear lsit", "gear", "Did you mean 'list'?"),
                List.of("gear list bodeis", "gear", "Did you mean 'bodies'?"),
                List.of("gear list bodies lenses", "gear", "a word too many: 'lenses'"),
                List.of("gear show", "gear", "akin gear show ID"),
                List.of("gear show corvane-plovr", "gear", "Did you mean 'corvane-plover'?"),
                List.of("gear test", "gear", "akin gear test DIR"),
                List.of("gear test nowhere", "nowhere", "there is no folder of gear files here"),
                List.of("gear list --set a=b", "gear", "--set is for akin gear new"),
                List.of("gear show x --out y", "gear", "--out is for akin gear new"),
                List.of("gear new", "gear", "akin gear new KIND ID"),
                List.of("gear new body", "gear", "akin gear new KIND ID"),
                List.of("gear new boddy crane --out OUT", "gear", "Did you mean 'body'?"),
                List.of("gear new body Crane --out OUT", "gear new", "small letters and digits"),
                List.of("gear new body a/../../b --out OUT", "gear new", "small letters and digits"),
                List.of(
                        "gear new body corvane-plover --out OUT",
                        "gear new",
                        "stands in gear/bodies/corvane-plover.yaml:5:3 already"),
                List.of("gear new body crane --out OUT --set mount", "--set", "write KEY=VALUE"),
                List.of("gear new body crane --out OUT --set mount=", "--set mount", "no value stands here"),
                List.of("gear new body crane --out OUT --set mount=a --set mount=b", "--set", "given twice"),
                List.of("gear new body crane --out OUT --set muont=a", "--set muont", "Did you mean 'mount'?"),
                List.of(
                        "gear new body crane --out OUT --set modes.all.raedout=a",
                        "--set modes.all.raedout",
                        "Did you mean 'modes.ID.readout'?"),
                List.of("gear new body crane --out OUT --set power=9A", "--set power", "9A"),
                List.of("gear new body crane --out OUT --set modes.all.readout=x", "--set modes.all.readout", "x"),
                List.of(
                        "gear new body crane --out OUT --set mount.source=x",
                        "--set mount.source",
                        "there is no mount"),
                List.of("gear new format crane --out OUT", "gear new", "must be known: area"),
                List.of(
                        "gear new encoding crane --out OUT",
                        "gear new",
                        "must be known: kind, code-scale, pieces, source"),
                List.of("gear new tolerance crane --out OUT --set blur=0%", "--set blur", "over 0"),
                List.of("gear new body crane --out OUT/below/it", "OUT/below/it", "cannot be written there"));
    }

    @ParameterizedTest
    @MethodSource("refused")
    void aCallThatIsRefusedWritesNothing(List<String> call) {
        String out = folder.resolve("new.yaml").toString();
        String[] words = call.get(0).replace("OUT", out).split(" ", -1);
        Said.of(Run.of(words), call.get(1).replace("OUT", out)).says(List.of(call.get(2)));
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void whatIsThereIsNotWrittenOver() throws IOException {
        String file = write("crane.yaml", "mine\n");
        Said.of(Run.of("gear", "new", "body", "crane", "--out", file), file)
                .says(List.of("there is such a file already; nothing was written"));
        assertThat(Path.of(file)).hasContent("mine\n");
    }

    /** At a terminal it asks; what does not fit is asked for again, and what is left blank stays open. */
    @Test
    void asksForValuesAtATerminal() throws IOException {
        Path file = folder.resolve("new.yaml");
        Asked asked = new Asked("the leaflet", "Crane", "");
        int code = asked.run("gear", "new", "mount", "crane", "--out", file.toString());
        assertThat(code).isEqualTo(Akin.PASSES);
        assertThat(asked.printed())
                .contains("What is not known is left blank.", "\nsource: ", "\nname: ", "\nflange: ");
        assertThat(Files.readString(file)).contains("source: the leaflet\n", "    name: Crane\n");
    }

    @Test
    void asksAgainForWhatDoesNotFit() throws IOException {
        Path file = folder.resolve("new.yaml");
        Asked asked = new Asked("", "Crane", "thirty", "30 mm");
        assertThat(asked.run("gear", "new", "mount", "crane", "--out", file.toString()))
                .isEqualTo(Akin.PASSES);
        assertThat(asked.printed()).contains("\"thirty\"");
        assertThat(Files.readString(file)).contains("    flange: 30 mm\n").doesNotContain("thirty");
    }

    @Test
    void asksForPartsById() throws IOException {
        Path file = folder.resolve("new.yaml");
        // Every question up to the modes is left blank; then a mode with a picture, and no more answers.
        String[] answers = new String[40];
        java.util.Arrays.fill(answers, "");
        Asked blank = new Asked(answers);
        blank.run(
                "gear",
                "new",
                "body",
                "blank",
                "--out",
                folder.resolve("blank.yaml").toString());
        assertThat(blank.printed()).contains("id of the first of outputs: ");
        String upToModes = blank.printed().substring(0, blank.printed().indexOf("id of the first of modes"));
        List<String> some = new java.util.ArrayList<>(
                java.util.Collections.nCopies(upToModes.split("\n[a-z-]+: ", -1).length - 1, ""));
        some.addAll(List.of("all", "1920x1080"));
        Asked asked = new Asked(some.toArray(String[]::new));
        assertThat(asked.run("gear", "new", "body", "crane", "--out", file.toString()))
                .isEqualTo(Akin.PASSES);
        assertThat(Files.readString(file)).contains("    modes:\n      all:\n", "        picture: 1920x1080\n");
    }

    @Test
    void flagsGivenMeanNoQuestions() {
        Asked asked = new Asked("never");
        asked.run(
                "gear",
                "new",
                "mount",
                "crane",
                "--out",
                folder.resolve("new.yaml").toString(),
                "--set",
                "flange=30 mm");
        assertThat(asked.printed()).doesNotContain("flange: ");
    }

    /** A call with somebody there to answer. */
    private static final class Asked {
        private final StringWriter out = new StringWriter();
        private final BufferedReader in;

        private Asked(String... answers) {
            in = new BufferedReader(new StringReader(String.join("\n", answers)));
        }

        private int run(String... args) {
            return Akin.run(in, new PrintWriter(out, true), new PrintWriter(out, true), args);
        }

        private String printed() {
            return out.toString();
        }
    }

    private static String squeezed(String report) {
        return report.replaceAll("\\s+", " ");
    }

    private String write(String name, String text) throws IOException {
        Path file = folder.resolve(name);
        Files.createDirectories(file.getParent());
        return Files.writeString(file, text).toString();
    }
}
