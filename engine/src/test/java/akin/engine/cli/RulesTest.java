package akin.engine.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import akin.engine.book.RulePack;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Rules of one's own: who lets them run, what they may do, and what becomes of their mistakes. */
class RulesTest {

    private static final String OWN = "akin.own";
    private static final String RIG = "../samples/lantern-room/rig.yaml";

    /** What a good rule starts with. */
    private static final String HEAD = """
            package own.house

            import akin.model.finding.Finding
            import akin.model.finding.Severity
            import akin.model.rig.Rig
            import akin.model.rig.Unit

            """;

    @TempDir
    Path folder;

    private String before;

    @BeforeEach
    void keepsNothingBetweenTests() {
        before = System.getProperty(OWN);
        System.setProperty(OWN, folder.resolve("own").toString());
    }

    @AfterEach
    void putsBackWhatWasSet() {
        if (before == null) {
            System.clearProperty(OWN);
        } else {
            System.setProperty(OWN, before);
        }
    }

    private String pack(String id, String then) throws IOException {
        return pack(id, "$unit : Unit(iso() != null, iso().value() > 100)", then);
    }

    /** A folder with one rule and its page. */
    private String pack(String id, String when, String then) throws IOException {
        Path pack = folder.resolve("house");
        String name = id.substring(id.indexOf('/') + 1);
        write(
                pack.resolve(name + ".drl"),
                HEAD + "rule \"" + id + "\"\nwhen\n  " + when + "\nthen\n  " + then + "\nend\n");
        write(pack.resolve(name + ".md"), page(id));
        return pack.toString();
    }

    private static String finds(String id) {
        return "insert(Finding.of(\"" + id + "\", Severity.ADVICE).units($unit.name()).at($unit.path(\"iso\"))"
                + ".value(\"iso\", $unit.name(), $unit.iso()).build());";
    }

    private static String page(String id) {
        return """
                ---
                id: %s
                title: "{unit} is rated high"
                because: "{unit} is planned at ISO {iso:unit}."
                severities: [advice]
                scope: unit
                needs: []
                sources: ["agreed by this production"]
                ---
                ## Fires

                ```yaml
                units:
                  B: {iso: 3200}   # finds: advice
                ```

                ## Stays quiet

                ```yaml
                units:
                  B: {iso: 800}
                ```
                """.formatted(id);
    }

    private static void write(Path file, String text) throws IOException {
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
    }

    @Test
    void aNewRuleIsWrittenProvenAndFinds() {
        String house = folder.resolve("house").toString();
        assertThat(Run.of("rules", "new", house, "house/iso-high").code()).isZero();
        Run test = Run.of("rules", "test", house);
        assertThat(test.out()).contains("house/iso-high: 2 examples give what they say", "2 examples run, 0 mistakes");
        assertThat(test.code()).isZero();
        assertThat(Run.of("explain", "house/iso-high", "--rules", house).out())
                .contains("is planned at ISO 3200", "agreed by this production");
        assertThat(Run.of("explain", "--rules", house).out()).contains("\nhouse\n  house/iso-high (advice)");
        assertThat(Run.of("rules", "new", house, "house/iso-high").err()).contains("is there already");
    }

    @Test
    void anExampleThatDoesNotHoldFailsWithItsLine() throws IOException {
        String house = pack("house/iso-high", finds("house/iso-high"));
        Run test = Run.of("rules", "test", house);
        assertThat(test.code()).isEqualTo(1);
        assertThat(test.out())
                .contains("house/iso-high.md:20: finds: the example says nothing, the rule advice", "2 mistakes");
    }

    @Test
    void rulesRunOnlyWhereTheCallNamesThem() throws IOException {
        String house = pack("house/iso-high", finds("house/iso-high"));
        Run with = Run.of("check", RIG, "--rules", house);
        assertThat(with.out())
                .contains("A is rated high", "[house/iso-high, line", "rules of " + house + " are loaded (");
        assertThat(Run.of("check", RIG).out()).doesNotContain("house/iso-high", "are loaded");
    }

    /** Neither a key of a rig file nor what lies beside it makes anything run. */
    @Test
    void aRigFileCannotAskForRules() throws IOException {
        pack("house/iso-high", finds("house/iso-high"));
        Path rig = folder.resolve("rig.yaml");
        String text = Files.readString(Path.of(RIG));
        write(rig, text);
        Files.move(folder.resolve("house"), folder.resolve("akin.d"));
        assertThat(Run.of("check", rig.toString()).out())
                .doesNotContain("is rated high")
                .contains("akin.d/iso-high.drl is not loaded");
        write(rig, text + "\nrules: akin.d\n");
        Run asked = Run.of("check", rig.toString());
        assertThat(asked.code()).isEqualTo(2);
        assertThat(asked.err()).contains("rules");
    }

