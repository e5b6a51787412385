package akin.engine.cli;

import static org.assertj.core.api.Assertions.assertThat;

import akin.engine.equip.Schemas;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;

/** Folders of data: what they add, what they change, and what is said of it. */
class PackTest {

    private static final Path SAMPLE = Path.of("..", "samples", "night-market", "rig.yaml");
    private static final Path ENCODING = Path.of("..", "shared", "encodings", "acescc.yaml");
    private static final Path TOLERANCE = Path.of("..", "shared", "tolerances", "intercut.yaml");
    private static final String ON = "--on=2027-01-01";

    /** Lower read-out and a higher floor for one mode of a body of the catalogue, and one more mode. */
    private static final String AMENDS = """
            akin-gear: 1
            source: bench
            amends: [fenwright-sedge]
            bodies:
              fenwright-sedge:
                modes:
                  raw-full:
                    readout: {value: 12 ms, source: LED strip}
                    iso-floors: {raw: 1600}
                  slow: {picture: 1920x1080, area: 36.0x20.25 mm, rates: [24000/1001]}
            """;

    @TempDir
    Path folder;

    @Test
    void aPackBringsGearOfEveryKind() throws IOException {
        write("kit/cameras/crane.yaml", """
                akin-gear: 1
                source: invented
                mounts:
                  withy: {name: Withy, flange: 30 mm}
                bodies:
                  crane: {name: Crane, mount: withy, modes: {all: {picture: 1920x1080, rates: [25]}}, profiles: {flat: {encoding: own-log, gamut: own-gamut}}, outputs: {out: {kind: encoded}}}
                lenses:
                  reedling-30: {name: Reedling 30, mount: withy, focal: 30 mm}
                recorders:
                  creel: {name: Creel, codecs: {fine: {kind: encoded, bits: 10, chroma: '4:2:2'}}}
                media:
                  chip: {name: Chip, speed-class: v90}
                adapters:
                  collar: {name: Collar, lens-mount: withy, body-mount: withy, factor: 1}
                """);
        write("kit/own-log.yml", Files.readString(ENCODING).replace("id: acescc", "id: own-log"));
        write("kit/gamuts.yaml", """
                akin-gamuts: 1
                gamuts:
                  - {id: own-gamut, name: Own, red: {x: 0.7, y: 0.3}, green: {x: 0.2, y: 0.7}, blue: {x: 0.1, y: 0.1}, white: {x: 0.3127, y: 0.329}, source: invented}
                """);
        write("kit/limits/strict.yaml", Files.readString(TOLERANCE).replace("blur: 5 %", "blur: 0.1 %"));
        String rig = write("rig.yaml", """
                akin: 1
                production: {name: Marsh, rate: 25}
                match: {hero: A, tolerance: strict}
                kit: {adapters: [collar]}
                units:
                  A: {body: crane, mode: all, profile: flat, lens: {use: reedling-30, adapter: collar}, shutter: 1/50, media: {use: chip, count: 1}}
                  B: {body: crane, mode: all, profile: flat, shutter: 1/51, recorder: {use: creel, output: out, codec: fine}}
                """);
        Run run = Run.of("check", "--gear", folder.resolve("kit").toString(), rig);
        assertThat(run.err()).isEmpty();
        assertThat(run.out()).contains("for strict", "motion/blur-differs").doesNotContain("NOTE");
        Said.of(Run.of("check", rig), rig).says(List.of("strict"));
        Files.move(folder.resolve("kit"), folder.resolve("akin.d"));
        assertThat(Run.of("check", rig)).as("beside the rig it needs no word").isEqualTo(run);
    }

    @Test
    void factsThatAreAmendedCountAndAreSaidWithBothPlaces() throws IOException {
        String rig = Files.copy(SAMPLE, folder.resolve("rig.yaml")).toString();
        String before = Run.of("check", ON, rig).out();
        assertThat(before)
                .contains("frame/readout-differs")
                .contains("floor of ISO 640")
                .doesNotContain("NOTE:");
        write("akin.d/sedge.yaml", AMENDS);
        Run run = Run.of("check", ON, rig);
        assertThat(run.out())
                .doesNotContain("frame/readout-differs")
                .contains("floor of ISO 1600", "NOTE: where the facts come from");
        assertThat(squeezed(run.out()))
                .contains(
                        "bodies.fenwright-sedge.modes.raw-full.readout: akin.d/sedge.yaml:8:26 amends"
                                + " gear/bodies/fenwright-sedge.yaml:",
                        "bodies.fenwright-sedge.modes.raw-full.iso-floors.raw: akin.d/sedge.yaml:9:27 adds it");
        String json = Run.of("check", ON, "--format", "json", rig).out();
        Schemas schemas = new Schemas();
        JsonNode report = schemas.json(json);
        assertThat(schemas.complaints("report", report)).isEmpty();
        assertThat(report.path("notes").get(0).stringValue())
                .startsWith(
                        "bodies.fenwright-sedge.modes.raw-full.readout: akin.d/sedge.yaml:8:26 amends gear/bodies/");
        // What it does not say stays: every other finding is as it was.
        assertThat(before).contains("view/image-circle-short");
        assertThat(run.out()).contains("view/image-circle-short");
    }

