package akin.engine.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import akin.engine.equip.Schemas;
import akin.engine.report.lut.OutsideColour;
import akin.model.colour.Adaptation;
import akin.model.colour.Chart;
import akin.model.colour.Matrix3;
import akin.model.colour.RgbMatrix;
import akin.model.rig.Unit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;

/**
 * {@code akin prove} on shots that were made up with what is known of them: what was done to a unit is what is found, within
 * what the report says that it may be off.
 */
class ProveTest {

    /** Each row adds up to one: white stays white. */
    private static final Matrix3 OWN = Matrix3.ofRows(0.84, 0.1, 0.06, 0.08, 0.96, -0.04, -0.02, 0.12, 0.9);

    private static final Schemas SCHEMAS = new Schemas();

    @TempDir
    Path folder;

    private Run prove(String readings, String... more) throws IOException {
        return proveFile("readings.yaml", readings, more);
    }

    private Run proveFile(String name, String readings, String... more) throws IOException {
        Path file = folder.resolve(name);
        Files.writeString(file, readings);
        return Run.of(Stream.concat(
                        Stream.of("prove", ShotChart.RIG.toString(), file.toString(), "--on", "2027-01-01"),
                        Stream.of(more))
                .toArray(String[]::new));
    }

    private static String charts(Chart chart, double stopsOfB, Matrix3 ownOfB) {
        return "akin-readings: 1\nchart: " + chart.id() + "\nunits:\n  A: {patches: "
                + ShotChart.yaml(ShotChart.levels("A", chart, 0, ShotChart.NOTHING)) + "}\n  B: {patches: "
                + ShotChart.yaml(ShotChart.levels("B", chart, stopsOfB, ownOfB)) + "}\n";
    }

    private JsonNode json(Run run) {
        assertThat(run.err()).isEmpty();
        JsonNode json = SCHEMAS.json(run.out());
        assertThat(SCHEMAS.complaints("proof", json)).isEmpty();
        return json;
    }

    private static List<String> rules(JsonNode json) {
        List<String> rules = new ArrayList<>();
        json.at("/report/findings")
                .forEach(finding -> rules.add(finding.path("rule").asString()));
        return rules;
    }

    @ParameterizedTest
    @CsvSource({"before-november-2014", "after-november-2014"})
    void twoUnitsThatRecordedTheSameLightPass(String edition) throws IOException {
        Run run = prove(charts(ShotChart.chart(edition), 0, ShotChart.NOTHING));
        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("CIEDE2000 to A mean 0.00", "passes (0 baked-in, 0 lossy, 0 fixable, 0 advice)");
    }

    @Test
    void theEditionsOfTheChartAreNotTheSame() throws IOException {
        Chart old = ShotChart.chart("before-november-2014");
        String readings = charts(old, 0, ShotChart.NOTHING);
        JsonNode right = json(prove(readings, "--format", "json"));
        JsonNode wrong = json(prove(readings.replace(old.id(), ShotChart.chart().id()), "--format", "json"));
        double grey = right.at("/measured/0/grey/value").asDouble();
        assertThat(grey).isCloseTo(0, within(0.001));
        // The fourth grey: L* 50.867 in one and 50.76 in the other, as shared/charts.yaml has them of their maker;
        // Y = ((L* + 16) / 116)^3, and three binary logarithms of (66.867 / 66.76).
        assertThat(wrong.at("/measured/0/grey/value").asDouble())
                .isCloseTo(3 * Math.log(66.867 / 66.76) / Math.log(2), within(0.001));
    }