    @Test
    void trustHoldsUntilAnythingChanges() throws IOException {
        String house = pack("house/iso-high", finds("house/iso-high"));
        Run trust = Run.of("rules", "trust", house);
        assertThat(trust.out()).contains("house/iso-high").containsPattern("[0-9a-f]{64}");
        assertThat(Run.of("check", RIG).out()).contains("A is rated high");
        assertThat(Run.of("rules", "list").out()).contains(house + ": trusted");

        Path page = Path.of(house, "iso-high.md");
        Files.writeString(page, Files.readString(page).replace("is rated high", "is rated higher"));
        Run changed = Run.of("check", RIG);
        assertThat(changed.out()).doesNotContain("is rated high");
        assertThat(changed.err()).contains("changed since you trusted them", "akin rules trust " + house);
        assertThat(Run.of("rules", "list").out()).contains("changed since, not loaded");

        Run.of("rules", "trust", house);
        assertThat(Run.of("check", RIG).out()).contains("A is rated higher");
        assertThat(Run.of("rules", "distrust", house).code()).isZero();
        assertThat(Run.of("check", RIG).out()).doesNotContain("is rated higher");
        assertThat(Run.of("rules", "distrust", house).err()).contains("is not on the list");
    }

    @Test
    void aListThatAnotherCouldHaveWrittenIsNoTrust() throws IOException {
        String house = pack("house/iso-high", finds("house/iso-high"));
        Run.of("rules", "trust", house);
        Path list = folder.resolve("own/.config/trusted-rules");
        assertThat(list).exists();
        Files.setPosixFilePermissions(list, PosixFilePermissions.fromString("rw-rw-rw-"));
        assertThat(Run.of("check", RIG).out()).doesNotContain("is rated high");
    }

    @Test
    void aDigestTellsEveryChangeApart() {
        RulePack one = new RulePack("a", new TreeMap<>(java.util.Map.of("x.drl", "ab", "y.drl", "c")));
        assertThat(Stream.of(
                                one,
                                new RulePack("a", new TreeMap<>(java.util.Map.of("x.drl", "a", "y.drl", "bc"))),
                                new RulePack("a", new TreeMap<>(java.util.Map.of("x.drl", "ab", "z.drl", "c"))),
                                new RulePack("a", new TreeMap<>(java.util.Map.of("x.drl", "ab "))))
                        .map(RulePack::digest))
                .doesNotHaveDuplicates();
        assertThat(new RulePack("elsewhere", one.files()).digest()).isEqualTo(one.digest());
    }

    static List<Arguments> mistakes() {
        return List.of(
                arguments("iso().value() > 100", "izo().value() > 100", ":11:", "izo"),
                arguments(": Unit(", ": Unot(", ":11:", "Unot"),
                arguments(".units($unit", ".unitz($unit", ":13:", "unitz"),
                arguments("\nwhen\n", "\nwhenn\n", ":10:", "whenn"),
                arguments("package own.house", "package akin.rules.motion", ":1:9: ", "choose another"),
                arguments("package own.house", "", ":1:1: ", "starts with its package"));
    }

    @ParameterizedTest
    @MethodSource("mistakes")
    void aMistakeComesBackWithItsOwnLine(String right, String wrong, String place, String said) throws IOException {
        String house =
                pack("house/iso-high", "$unit : Unit(iso() != null, iso().value() > 100)", finds("house/iso-high"));
        Path drl = Path.of(house, "iso-high.drl");
        String text = Files.readString(drl).replace(right, wrong);
        // One line more, so that no line is right by accident.
        Files.writeString(drl, text.replace("import akin.model.rig.Unit\n", "import akin.model.rig.Unit\n// mine\n"));
        Run check = Run.of("check", RIG, "--rules", house);
        assertThat(check.code()).isEqualTo(2);
        assertThat(check.err()).contains("iso-high.drl" + place, said).doesNotContain("\tat ");
        assertThat(check.err().lines()).hasSize(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"motion/blur-differs", "kit/payload"})
    void aRuleOfAkinsOwnCannotBeReplaced(String id) throws IOException {
        Run check = Run.of("check", RIG, "--rules", pack(id, finds(id)));
        assertThat(check.code()).isEqualTo(2);
        assertThat(check.err()).contains(id, "never replaced");
    }

    @Test
    void aRuleNeedsItsPageAndAPageItsRule() throws IOException {
        String house = pack("house/iso-high", finds("house/iso-high"));
        Path page = Path.of(house, "iso-high.md");
        Files.writeString(page, page("house/iso-hihg"));
        assertThat(Run.of("check", RIG, "--rules", house).err())
                .contains("the rule 'house/iso-high' has no page", "house/iso-hihg");
        Files.writeString(page, page("house/iso-high"));
        write(Path.of(house, "other.md"), page("house/other"));
        assertThat(Run.of("check", RIG, "--rules", house).err()).contains("other.md", "no rule of this folder");
    }