    @Test
    void whatTheRigDoesNotUseIsNotNoted() throws IOException {
        String rig = Files.copy(SAMPLE, folder.resolve("rig.yaml")).toString();
        String before = Run.of("check", ON, rig).out();
        write("akin.d/plover.yaml", """
                akin-gear: 1
                overrides: [corvane-plover]
                bodies: {corvane-plover: {name: Another}}
                """);
        assertThat(Run.of("check", ON, rig).out()).isEqualTo(before);
    }

    @Test
    void aWholeEntryGoesInThePlaceOfAnother() throws IOException {
        String rig = Files.copy(SAMPLE, folder.resolve("rig.yaml")).toString();
        String kit = write("kit/strict.yaml", """
                akin-gear: 1
                overrides: [fenwright-standard-24-70]
                lenses:
                  fenwright-standard-24-70: {name: Another, mount: alder, focal: 24 mm, focal-to: 70 mm}
                """);
        write("kit/intercut.yaml", "overrides: [intercut]\n" + Files.readString(TOLERANCE));
        write(
                "kit/acescct.yaml",
                Files.readString(ENCODING).replace("id: acescc", "id: acescct\noverrides: [acescct]"));
        String out =
                squeezed(Run.of("check", ON, "--gear", folder.resolve("kit").toString(), rig)
                        .out());
        assertThat(out)
                .contains(
                        "lenses.fenwright-standard-24-70: " + kit + ":4:3 overrides"
                                + " gear/lenses/fenwright-standard-24-70.yaml:",
                        "encodings.acescct: " + folder.resolve("kit") + "/acescct.yaml:2:5 overrides"
                                + " encodings/acescct.yaml:2:5",
                        "tolerances.intercut: " + folder.resolve("kit") + "/intercut.yaml:1:1 overrides"
                                + " tolerances/intercut.yaml:")
                .contains("waits: view/image-circle-short of B");
    }

    /** The folder that the call names goes before the one beside the rig, which goes before the catalogue. */
    @Test
    void foldersLieOneOverTheOther() throws IOException {
        String rig = Files.copy(SAMPLE, folder.resolve("rig.yaml")).toString();
        write("akin.d/sedge.yaml", AMENDS);
        String more = write(
                "kit/sedge.yaml", AMENDS.replace("12 ms", "21.6 ms").replaceAll("(?m)^ +(iso-floors|slow).*\n", ""));
        Run run = Run.of("check", ON, "--gear", folder.resolve("kit").toString(), rig);
        assertThat(run.out()).contains("frame/readout-differs", "floor of ISO 1600");
        assertThat(Run.of(
                                "check",
                                ON,
                                "--format",
                                "json",
                                "--gear",
                                folder.resolve("kit").toString(),
                                rig)
                        .out())
                .contains("modes.raw-full.readout: " + more + ":8:26 amends akin.d/sedge.yaml:8:26");
        assertThat(Run.of("check", ON, "--gear", folder.resolve("akin.d").toString(), rig)
                        .code())
                .as("the folder beside it named as well is read once")
                .isEqualTo(Akin.FAILS);
    }

    @Test
    void rulesThatLieAmongDataAreNotLoadedAndThatIsSaid() throws IOException {
        String rig = Files.copy(SAMPLE, folder.resolve("rig.yaml")).toString();
        Run before = Run.of("check", ON, rig);
        write("akin.d/more/bad.drl", "this is no rule");
        Run run = Run.of("check", ON, rig);
        assertThat(squeezed(run.out()))
                .contains("akin.d/more/bad.drl is not loaded: a folder of gear is data, and rules in it never run");
        assertThat(run.code()).isEqualTo(before.code());
        assertThat(Run.of("fix", "--dry-run", ON, rig).code())
                .isEqualTo(Run.of("card", rig).code() + 1);
    }

    @Test
    void gearOfTheRigFileItselfGoesBeforeAllOtherAndThatIsSaid() throws IOException {
        String rig = write(
                "rig.yaml",
                Files.readString(SAMPLE)
                        + "gear: {lenses: {fenwright-standard-24-70: {focal: 24 mm, focal-to: 70 mm}}}\n");
        assertThat(squeezed(Run.of("check", ON, rig).out()))
                .containsPattern("lenses.fenwright-standard-24-70: \\S+rig.yaml:\\d+:17 goes before"
                        + " gear/lenses/fenwright-standard-24-70.yaml:\\d+:3");
    }