    @Test
    void findsTheMatrixAndTheExposureThatWereHidden() throws IOException {
        double stops = 1.0 / 3;
        JsonNode json = json(prove(charts(ShotChart.chart(), stops, OWN), "--format", "json"));
        assertThat(rules(json)).contains("proof/exposure-differs", "proof/colour-differs");
        double apart = json.at("/measured/1/grey/value").asDouble()
                - json.at("/measured/0/grey/value").asDouble();
        double give = json.at("/measured/1/grey/give").asDouble()
                + json.at("/measured/0/grey/give").asDouble();
        assertThat(apart).isCloseTo(stops, within(give + 1e-3));
        JsonNode match = json.at("/matches/0");
        assertThat(match.at("/before/mean").asDouble()).isGreaterThan(2);
        assertThat(match.at("/after/mean").asDouble()).isLessThan(0.02);
        assertThat(match.at("/after/worst").asDouble()).isLessThan(0.1);
        Unit b = ShotChart.unit("B");
        Matrix3 hidden = RgbMatrix.between(b.gamut(), ShotChart.unit("A").gamut(), Adaptation.BRADFORD)
                .times(OWN.inverse());
        for (int i = 0; i < 9; i++) {
            assertThat(match.at("/matrix/" + i).asDouble())
                    .as("cell %s", i)
                    .isCloseTo(hidden.at(i / 3, i % 3) * Math.pow(2, -stops), within(2e-3));
        }
    }

    @Test
    void exposureAndWhiteAloneAreNoOtherColours() throws IOException {
        JsonNode json = json(prove(
                charts(ShotChart.chart(), -0.8, Matrix3.ofRows(1.1, 0, 0, 0, 1, 0, 0, 0, 0.9)), "--format", "json"));
        assertThat(rules(json))
                .contains("proof/exposure-differs", "proof/white-differs")
                .doesNotContain("proof/colour-differs");
        assertThat(json.at("/matches/0/before/mean").asDouble()).isGreaterThan(5);
        // The gains stand in B's gamut: in A's they are no longer one per channel, so a little stays.
        assertThat(json.at("/matches/0/balanced/mean").asDouble()).isLessThan(1);
        assertThat(json.at("/matches/0/after/mean").asDouble()).isLessThan(0.02);
    }

    @Test
    void saysTheExactCorrectionAndTheNearestThatTheUnitOffers() throws IOException {
        String out = prove("akin-readings: 1\nunits:\n  A: {grey: " + ShotChart.yaml(ShotChart.grey("A", 1, 1, 1))
                        + "}\n  B: {grey: " + ShotChart.yaml(ShotChart.grey("B", 2, 2, 2)) + "}\n")
                .out()
                .replaceAll("\\s+", " ");
        // One stop over at T2.6, ISO 800 and two stops of density: T2.6 x root 2, ISO 400, three stops.
        assertThat(out)
                .contains(
                        "The grey that B shot is 1 stop brighter than that of A",
                        "T3.68 on the iris; ISO 400; neutral density of 2.99 stops in all",
                        "ND 0.9",
                        "Then shoot the card again.");
    }

    @ParameterizedTest
    @CsvSource({
        "1.06, 1, 0.94, amber, proof/white-differs",
        "0.94, 1, 1.06, blue, proof/white-differs",
        "1, 1.06, 1, green, proof/tint-differs",
        "1, 0.94, 1, magenta, proof/tint-differs",
    })
    void saysWhichWayANeutralLeans(double red, double green, double blue, String side, String rule) throws IOException {
        Run run = prove("akin-readings: 1\nunits:\n  A: {grey: " + ShotChart.yaml(ShotChart.grey("A", 1, 1, 1))
                + "}\n  B: {grey: " + ShotChart.yaml(ShotChart.grey("B", red, green, blue)) + "}\n");
        assertThat(run.code()).isZero();
        assertThat(run.out()).contains(rule).contains("more " + side);
    }

