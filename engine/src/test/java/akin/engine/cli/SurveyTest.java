package akin.engine.cli;

import static org.assertj.core.api.Assertions.assertThat;

import akin.engine.assess.Assessment;
import akin.engine.assess.Checker;
import akin.engine.assess.FailOn;
import akin.engine.assess.Numbers;
import akin.engine.assess.RuleBase;
import akin.engine.book.CompiledBook;
import akin.engine.book.Examples;
import akin.engine.equip.Catalogue;
import akin.engine.equip.Schemas;
import akin.engine.equip.Terms;
import akin.engine.read.Binder;
import akin.engine.read.Document;
import akin.engine.read.Node;
import akin.engine.read.YamlReader;
import akin.model.gear.Body;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What a survey finds of a candidate is what a check finds, and the better candidate comes first. */
class SurveyTest {

    private static final Path SAMPLES = Path.of("..", "samples");
    private static final Path GEAR = Path.of("..", "shared", "gear");
    private static final Path PAIR =
            Path.of("..", "rules", "src", "main", "resources", "akin", "rules", "matched-pair.yaml");
    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final Binder BINDER = new Binder();
    private static final Checker CHECKER =
            new Checker(RuleBase.builtIn(), CompiledBook.load(), BINDER, Catalogue.builtIn(BINDER));

    /** Every candidate would take minutes to check with its fixes; a step that shares no factor with the lists' sizes. */
    private static final int EACH = 97;

    /** The shipped bodies, lenses and adapters as a kit list. */
    @TempDir
    static Path shipped;

    @TempDir
    Path folder;

    @BeforeAll
    static void copy() throws IOException {
        for (String kind : List.of("bodies", "lenses", "adapters")) {
            try (Stream<Path> files = Files.list(GEAR.resolve(kind))) {
                for (Path file : files.toList()) {
                    Files.copy(file, shipped.resolve(file.getFileName()));
                }
            }
        }
    }

    private static String rig(String sample) {
        return (sample.equals("pair") ? PAIR : SAMPLES.resolve(sample).resolve("rig.yaml")).toString();
    }

    private static JsonNode survey(String rig, String... more) {
        List<String> args = new ArrayList<>(List.of("survey", rig, "--format", "json", "--on", "2027-01-01"));
        args.addAll(List.of(more));
        Run run = Run.of(args.toArray(String[]::new));
        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isZero();
        return JSON.readTree(run.out());
    }

    @ParameterizedTest
    @CsvSource({"pair, candidate", "night-market, candidate", "lantern-room, candidate", "night-market, B", "regatta, B"
    })
    void findsOfEachCandidateWhatACheckFinds(String sample, String unit) throws IOException {
        String rig = rig(sample);
        Document plan = YamlReader.read(rig, Files.readString(Path.of(rig)));
        JsonNode survey = unit.equals("candidate")
                ? survey(rig, "--candidates", shipped.toString(), "--top", "all")
                : survey(rig, "--candidates", shipped.toString(), "--top", "all", "--unit", unit);
        JsonNode candidates = survey.get("candidates");
        assertThat(candidates.size()).isEqualTo(survey.get("size").asInt()).isGreaterThan(500);
        Set<String> rules = new TreeSet<>();
        for (int i = 0; i < candidates.size(); i += EACH) {
            JsonNode candidate = candidates.get(i);
            Assessment check =
                    CHECKER.check(with(plan, unit, candidate.get("settings")), Terms.OF_THE_RIG, FailOn.LOSSY);
            List<String> found = check.findings().stream()
                    .filter(entry -> entry.units().contains(unit))
                    .map(entry -> String.join(
                            "|",
                            entry.rule(),
                            entry.severity().word(),
                            Numbers.exact(entry.magnitude()).toString(),
                            entry.title(),
                            entry.because()))
                    .toList();
            assertThat(reasons(candidate))
                    .as(candidate.get("settings").toString())
                    .isEqualTo(found);
            assertThat(gaps(candidate))
                    .isEqualTo(check.unchecked().stream()
                            .filter(gap -> gap.unit().equals(unit))
                            .map(gap -> gap.rule() + "|" + gap.missing())
                            .toList());
            check.findings().forEach(entry -> rules.add(entry.rule()));
        }
        assertThat(rules).as("the sample meets many rules").hasSizeGreaterThan(15);
    }