    @Test
    void theSameReportWhereverTheFolderIs() throws IOException {
        write("one/akin.d/sedge.yaml", AMENDS);
        write("two/akin.d/sedge.yaml", AMENDS);
        String one = Files.copy(SAMPLE, folder.resolve("one/rig.yaml")).toString();
        String two = Files.copy(SAMPLE, folder.resolve("two/rig.yaml")).toString();
        assertThat(Run.of("check", ON, "--format", "json", one).out().replace(one, "RIG"))
                .isEqualTo(Run.of("check", ON, "--format", "json", two).out().replace(two, "RIG"));
        assertThat(Run.of("check", ON, one, two).out()).contains("NOTE:");
    }

    /**
     * A bad folder.
     *
     * @param files its files by name; the sign {@code ‸} stands where the message must point
     * @param words what the message must say
     */
    record Bad(String name, Map<String, String> files, List<String> words) {
        @Override
        public String toString() {
            return name;
        }
    }

    private static Bad bad(String name, String text, String... words) {
        return new Bad(name, Map.of("a.yaml", text), List.of(words));
    }

    static Stream<Bad> badFolders() throws IOException {
        String encoding = Files.readString(ENCODING);
        String tolerance = Files.readString(TOLERANCE);
        return Stream.of(
                bad("an empty file", "‸", "nothing is written in this file"),
                bad("no header", "‸bodies: {x: {name: X}}\n", "starts with one of akin-gear: 1"),
                bad("a header misspelt", "‸akin-geer: 1\n", "Did you mean 'akin-gear'?"),
                bad("two headers", "akin-gear: 1\n‸akin-encoding: 1\n", "starts with one of"),
                bad("a list", "‸- a\n- b\n", "starts with one of"),
                bad("gear of tomorrow", "akin-gear: ‸2\n", "akin-gear: 1"),
                bad("an unknown key", "akin-gear: 1\n‸bodeis: {}\n", "Did you mean 'bodies'?"),
                bad("a bad fact", "akin-gear: 1\nbodies: {x: {power: ‸9 A}}\n", "9 A"),
                bad("a key twice", "akin-gear: 1\nbodies: {x: {power: 9 W, ‸power: 8 W}}\n", "stands here again"),
                bad("an id with a dot", "akin-gear: 1\nbodies: {‸x.y: {name: X}}\n", "small letters and digits"),
                bad(
                        "a body of the catalogue, undeclared",
                        "akin-gear: 1\nbodies:\n  ‸corvane-plover: {name: Mine}\n",
                        "bodies.corvane-plover stands in gear/bodies/corvane-plover.yaml:5:3 already",
                        "overrides: [corvane-plover]",
                        "amends: [corvane-plover]"),
                bad(
                        "a mount of the catalogue, undeclared",
                        "akin-gear: 1\nmounts: {‸alder: {name: Mine}}\n",
                        "mounts.alder stands in gear/mounts.yaml:"),
                bad(
                        "an encoding of the catalogue, undeclared",
                        encoding.replace("id: ", "id: ‸"),
                        "encodings.acescc stands in encodings/acescc.yaml:2:5 already"),
                bad(
                        "a gamut of the catalogue, undeclared",
                        "akin-gamuts: 1\ngamuts: [{id: ‸bt709, name: X, red: {x: 0.7, y: 0.3}, green: {x: 0.2, y: 0.7},"
                                + " blue: {x: 0.1, y: 0.1}, white: {x: 0.3, y: 0.3}, source: invented}]\n",
                        "gamuts.bt709 stands in gamuts.yaml:3:9 already"),
                bad(
                        "a gamut that no light has",
                        "akin-gamuts: 1\ngamuts: [‸{id: own, name: X, red: {x: 1, y: 0}, green: {x: 0.2, y: 0.7}, blue:"
                                + " {x: 0.1, y: 0.1}, white: {x: 0.3, y: 0.3}, source: invented}]\n",
                        "a finite y other than 0"),
                new Bad(
                        "a tolerance profile of the catalogue, undeclared",
                        Map.of("insert.yaml", "‸" + tolerance.substring(tolerance.indexOf("akin-tolerance"))),
                        List.of("tolerances.insert stands in tolerances/insert.yaml:", "overrides: [insert]")),
                bad(
                        "nothing to override",
                        "akin-gear: 1\noverrides: [mine]\nbodies: {‸mine: {name: Mine}}\n",
                        "to override bodies.mine, but there is nothing of that name"),
                bad(
                        "nothing to amend",
                        "akin-gear: 1\namends: [mine]\nbodies: {‸mine: {name: Mine}}\n",
                        "to amend bodies.mine, but there is nothing of that name"),
                bad(
                        "an override that is not in the file",
                        "akin-gear: 1\noverrides: [‸corvane-plovr]\nbodies: {corvane-plover: {name: X}}\n",
                        "nothing in this file is called 'corvane-plovr'",
                        "Did you mean 'corvane-plover'?"),
                bad(
                        "an override twice",
                        "akin-gear: 1\noverrides: [corvane-plover, ‸corvane-plover]\n",
                        "stands here twice"),
                bad(
                        "overrides and amends",
                        "akin-gear: 1\noverrides: [corvane-plover]\n‸amends: [corvane-plover]\n",
                        "stands under overrides too"),
                bad(
                        "an amended body that does not fit",
                        "akin-gear: 1\namends: [corvane-plover]\nbodies: {corvane-plover: {modes: {hd: {crop-factor: ‸1.5}}}}\n",
                        "crop factor"),
                bad(
                        "an encoding without a piece",
                        encoding.replaceFirst("(?s)id: acescc\n(.*)pieces:.*(source: .*?\n).*", "id: mine\n$1$2")
                                .replaceFirst("^", "‸"),
                        "the key 'pieces' is missing"),
                bad(
                        "a limit that is missing",
                        tolerance.replace("limits:\n  blur: 5 %\n  view", "limits:\n  ‸view"),
                        "the limit 'blur' is missing"),
                bad("a limit of nothing", tolerance.replace("blur: 5 %", "blur: ‸0 %"), "a tolerance is over 0"),
                bad("a key of no tolerance profile", tolerance.replace("limits:", "‸limit:"), "Did you mean 'limits'?"),
                new Bad(
                        "the same body in two files",
                        Map.of(
                                "a.yaml",
                                "akin-gear: 1\nbodies: {mine: {name: Mine}}\n",
                                "b/c.yaml",
                                "akin-gear: 1\nbodies:\n  ‸mine: {name: Mine}\n"),
                        List.of("bodies.mine stands in this folder twice", "a.yaml:2:10")));
    }