    @Test
    void whatAReadingCannotTellIsNotClaimed() throws IOException {
        String coarse = "akin-readings: 1\nprecision: 2 %\nunits:\n  A: {grey: 25.2 %}\n  B: {grey: 26.6 %}\n";
        Run run = prove(coarse, "--format", "json");
        JsonNode json = json(run);
        assertThat(rules(json)).isEmpty();
        assertThat(json.at("/measured/1/grey/give").asDouble())
                .isGreaterThan(json.at("/measured/1/grey/value").asDouble()
                        - json.at("/measured/0/grey/value").asDouble());
        JsonNode fine = json(prove(coarse.replace("precision: 2 %\n", ""), "--format", "json"));
        assertThat(rules(fine)).contains("proof/exposure-differs");
    }

    @Test
    void endsOfTheRangeAreHeldAgainstThePlan() throws IOException {
        JsonNode json = json(prove("""
                akin-readings: 1
                units:
                  A: {white: 40 %, clip: 79 %, black: {level: 7.1 %, noise: 0.1 %}}
                  B: {white: 66 %, clip: 66 %, black: {level: 7.1 %, noise: 3 %}}
                """, "--format", "json"));
        assertThat(rules(json)).contains("proof/white-clips", "proof/headroom-short", "proof/floor-high");
        assertThat(json.at("/report/findings/0/severity").asString()).isEqualTo("baked-in");
        assertThat(json.at("/measured/1/room/value").asDouble()).isCloseTo(0, within(1e-6));
    }

    @Test
    void whatWasShotOnOneUnitAloneIsUnchecked() throws IOException {
        String one = "akin-readings: 1\nunits:\n  A: {grey: 25 %}\n";
        assertThat(prove(one).code()).isZero();
        Run strict = prove(one, "--fail-on", "unchecked");
        assertThat(strict.code()).isEqualTo(Akin.FAILS);
        assertThat(strict.out()).contains("readings.units.B.grey", "B: nothing read");
    }

    @Test
    void aTableSaysTheSameAsYaml() throws IOException {
        Chart chart = ShotChart.chart();
        JsonNode yaml = json(prove(charts(chart, 0.4, OWN), "--format", "json"));
        String csv = "chart," + chart.id() + "\nunit,patch,red,green,blue,noise\n"
                + ShotChart.csv("A", ShotChart.levels("A", chart, 0, ShotChart.NOTHING))
                + ShotChart.csv("B", ShotChart.levels("B", chart, 0.4, OWN));
        JsonNode table = json(proveFile("readings.csv", csv, "--format", "json"));
        for (String part : List.of("measured", "matches")) {
            assertThat(table.path(part)).isEqualTo(yaml.path(part));
        }
        assertThat(rules(table)).isEqualTo(rules(yaml));
        // As a spreadsheet may write it.
        String other = "\uFEFF" + csv.replace("\n", "\r\n").replace(chart.id(), '"' + chart.id() + '"');
        assertThat(json(proveFile("other.csv", other, "--format", "json")).path("matches"))
                .isEqualTo(yaml.path("matches"));
    }

    @ParameterizedTest
    @CsvSource({"png, 8, 0", "png, 16, 40", "tiff, 8, 40", "tiff, 16, 0"})
    void aFrameIsSampled(String kind, int bits, int lean) throws IOException {
        Chart chart = ShotChart.chart();
        for (String unit : List.of("A", "B")) {
            List<double[]> levels = unit.equals("A")
                    ? ShotChart.levels("A", chart, 0, ShotChart.NOTHING)
                    : ShotChart.levels("B", chart, 0.5, OWN);
            assertThat(ImageIO.write(
                            ShotChart.frame(levels, lean, bits),
                            kind,
                            folder.resolve(unit + "." + kind).toFile()))
                    .isTrue();
        }
        String corners = Arrays.deepToString(ShotChart.corners(lean));
        JsonNode json = json(prove(
                "akin-readings: 1\nchart: " + chart.id() + "\nunits:\n  A: {frame: {file: A." + kind + ", corners: "
                        + corners + "}}\n  B: {frame: {file: B." + kind + ", corners: " + corners + "}}\n",
                "--format",
                "json"));
        double apart = json.at("/measured/1/grey/value").asDouble()
                - json.at("/measured/0/grey/value").asDouble();
        assertThat(apart)
                .isCloseTo(
                        0.5,
                        within(json.at("/measured/1/grey/give").asDouble()
                                + json.at("/measured/0/grey/give").asDouble()));
        // No edge of a patch was sampled: inside, each is as even as it was made.
        assertThat(json.at("/measured/1/spread").asDouble()).isCloseTo(0, within(1e-6));
        assertThat(json.at("/matches/0/after/mean").asDouble()).isLessThan(bits == 8 ? 1.5 : 0.02);
    }