    static List<Arguments> failures() {
        String unit = "$unit : Unit()";
        return List.of(
                arguments(unit, "int none = 0; System.identityHashCode(1 / none);", "ArithmeticException: / by zero"),
                arguments("$unit : Unit(intents().get(\"nothing\").length() > 1)", "", "NullPointerException"),
                arguments(
                        unit,
                        "insert(Finding.of(\"motion/blur-differs\", Severity.ADVICE).units($unit.name()).build());",
                        "in the name of motion/blur-differs"),
                arguments(unit, "delete($unit);", "takes a fact away"),
                arguments(
                        unit,
                        "insert(Finding.of(\"house/breaks\", Severity.LOSSY).units($unit.name()).at(\"units\").build());",
                        "does not have the severity lossy"),
                arguments(
                        unit,
                        "insert(Finding.of(\"house/breaks\", Severity.ADVICE).units($unit.name()).at(\"units\").build());",
                        "its page quotes {iso}"),
                arguments("$last : Integer()", "insert($last + 1);", "it does not come to rest: it ran 20000 times"));
    }

    /** One rule that breaks beside one that does not: what the other finds is there, and so is all that Akin finds. */
    @ParameterizedTest
    @MethodSource("failures")
    void aRuleThatFailsFailsAlone(String when, String then, String why) throws IOException {
        pack("house/iso-high", finds("house/iso-high"));
        String house = pack("house/breaks", when, then);
        if (when.contains("Integer")) {
            write(Path.of(house, "start.drl"), HEAD + "rule \"start\"\nwhen\n  Rig()\nthen\n  insert(1);\nend\n");
        }
        Run plain = Run.of("check", "../samples/night-market/rig.yaml", "--format", "json");
        Run check = Run.of("check", "../samples/night-market/rig.yaml", "--rules", house, "--format", "json");
        assertThat(check.code()).isEqualTo(plain.code());
        assertThat(check.err()).contains("a rule failed, all others ran: rules.house/breaks: ", why);
        assertThat(check.out())
                .contains("\"rule\" : \"house/iso-high\"", "\"missing\" : \"rules.house/breaks: ")
                .contains(plain.out()
                        .lines()
                        .filter(line -> line.contains("\"because\""))
                        .toList());
        assertThat(Run.of("check", RIG, "--rules", house, "--fail-on", "unchecked")
                        .code())
                .isEqualTo(1);
    }

    @Test
    void whatWasCompiledIsKeptAndMadeAnewWhenItBroke() throws IOException {
        String house = pack("house/iso-high", finds("house/iso-high"));
        Run.of("check", RIG, "--rules", house);
        Path kept = onlyFile();
        byte[] good = Files.readAllBytes(kept);
        Files.setLastModifiedTime(kept, java.nio.file.attribute.FileTime.fromMillis(1_000));

        assertThat(Run.of("check", RIG, "--rules", house).out()).contains("is rated high");
        assertThat(Files.getLastModifiedTime(kept).toMillis())
                .as("used, not made anew")
                .isEqualTo(1_000);

        byte[] broken = good.clone();
        broken[good.length / 2] ^= 1;
        Files.write(kept, broken);
        assertThat(Run.of("check", RIG, "--rules", house).out()).contains("is rated high");
        assertThat(Files.readAllBytes(onlyFile())).as("made anew").isNotEqualTo(broken);

        Files.setPosixFilePermissions(kept, PosixFilePermissions.fromString("rw-rw-rw-"));
        assertThat(Run.of("check", RIG, "--rules", house).out()).contains("is rated high");
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(onlyFile())))
                .as("not taken from a file that anybody may write")
                .isEqualTo("rw-------");
    }

    private Path onlyFile() throws IOException {
        try (Stream<Path> all = Files.list(folder.resolve("own/.cache/rules"))) {
            List<Path> files = all.toList();
            assertThat(files).hasSize(1);
            return files.get(0);
        }
    }

    @Test
    void aFolderIsReadWithinBounds() throws IOException {
        String house = pack("house/iso-high", finds("house/iso-high"));
        Path link = Path.of(house, "more.drl");
        Files.createSymbolicLink(link, Path.of("/etc/hostname"));
        assertThat(Run.of("rules", "test", house).err()).contains("more.drl: this is a link");
        Files.delete(link);
        Files.write(link, new byte[] {'a', (byte) 0xff, 0});
        assertThat(Run.of("rules", "test", house).err()).contains("more.drl:1:2: not UTF-8");
        Files.write(link, new byte[2_000_000]);
        assertThat(Run.of("rules", "test", house).err()).contains("more.drl: larger than");
        Path empty = Files.createDirectory(folder.resolve("empty"));
        assertThat(Run.of("rules", "test", empty.toString()).err()).contains("no file of rules, named *.drl");
        assertThat(Run.of("rules", "test", folder.resolve("none").toString()).err())
                .contains("there is no folder of rules here");
        assertThat(Run.of("rules", "tset", house).err()).contains("Did you mean 'test'?");
    }

    @Test
    void otherFormatsKnowItToo() throws IOException {
        String house = pack("house/iso-high", finds("house/iso-high"));
        for (String format : List.of("sarif", "junit", "markdown", "annotations", "html")) {
            assertThat(Run.of("check", RIG, "--rules", house, "--format", format)
                            .out())
                    .as(format)
                    .contains("house/iso-high");
        }
    }
}