    @ParameterizedTest
    @MethodSource("badFolders")
    void aBadFolderIsRefusedAtItsPlace(Bad bad) throws IOException {
        String rig = Files.copy(SAMPLE, folder.resolve("rig.yaml")).toString();
        String place = "";
        for (Map.Entry<String, String> file : bad.files().entrySet()) {
            int at = file.getValue().indexOf('‸');
            String path = write("akin.d/" + file.getKey(), file.getValue().replace("‸", ""));
            if (at >= 0) {
                String before = file.getValue().substring(0, at);
                place = path + ":" + (before.chars().filter(c -> c == '\n').count() + 1) + ":"
                        + (before.length() - before.lastIndexOf('\n'));
            }
        }
        Said.of(Run.of("check", rig), place).says(bad.words());
        Said.of(Run.of("fix", rig), place).says(bad.words());
        assertThat(Path.of(rig)).hasSameBinaryContentAs(SAMPLE);
        String kit = folder.resolve("akin.d").toString();
        Said.of(Run.of("gear", "test", kit), place).says(bad.words());
        Said.of(Run.of("gear", "list", "--gear", kit), place).says(bad.words());
        Said.of(Run.of("check", "--gear", kit, PAIR.toString()), place).says(bad.words());
    }

    private static final Path PAIR =
            Path.of("..", "rules", "src", "main", "resources", "akin", "rules", "matched-pair.yaml");

    @Test
    void aFolderThatIsNone() throws IOException {
        String rig = Files.copy(SAMPLE, folder.resolve("rig.yaml")).toString();
        String nowhere = folder.resolve("nowhere").toString();
        Said.of(Run.of("check", "--gear", nowhere, rig), nowhere).says(List.of("there is no folder of gear files"));
        Said.of(Run.of("check", "--gear", rig, rig), rig).says(List.of("this is a file; name the folder"));
        String empty = Files.createDirectory(folder.resolve("empty")).toString();
        Said.of(Run.of("check", "--gear", empty, rig), empty).says(List.of("no gear file, named *.yaml"));
        Said.of(Run.of("gear", "test", empty), empty).says(List.of("no gear file, named *.yaml"));
        String beside = write("akin.d", "akin-gear: 1\n");
        Said.of(Run.of("check", rig), beside).says(List.of("this is a file; name the folder"));
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void hiddenFilesAndOtherFilesAreLeftAlone() throws IOException {
        String rig = Files.copy(SAMPLE, folder.resolve("rig.yaml")).toString();
        write("akin.d/.hidden/a.yaml", "no data");
        write("akin.d/.a.yaml", "no data");
        write("akin.d/notes.txt", "no data");
        Files.createSymbolicLink(folder.resolve("akin.d/round"), folder);
        assertThat(Run.of("check", ON, rig).err()).isEmpty();
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