    @Test
    void correctionsDoInAnotherProgramWhatIsSaidOfThem() throws IOException {
        Chart chart = ShotChart.chart();
        Path corrections = folder.resolve("corrections");
        Run run = prove(charts(chart, 0.4, OWN), "--corrections", corrections.toString());
        assertThat(run.out()).contains("B-to-A.clf", "B-to-A.cdl");
        OutsideColour outside = OutsideColour.in(folder);
        List<double[]> of = ShotChart.levels("B", chart, 0.4, OWN);
        List<double[]> wanted = ShotChart.levels("A", chart, 0, ShotChart.NOTHING);
        List<double[]> clf = outside.apply(corrections.resolve("B-to-A.clf"), of);
        for (int i = 0; i < of.size(); i++) {
            assertThat(clf.get(i)).as("patch %s", i + 1).containsExactly(wanted.get(i), within(1 / 1023.0));
        }
        // The list is for pictures in the hero's encoding: it brings the greys over, and leaves colours as they were
        // seen.
        Unit a = ShotChart.unit("A");
        Unit b = ShotChart.unit("B");
        Matrix3 plain = RgbMatrix.between(b.gamut(), a.gamut(), Adaptation.BRADFORD);
        List<double[]> converted = of.stream()
                .map(levels -> plain.times(
                        Arrays.stream(levels).map(b.encoding()::decode).toArray()))
                .map(light -> Arrays.stream(light).map(a.encoding()::encode).toArray())
                .toList();
        List<double[]> cdl = outside.apply(corrections.resolve("B-to-A.cdl"), converted);
        for (int i = Chart.FIRST_GREY + 1; i < Chart.PATCHES; i++) {
            assertThat(cdl.get(i)).as("grey %s", i + 1).containsExactly(wanted.get(i), within(4 / 1023.0));
        }
    }

    /** A grey card, a white sheet of 90 % and the chart: B a stop over and its red and blue off. */
    private static String neutral(String unit, String kind, double stops, double red, double green, double blue) {
        double gain = Math.pow(2, stops);
        return switch (kind) {
            case "card" -> "grey: " + ShotChart.yaml(ShotChart.grey(unit, gain * red, gain * green, gain * blue));
            case "brightness" -> {
                double light =
                        gain * RgbMatrix.toXyz(ShotChart.unit(unit).gamut()).times(new double[] {red, green, blue})[1];
                yield "grey: " + level(ShotChart.grey(unit, light)[0]);
            }
            case "sheet" ->
                "white: " + ShotChart.yaml(ShotChart.grey(unit, 5 * gain * red, 5 * gain * green, 5 * gain * blue));
            case "chart" ->
                "patches: "
                        + ShotChart.yaml(ShotChart.levels(
                                unit, ShotChart.chart(), stops, Matrix3.ofRows(red, 0, 0, 0, green, 0, 0, 0, blue)));
            case "sheet and brightness" ->
                neutral(unit, "sheet", stops, red, green, blue) + ", "
                        + neutral(unit, "brightness", stops, red, green, blue);
            default -> throw new IllegalArgumentException(kind);
        };
    }

    private static String level(double share) {
        return "code " + Math.round(share * 65535) + " of 65535";
    }