    private static List<String> reasons(JsonNode candidate) {
        return candidate
                .get("findings")
                .valueStream()
                .map(f -> String.join(
                        "|",
                        f.get("rule").asString(),
                        f.get("severity").asString(),
                        f.get("magnitude").decimalValue().toPlainString(),
                        f.get("title").asString(),
                        f.get("because").asString()))
                .toList();
    }

    private static List<String> gaps(JsonNode candidate) {
        return candidate
                .get("unchecked")
                .valueStream()
                .map(gap ->
                        gap.get("rule").asString() + "|" + gap.get("missing").asString())
                .toList();
    }

    /** The rig with the hero and the candidate alone, whose settings are written as the survey gives them. */
    private static Document with(Document plan, String unit, JsonNode settings) {
        StringBuilder changes = new StringBuilder("waivers: ~\nunits:\n");
        for (String other : List.of("B", "C", "crash")) {
            if (!other.equals(unit) && plan.at("units." + other).isPresent()) {
                changes.append("  ").append(other).append(": ~\n");
            }
        }
        changes.append("  ").append(unit).append(":\n");
        for (String key : List.of("profile", "codec", "shutter", "iso", "white", "tint", "filters")) {
            if (!settings.has(key) && plan.at("units." + unit + "." + key).isPresent()) {
                changes.append("    ").append(key).append(": ~\n");
            }
        }
        if (plan.at("units." + unit + ".recorder.output").isPresent() && !keepsOutput(plan, unit, settings)) {
            changes.append("    recorder: {output: ~}\n");
        }
        settings.properties().forEach(field -> {
            boolean joined = field.getKey().equals("lens");
            changes.append("    ").append(field.getKey()).append(": ");
            if (joined) {
                changes.append('\n');
                for (String key : List.of("use", "focal", "stop", "adapter")) {
                    JsonNode value = field.getValue().get(key);
                    if (value != null
                            || plan.at("units." + unit + ".lens." + key).isPresent()) {
                        changes.append("      ")
                                .append(key)
                                .append(": ")
                                .append(plain(value))
                                .append('\n');
                    }
                }
            } else {
                changes.append(plain(field.getValue())).append('\n');
            }
        });
        return Examples.lay(YamlReader.read("rig.yaml", changes.toString()), plan);
    }

    private static boolean keepsOutput(Document plan, String unit, JsonNode settings) {
        Node output = plan.at("units." + unit + ".recorder.output").orElseThrow();
        String id = ((Node.Scalar) output).text();
        Body body =
                Catalogue.builtIn(BINDER).body(settings.get("body").asString()).orElseThrow();
        List<String> offered = Objects.requireNonNull(
                        body.modes().get(settings.get("mode").asString()))
                .outputs();
        return body.outputs().containsKey(id) && (offered == null || offered.contains(id));
    }

    /** A value as a rig file writes it: JSON without its quotation marks. */
    private static String plain(JsonNode value) {
        return value == null ? "~" : value.toString().replace("\":", "\": ").replace("\"", "");
    }