    @ParameterizedTest
    @CsvSource({
        "card, card, one neutral of both, true, true",
        "sheet, sheet, one neutral of both, true, true",
        "card, chart, one neutral of both, true, true",
        "chart, card, one neutral of both, true, true",
        "chart, sheet, white alone, false, true",
        "sheet, card, white alone, false, true",
        "card, sheet and brightness, one neutral of both, true, true",
        "chart, sheet and brightness, one neutral of both, true, true",
        "sheet, sheet and brightness, one neutral of both, true, true",
        "brightness, brightness, the grey level of both, true, false",
        "card, brightness, the grey level of both, true, false",
    })
    void whateverNeutralWasShotTheCorrectionBringsBackWhatWasDone(
            String ofA, String ofB, String basis, boolean exposure, boolean white) throws IOException {
        double red = white ? 1.1 : 1;
        double blue = white ? 0.9 : 1;
        Path corrections = folder.resolve("corrections");
        Run run = prove(
                "akin-readings: 1\nchart: " + ShotChart.chart().id() + "\nunits:\n  A: {"
                        + neutral("A", ofA, 0, 1, 1, 1) + "}\n  B: {" + neutral("B", ofB, 1, red, 1, blue) + "}\n",
                "--corrections",
                corrections.toString());
        assertThat(run.err()).isEmpty();
        assertThat(Files.readString(corrections.resolve("B-to-A.cdl"))).contains(basis);
        // A card that B shot a stop over comes out as that of A; where no grey tells the stop, it stays.
        double left = exposure ? 1 : 2;
        double[] wanted = ShotChart.grey("A", left, left, left);
        double[] got = OutsideColour.in(folder)
                .apply(corrections.resolve("B-to-A.clf"), List.of(ShotChart.grey("B", 2 * red, 2, 2 * blue)))
                .get(0);
        if (exposure) {
            assertThat(got).containsExactly(wanted, within(2 / 1023.0));
        } else {
            assertThat(got[0]).isCloseTo(got[1], within(2 / 1023.0));
            assertThat(got[2]).isCloseTo(got[1], within(2 / 1023.0));
            assertThat(got[1]).isCloseTo(wanted[1], within(8 / 1023.0));
        }
    }

    @Test
    void saysWhereNoCorrectionCanBeMade() throws IOException {
        String corrections = folder.resolve("corrections").toString();
        Run run =
                prove("akin-readings: 1\nunits:\n  A: {grey: 41 %}\n  B: {clip: 79 %}\n", "--corrections", corrections);
        assertThat(run.out()).contains("B: none written; no grey, neutral or chart was read of both");
        JsonNode json = json(prove(
                "akin-readings: 1\nunits:\n  A: {grey: 41 %}\n", "--corrections", corrections, "--format", "json"));
        assertThat(json.at("/files")).isEmpty();
        assertThat(json.at("/uncorrected/0/unit").asString()).isEqualTo("B");
        assertThat(json.at("/uncorrected/0/why").asString()).isEqualTo("nothing was read of B");
    }

    @Test
    void aWrittenCorrectionIsNotWrittenOver() throws IOException {
        String readings = charts(ShotChart.chart(), 0.4, OWN);
        String corrections = folder.resolve("corrections").toString();
        prove(readings, "--corrections", corrections);
        Run again = prove(readings, "--corrections", corrections);
        assertThat(again.code()).isEqualTo(Akin.BAD_INPUT);
        assertThat(again.err()).contains("this file is there already");
        assertThat(prove(readings, "--corrections", corrections, "--overwrite").err())
                .isEmpty();
    }

    @Test
    void checkCardsAndPageTakeThemToo() throws IOException {
        prove(charts(ShotChart.chart(), 1, OWN));
        String readings = folder.resolve("readings.yaml").toString();
        String rig = ShotChart.RIG.toString();
        Run check = Run.of("check", rig, "--readings", readings, "--on", "2027-01-01");
        assertThat(check.out()).contains("proof/exposure-differs", "proof/colour-differs", "white/same-number");
        String card = Run.of("card", rig, "--readings", readings, "--on", "2027-01-01")
                .out();
        assertThat(card)
                .contains(
                        "Shot on the day:",
                        "CIEDE2000 to A mean",
                        "LUT files",
                        "B-arri-logc4-to-bt1886.clf, -33.cube, by akin lut")
                .contains("proof/exposure-differs");
        assertThat(Run.of("card", rig, "--on", "2027-01-01").out())
                .doesNotContain("Shot on the day")
                .contains("LUT files");
        Path page = folder.resolve("page.html");
        Run.of(
                "check",
                rig,
                "--readings",
                readings,
                "--on",
                "2027-01-01",
                "--format",
                "html",
                "--out",
                page.toString());
        assertThat(Files.readString(page))
                .contains("shot on the day", "CIEDE2000 to A mean", "B-arri-logc4-to-bt1886.clf");
    }

    @Test
    void readingsInTheRigFileCountUnlessOthersAreNamed() throws IOException {
        Path rig = folder.resolve("rig.yaml");
        Files.writeString(
                rig,
                Files.readString(ShotChart.RIG)
                        + "\nreadings: {units: {A: {grey: 25.2 %}, B: {grey: 40 %}}}\n"
                        + "waivers: [{rule: proof/white-differs, because: agreed with the grader}]\n");
        assertThat(Run.of("check", rig.toString(), "--on", "2027-01-01").out()).contains("proof/exposure-differs");
        Path other = folder.resolve("other.yaml");
        Files.writeString(other, "akin-readings: 1\nunits: {A: {grey: 25.2 %}, B: {grey: 25.2 %}}\n");
        assertThat(Run.of("check", rig.toString(), "--readings", other.toString(), "--on", "2027-01-01")
                        .out())
                .doesNotContain("proof/exposure-differs");
        // A waiver for what only a test shot can tell is not idle while none was shot.
        Files.writeString(
                rig,
                Files.readString(ShotChart.RIG)
                        + "\nwaivers: [{rule: proof/white-differs, because: agreed with the grader}]\n");
        assertThat(Run.of("check", rig.toString(), "--on", "2027-01-01").out()).doesNotContain("waiver/");
    }

    @Test
    void theSameBytesAgainWhateverTheOrderOfUnits() throws IOException {
        String first = "  A: {grey: 25.2 %}\n";
        String second = "  B: {grey: 31 %}\n";
        String head = "akin-readings: 1\nunits:\n";
        for (String format : List.of("text", "json")) {
            assertThat(prove(head + second + first, "--format", format).out())
                    .isEqualTo(prove(head + first + second, "--format", format).out());
        }
    }

    /** A file of readings that is wrong. */
    record Wrong(String name, String text, List<String> says) {
        @Override
        public String toString() {
            return says.get(0);
        }
    }