    @Test
    void takesOverTheHerosSettingsByTheArithmeticOfMatching() throws IOException {
        String kit = kit("""
                akin-gear: 1
                bodies:
                """ + gear("small", 4));
        JsonNode settings = settingsOn(kit, "long-zoom");
        // 36 mm at T4 on 36 mm of width: on 24 mm of width 24 mm at T2.7 for the same view and depth, 1.17 stops more
        // light
        // (2 log2 1.5), which the ND 0.3 of the hero and one ND 0.3 more take: the pair's own unit B, but for its T2.8.
        assertThat(settings.get("lens").toString())
                .isEqualTo("{\"use\":\"long-zoom\",\"focal\":\"24 mm\",\"stop\":\"T2.7\"}");
        assertThat(settings.get("shutter").asString()).isEqualTo("180°");
        assertThat(settings.get("iso").asInt()).isEqualTo(800);
        assertThat(settings.get("filters").toString()).isEqualTo("[\"ND 0.6\"]");
        assertThat(settings.get("white").asString()).isEqualTo("4300 K");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                // of the body of the matched pair, what becomes of what | then: setting
                // 20.9 ms are asked for: 20 ms are nearer than 16.7 ms
                "shutter: .* | shutter: {times: [1/50, 1/60]} | shutter | 1/50",
                // 233 mired are asked for; 5600 K has 179, 3200 K has 313
                "white: .* | white: [3200 K, 5600 K] | white | 5600 K",
                "iso-bases: .800. | iso-bases: [640, 2500] | iso | 640",
                // the only base is under the floor: the lowest that is not
                "iso-floor: 400 | iso-floor: 1000 | iso | 1000",
                // a tint of nothing is nothing on every scale
                "tint-scale: one | tint-scale: two | tint | 0",
                "stabilisation: none | stabilisation: sensor | stabilisation | none",
                // one stop of the hero's ND 0.3 and 1.13 stops for T2.7 instead of T4, of which the body has two itself
                "internal-nd: .. | internal-nd: [ND 0.64] | filters | [ND 0.64]",
            })
    void comesAsNearToTheHeroAsTheBodyCan(String from, String to, String key, String expected) throws IOException {
        String body = gear("small", 4).replaceFirst(from, to);
        JsonNode settings = settingsOn(kit("akin-gear: 1\nbodies:\n" + body), "long-zoom");
        assertThat(plain(settings.get(key))).isEqualTo(expected);
    }

    @Test
    void paysForAClosedLensWithIso() throws IOException {
        String kit = kit("akin-gear: 1\nbodies:\n" + gear("small", 4) + """
                lenses:
                  dark-prime: {mount: alder, focal: 24 mm, squeeze: 1, open: f/8, closed: f/22, open-t: T8, closed-t: T22, iris: stepless}
                """);
        JsonNode settings = settingsOn(kit, "dark-prime");
        // Two stops darker than T4, of which taking the hero's ND 0.3 off gives back one.
        assertThat(settings.get("lens").get("stop").asString()).isEqualTo("T8");
        assertThat(settings.get("filters").isEmpty()).isTrue();
        assertThat(settings.get("iso").asInt()).isEqualTo(1600);
    }

    private static JsonNode settingsOn(String kit, String lens) {
        return survey(PAIR.toString(), "--candidates", kit, "--top", "all")
                .get("candidates")
                .valueStream()
                .map(candidate -> candidate.get("settings"))
                .filter(s -> s.get("profile").asString().equals("log")
                        && s.get("lens").get("use").asString().equals(lens))
                .findFirst()
                .orElseThrow();
    }

    private String database() throws IOException {
        Path database = Files.createDirectories(folder.resolve("database"));
        Files.writeString(database.resolve("all.xml"), """
                <lensdatabase>
                  <camera><maker>Bramling</maker><model>Two</model><mount>Alder</mount><cropfactor>1.5</cropfactor></camera>
                  <lens><maker>Thornel</maker><model>24-70mm f/4</model><mount>Alder</mount></lens>
                </lensdatabase>
                """);
        return database.toString();
    }

    /** Of a body from the lensfun database next to nothing is known, and that is what is said. */
    @Test
    void whatTheLensfunDatabaseDoesNotKnowIsUnchecked() throws IOException {
        JsonNode survey = survey(PAIR.toString(), "--lensfun", database());
        assertThat(survey.get("size").asInt()).isEqualTo(1);
        JsonNode only = survey.get("candidates").get(0);
        assertThat(only.get("settings").get("body").asString()).isEqualTo("bramling-two");
        assertThat(only.get("settings").get("mode").asString()).isEqualTo("frame");
        assertThat(only.get("counts").get("unchecked").asInt()).isGreaterThan(20);
        assertThat(gaps(only)).contains("view/width-differs|gear.bodies.bramling-two.modes.frame.area");
    }

    @Test
    void aRigFileMayNameGearOfTheLensfunDatabase() throws IOException {
        String text = Files.readString(PAIR);
        int b = text.indexOf("\n  B:");
        String rig = Files.writeString(
                        folder.resolve("rig.yaml"),
                        text.substring(0, b) + text.substring(b).replace("use: long-zoom", "use: thornel-24-70mm-f-4"))
                .toString();
        assertThat(Run.of("check", rig).err()).contains("no lens is called 'thornel-24-70mm-f-4'");
        Run run = Run.of("check", rig, "--lensfun", database());
        assertThat(run.err()).isEmpty();
        assertThat(run.out()).contains("gear.lenses.thornel-24-70mm-f-4.circle");
    }

    @Test
    void followsItsSchema() {
        Schemas schemas = new Schemas();
        assertThat(schemas.complaintsOfTheStandard("survey")).isEmpty();
        JsonNode survey = survey(rig("night-market"), "--candidates", shipped.toString(), "--top", "all");
        assertThat(schemas.complaints("survey", survey)).isEmpty();
    }

    /** A body of the matched pair as it stands there, with so many columns of indent taken off. */
    private static String gear(String id, int columns) throws IOException {
        StringBuilder out = new StringBuilder();
        boolean in = false;
        for (String line : Files.readAllLines(PAIR)) {
            in = line.startsWith("    " + id + ":") || (in && line.startsWith("      "));
            if (in) {
                out.append(line.substring(columns - 2)).append('\n');
            }
        }
        assertThat(out).isNotEmpty();
        return out.toString();
    }

    private String kit(String text) throws IOException {
        Path kit = Files.createDirectories(folder.resolve("kit"));
        Files.writeString(kit.resolve("kit.yaml"), text);
        return kit.toString();
    }

    /** Four bodies that differ from the matching one in one fact each, and one of which next to nothing is known. */
    @Test
    void theBetterComesFirstAndTheUnknownIsNotTakenForGood() throws IOException {
        String matching = gear("small", 4);
        String kit = kit("akin-gear: 1\nbodies:\n"
                + matching.replace("small:", "a-unknown:")
                        .replaceAll("(?m)^    (iso|white|shutter|rolls):.*\n| area: [^,]*,| readout: [^,]*,", "")
                + matching.replace("small:", "b-slow:").replace("readout: 12 ms", "readout: 40 ms")
                + matching.replace("small:", "c-angles:").replaceAll("shutter: .*", "shutter: {times: [1/100, 1/200]}")
                + matching.replace("small:", "d-matching:"));
        List<String> order = survey(PAIR.toString(), "--candidates", kit, "--top", "all")
                .get("candidates")
                .valueStream()
                .map(candidate -> candidate.get("settings"))
                .filter(s -> s.get("profile").asString().equals("log")
                        && s.get("lens").get("use").asString().equals("long-zoom"))
                .map(s -> s.get("body").asString())
                .toList();
        assertThat(order).containsExactly("d-matching", "b-slow", "c-angles", "a-unknown");
    }

    @Test
    void ranksByWhatItShows() {
        JsonNode all = survey(rig("night-market"), "--candidates", shipped.toString(), "--top", "all")
                .get("candidates");
        List<Integer> worst = new ArrayList<>();
        for (JsonNode candidate : all) {
            worst.add(candidate.get("counts").get("baked-in").asInt());
            assertThat(candidate.get("rank").asInt()).isEqualTo(worst.size());
        }
        assertThat(worst.get(0)).isZero();
        assertThat(worst.get(worst.size() - 1)).isGreaterThan(3);
    }

    @Test
    void tableAndValuesShowTheSameInTheSameOrder() {
        String[] call = {"survey", rig("night-market"), "--candidates", shipped.toString(), "--on", "2027-01-01"};
        JsonNode json = survey(rig("night-market"), "--candidates", shipped.toString(), "--top", "7");
        String text = Run.of(with(call, "--top", "7")).out();
        List<String> csv = Run.of(with(call, "--top", "7", "--format", "csv"))
                .out()
                .lines()
                .toList();
        assertThat(json.get("candidates").size()).isEqualTo(7);
        assertThat(csv).hasSize(8);
        assertThat(csv.get(0)).startsWith("rank,body,mode,profile,lens,").endsWith(",unchecked,reasons");
        assertThat(text.lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(80));
        assertThat(text).contains("ASSUMED", "the best 7 are shown", "in its scenes, at its rate");
        int at = 0;
        for (int i = 0; i < 7; i++) {
            JsonNode settings = json.get("candidates").get(i).get("settings");
            String body = settings.get("body").asString();
            assertThat(csv.get(i + 1))
                    .startsWith(
                            (i + 1) + "," + body + "," + settings.get("mode").asString() + ",");
            at = text.indexOf(String.format("%2d. %s ", i + 1, body), at);
            assertThat(at).as("reasons of " + body).isPositive();
            for (JsonNode finding : json.get("candidates").get(i).get("findings")) {
                assertThat(csv.get(i + 1))
                        .contains(finding.get("severity").asString() + " "
                                + finding.get("rule").asString());
            }
        }
    }

    private static String[] with(String[] call, String... more) {
        return Stream.concat(Stream.of(call), Stream.of(more)).toArray(String[]::new);
    }

    @Test
    void givesTheSameBytesAgain() {
        String[] call = {"survey", rig("regatta"), "--candidates", shipped.toString(), "--on", "2027-01-01"};
        String first = Run.of(call).out();
        assertThat(first).isNotEmpty();
        assertThat(Run.of(call).out()).isEqualTo(first);
    }

    @Test
    void aListWithoutBodiesKeepsThatOfTheUnit() throws IOException {
        String kit = kit("""
                akin-gear: 1
                lenses:
                  odd-prime: {mount: alder, focal: 30 mm}
                """);
        JsonNode survey = survey(PAIR.toString(), "--candidates", kit, "--unit", "B");
        assertThat(survey.get("size").asInt()).isEqualTo(1);
        JsonNode settings = survey.get("candidates").get(0).get("settings");
        assertThat(settings.get("body").asString()).isEqualTo("small");
        // The unit's 24 mm is not on a 30 mm prime; everything else stays.
        assertThat(settings.get("lens").get("focal").asString()).isEqualTo("30 mm");
        assertThat(settings.get("lens").get("stop").asString()).isEqualTo("T2.8");
        assertThat(survey.get("assumed").toString()).contains("names no body");
    }

    @Test
    void aKitListMayLieInFoldersOfItsFolder(@TempDir Path folder) throws IOException {
        String body = """
                akin-gear: 1
                bodies:
                  %s:
                    name: %s
                    maker: Thorn
                    mount: alder
                    modes:
                      open: {picture: 6144x3456, area: 24.0x13.5 mm, rates: [24000/1001]}
                """;
        Files.createDirectories(folder.resolve("hired/from-town"));
        Files.createDirectories(folder.resolve(".old"));
        Files.writeString(folder.resolve("hired/from-town/box.yml"), body.formatted("box-one", "Box One"));
        Files.writeString(folder.resolve("own.yaml"), body.formatted("own-one", "Own One"));
        Files.writeString(folder.resolve(".old/away.yaml"), body.formatted("old-one", "Old One"));
        String found = survey(PAIR.toString(), "--candidates", folder.toString(), "--top", "all")
                .get("candidates")
                .toString();
        assertThat(found).contains("box-one", "own-one").doesNotContain("old-one");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "survey RIG; survey: a kit list is missing",
                "survey RIG --candidates nowhere; nowhere: there is no folder of gear files here",
                "survey RIG --candidates KIT --unit X; --unit: read 'X'; the units beside the hero are B.",
                "survey RIG --candidates KIT --unit A; --unit: read 'A'; the units beside the hero are B.",
                "survey RIG --candidates KIT --top 0; survey: --top: read '0'; a whole number over 0 belongs here, or all",
                "survey RIG --candidates KIT --format xml; survey: --format: read 'xml'.",
                "survey --lensfun RIG; for its folder, so write it last",
                "survey RIG --lensfun nowhere; nowhere: there is no lensfun database here",
            },
            quoteCharacter = '`')
    void aWrongCallIsOneClearLine(String call, String message) {
        String[] args = Stream.of(call.split(" "))
                .map(word -> word.equals("RIG") ? PAIR.toString() : word.equals("KIT") ? shipped.toString() : word)
                .toArray(String[]::new);
        Run run = Run.of(args);
        assertThat(run.code()).isEqualTo(Akin.BAD_INPUT);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).hasLineCount(1).contains(message);
    }

    @Test
    void anEncodingThatNobodyKnowsIsSaid() throws IOException {
        String kit = kit("akin-gear: 1\nbodies:\n" + gear("small", 4).replace("encoding: bt709", "encoding: bt7009"));
        Run run = Run.of("survey", PAIR.toString(), "--candidates", kit);
        assertThat(run.code()).isEqualTo(Akin.BAD_INPUT);
        assertThat(run.err()).hasLineCount(1).contains("no encoding is called 'bt7009'. Did you mean 'bt709'?");
    }

    @Test
    void theBarIsDrawnOncePerPerCentAndTakenAway() {
        StringWriter terminal = new StringWriter();
        Progress bar = new Progress(new PrintWriter(terminal), 1_000, "candidates");
        for (int done = 1; done <= 1_000; done++) {
            bar.accept(done);
        }
        bar.clear();
        String[] drawn = terminal.toString().split("\r");
        assertThat(drawn).hasSize(103);
        assertThat(drawn[51]).startsWith("[####################....................]  50 % of 1,000 candidates");
        assertThat(drawn[102]).isBlank();
        assertThat(terminal.toString()).endsWith("\r");
    }
}