    static Stream<Wrong> wrong() {
        String csv = "readings.csv";
        String yaml = "readings.yaml";
        String head = "unit,patch,red,green,blue\n";
        String frame = "akin-readings: 1\nchart: after-november-2014\nunits: {A: {frame: {file: %s, corners: %s}}}\n";
        String box = "[[0, 0], [9, 0], [9, 9], [0, 9]]";
        return Stream.of(
                new Wrong(csv, "", List.of("unit,patch")),
                new Wrong(csv, "A,grey,41 %\n", List.of(":1:1: read 'A'; before the readings stand")),
                new Wrong(csv, "unit,patch,level\n", List.of(":1:12: the columns are unit,patch,red")),
                new Wrong(csv, head + "A,gray,41 %\n", List.of(":2:3: read 'gray'", "Did you mean 'grey'?")),
                new Wrong(csv, head + "A,25,41 %,41 %,41 %\n", List.of(":2:3: read 25; the patches")),
                new Wrong(csv, head + "A,grey,41\n", List.of(":2:8: \"41\" is not a signal level", "write 41 %")),
                new Wrong(csv, head + "A,grey,41 %\nA,grey,42 %\n", List.of(":3:3: 'grey' of 'A' stands here again")),
                new Wrong(csv, head + "A,grey,\"41 %\n", List.of(":2:8: the quotation mark that opens here")),
                new Wrong(csv, head + "C,grey,41 %\n", List.of(":2:1: read 'C'; the units are A, B")),
                new Wrong(csv, head + "A,1,41 %,41 %,41 %\n", List.of("patch 2 of 'A' is missing")),
                new Wrong(csv, "chart,novemberish\n" + head, List.of(":1:7: no chart is called 'novemberish'")),
                new Wrong(yaml, "units: {}\n", List.of("the key 'akin-readings' is missing")),
                new Wrong(
                        yaml,
                        "akin-readings: 1\nunits: {A: {white: 91 %, clip: 90 %}}\n",
                        List.of(":2:20: this white is brighter than the clip of the same unit")),
                new Wrong(
                        yaml,
                        "akin-readings: 1\nunits: {A: {}}\n",
                        List.of(":2:8: no reading is in here, so there is nothing to prove")),
                new Wrong(
                        yaml,
                        "akin-readings: 1\nunits: {D: {grey: 41 %}}\n",
                        List.of(":2:9: read 'D'; the units are A, B")),
                new Wrong(
                        yaml,
                        String.format(frame, "nowhere.png", box),
                        List.of(":3:27: there is no such file beside the readings")),
                new Wrong(yaml, String.format(frame, "/etc/hostname", box), List.of("as it lies beside the file")),
                new Wrong(yaml, String.format(frame, "readings.yaml", box), List.of("this is no PNG or TIFF file")),
                new Wrong(
                        yaml,
                        String.format(frame, "small.png", "[[0, 0], [9, 0], [9, 900], [0, 9]]"),
                        List.of(":3:47: the corner [9.0, 900.0] is outside the frame of 20 x 20")),
                new Wrong(
                        yaml,
                        String.format(frame, "small.png", "[[0, 0], [9, 9], [9, 0], [0, 9]]"),
                        List.of("these corners make no four-sided shape")),
                new Wrong(yaml, String.format(frame, "small.png", "[[0, 0], [9, 0], [9, 9]]"), List.of("four corners")),
                new Wrong(yaml, String.format(frame, "grey.png", box), List.of("it has no red, green and blue")),
                new Wrong(yaml, String.format(frame, "damaged.png", box), List.of("this PNG or TIFF file is damaged")));
    }

    @ParameterizedTest
    @MethodSource("wrong")
    void saysWhereAFileIsWrong(Wrong wrong) throws IOException {
        Path small = folder.resolve("small.png");
        ImageIO.write(
                new java.awt.image.BufferedImage(20, 20, java.awt.image.BufferedImage.TYPE_3BYTE_BGR),
                "png",
                small.toFile());
        ImageIO.write(
                new java.awt.image.BufferedImage(20, 20, java.awt.image.BufferedImage.TYPE_BYTE_GRAY),
                "png",
                folder.resolve("grey.png").toFile());
        byte[] bytes = Files.readAllBytes(small);
        Files.write(folder.resolve("damaged.png"), Arrays.copyOf(bytes, bytes.length / 2));
        Run run = proveFile(wrong.name(), wrong.text());
        assertThat(run.code()).as(run.out()).isEqualTo(Akin.BAD_INPUT);
        assertThat(run.err()).contains(wrong.says()).doesNotContain("Exception");
        assertThat(run.err().lines()).hasSize(1);
    }

    @Test
    void twoFilesAreWanted() {
        assertThat(Run.of("prove", ShotChart.RIG.toString()).err()).contains("a rig file and a file of readings");
        assertThat(Run.of("prove", ShotChart.RIG.toString(), "nowhere.yaml").code())
                .isEqualTo(Akin.BAD_INPUT);
    }
}
