package akin.engine.report.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import akin.engine.report.SampleRigs;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What is drawn is what is known: positions follow from published numbers, and an unknown fact leaves a gap. */
class PicturesTest {

    private static final Pattern START = Pattern.compile("M(-?[0-9.]+) (-?[0-9.]+)");

    @Test
    void everyUnitHasAMarkOfItsOwn() {
        Set<String> marks = new HashSet<>();
        Set<String> looks = new HashSet<>();
        for (int i = 0; i < 6; i++) {
            marks.add(new Ink(i, "A").mark(0, 0));
            looks.add(new Ink(i, "A").look());
        }
        assertThat(marks).hasSize(6);
        assertThat(looks).hasSize(6);
    }

    /** Rec. ITU-R BT.709: V = 1.099 L^0.45 - 0.099, so that 18 % grey is 40.9 % and L = 1 is 100 %, 2.47 stops over it. */
    @Test
    void toneCurvesLieWhereThePublishedCurveDoes() {
        Figure figure = figure("units: {B: {profile: look, iso: 100}}", "tone-curves");
        assertThat(cells(figure, "B")).containsExactly("Rec. ITU-R BT.709", "41 %", "2.4 stops");
        Drawing drawing = drawing(figure);
        double grey = yOf(text(drawing, "40"));
        double white = yOf(text(drawing, "60"));
        double perPercent = (grey - white) / 20;
        double level = start(path(drawing, "mark u1"))[1] + 4; // a square starts at its upper left corner
        assertThat(level + 4.6 - 4).isCloseTo(grey - 4 - 0.9 * perPercent, within(0.3));
        double x = start(path(drawing, "clip u1"))[0];
        double zero = xOf(text(drawing, "0", "middle"));
        double two = xOf(text(drawing, "+2"));
        assertThat((x - zero) / (two - zero) * 2).isCloseTo(2.4, within(0.03));
    }

    @Test
    void aClipThatIsNotKnownIsNotDrawn() {
        String changes = "gear: {bodies: {small: {profiles: {log: {headroom: ~}}}}}";
        Figure curves = figure(changes, "tone-curves");
        assertThat(looks(drawing(curves)))
                .contains("curve u0", "curve u1", "clip u0")
                .doesNotContain("clip u1");
        assertThat(cells(curves, "B").get(2)).isEqualTo("not known");
        assertThat(curves.gaps())
                .containsExactly("B: gear.bodies.small.profiles.log.headroom is not known (a test the crew can shoot)");
        Figure stops = figure(changes, "stops");
        assertThat(looks(drawing(stops))).contains("bar u0", "unknown").doesNotContain("bar u1", "mark u1");
    }

    @Test
    void anAreaThatIsNotKnownIsNotDrawn() {
        Figure areas = figure("gear: {bodies: {small: {modes: {open: {area: ~}}}}}", "sensor-areas");
        assertThat(looks(drawing(areas))).contains("frame u0").doesNotContain("frame u1");
        assertThat(areas.gaps())
                .containsExactly("B: gear.bodies.small.modes.open.area is not known (the maker's specification sheet)");
    }

    @Test
    void areasAreToOneScaleAndLessWhatStabilisationTakes() {
        Figure areas = figure(
                "{gear: {bodies: {small: {steady-crop: 20 %, stabilisation: electronic}}},"
                        + " units: {B: {stabilisation: electronic}}}",
                "sensor-areas");
        assertThat(cells(areas, "A"))
                .containsExactly("36 × 20.2 mm", "41.3 mm", "100 % of the width, 100 % of the height");
        assertThat(cells(areas, "B").get(2)).isEqualTo("80 % of the width, 80 % of the height");
        double a = width(path(drawing(areas), "frame u0"));
        assertThat(width(path(drawing(areas), "frame u1"))).isCloseTo(a * 24 / 36, within(0.2));
        assertThat(width(path(drawing(areas), "part u1"))).isCloseTo(a * 24 / 36 * 0.8, within(0.2));
    }

    /** Arithmetic: 4096x2160 loses 6.25 % of its width to 16:9. */
    @Test
    void shapesLieAroundOneExtraction() {
        Figure shapes = figure("gear: {bodies: {small: {modes: {open: {picture: 4096x2160}}}}}", "picture-shapes");
        assertThat(cells(shapes, "B")).containsExactly("4096x2160 (1.90:1)", "3840x2160", "6.2 %");
        Drawing drawing = drawing(shapes);
        double common = width(path(drawing, "common"));
        assertThat(width(path(drawing, "frame u0"))).isCloseTo(common, within(0.2));
        assertThat(width(path(drawing, "frame u1"))).isCloseTo(common / 0.9375, within(0.2));
    }

    /** ExifTool 12.57, DOF: 50 mm, f/2.8, 36 mm x 24 mm, 3 m: 2.73 m to 3.33 m. */
    @Test
    void depthReachesFromThePublishedNearToFar() {
        String changes = "{scenes: [{name: kitchen, subject-distance: 3 m, lights: [tungsten]}, {name: yard}],"
                + " gear: {bodies: {small: {modes: {open: {area: 36.0x24.0 mm, picture: 6144x4096}}}}},"
                + " units: {B: {lens: {focal: 50 mm, stop: f/2.8}}}}";
        Figure depth = figure(changes, "depth-1");
        assertThat(cells(depth, "B")).containsExactly("3 m", "2.73 m", "3.33 m", "0.6 m");
        Drawing drawing = drawing(depth);
        double near = start(path(drawing, "bar u1"))[0];
        double far = near + width(path(drawing, "bar u1"));
        double subject = start(path(drawing, "mark u1"))[0] + 4.6;
        assertThat((subject - near) / (far - near)).isCloseTo((3 - 2.729) / (3.3306 - 2.729), within(0.01));
        Figure yard = figure(changes, "depth-2");
        assertThat(yard.drawing()).isNull();
        assertThat(yard.gaps()).hasSize(2).allMatch(gap -> gap.contains("scenes.1.subject-distance is not known"));
    }

    /** Common practice: under 50 Hz 1/100, 1/50, 3/100 and 1/25 s are safe; 1/48 s is 0.83 ms off. */
    @Test
    void safeWindowsLieAtWholePulses() {
        Figure figure = figure(
                "{production: {mains: 50 Hz}, scenes: [{name: kitchen, subject-distance: 3 m, lights: [led]}],"
                        + " units: {A: {shutter: 1/48}, B: {shutter: 1/50}}}",
                "shutters-1");
        Drawing drawing = drawing(figure);
        double second = (xOf(text(drawing, "1/25")) - xOf(text(drawing, "1/50"))) / (0.04 - 0.02);
        assertThat(xOf(text(drawing, "3/100")) - xOf(text(drawing, "1/100"))).isCloseTo(0.02 * second, within(0.3));
        assertThat(xOf(text(drawing, "1/50"))).isCloseTo(start(path(drawing, "drop u1"))[0], within(0.3));
        assertThat(start(path(drawing, "drop u0"))[0] - start(path(drawing, "drop u1"))[0])
                .isCloseTo((1 / 48.0 - 0.02) * second, within(0.3));
        assertThat(cells(figure, "A")).startsWith("1/48", "20.83 ms").endsWith("1/50 s, 172.6°");
        assertThat(cells(figure, "B")).startsWith("1/50", "20 ms", "0 %");
    }

    @Test
    void aShutterOrALightThatIsNotKnownIsNotDrawn() {
        Figure shutter = figure(
                "{scenes: [{name: kitchen, subject-distance: 3 m, lights: [led]}], units: {B: {shutter: ~}}}",
                "shutters-1");
        assertThat(looks(drawing(shutter))).contains("mark u0").doesNotContain("mark u1", "drop u1");
        assertThat(shutter.gaps()).containsExactly("B: units.B.shutter is not known (plan it in the rig file)");
        Figure light = figure("scenes: [{name: kitchen, subject-distance: 3 m}]", "shutters");
        assertThat(light.drawing()).isNull();
        assertThat(light.gaps()).hasSize(2);
        assertThat(figure("production: {name: Quiet}", "shutters").caption())
                .isEqualTo("No light that pulses with the mains is planned.");
    }

    private static Figure figure(String changes, String id) {
        return Pictures.of(SampleRigs.changed(changes).rig()).stream()
                .filter(figure -> figure.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static Drawing drawing(Figure figure) {
        return Objects.requireNonNull(figure.drawing());
    }

    private static List<String> cells(Figure figure, String unit) {
        return figure.table().rows().stream()
                .filter(row -> row.ink().name().equals(unit))
                .findFirst()
                .orElseThrow()
                .cells();
    }

    private static List<String> looks(Drawing drawing) {
        return drawing.shapes().stream().map(Drawing.Shape::look).toList();
    }

    private static String path(Drawing drawing, String look) {
        return drawing.shapes().stream()
                .filter(Drawing.Path.class::isInstance)
                .map(Drawing.Path.class::cast)
                .filter(path -> path.look().equals(look))
                .findFirst()
                .orElseThrow()
                .data();
    }

    private static Drawing.Text text(Drawing drawing, String words) {
        return text(drawing, words, "");
    }

    private static Drawing.Text text(Drawing drawing, String words, String anchor) {
        return drawing.shapes().stream()
                .filter(Drawing.Text.class::isInstance)
                .map(Drawing.Text.class::cast)
                .filter(text -> text.text().equals(words) && text.anchor().startsWith(anchor))
                .findFirst()
                .orElseThrow();
    }

    private static double[] start(String path) {
        Matcher matcher = START.matcher(path);
        assertThat(matcher.lookingAt()).as(path).isTrue();
        return new double[] {Double.parseDouble(matcher.group(1)), Double.parseDouble(matcher.group(2))};
    }

    private static double width(String path) {
        Matcher matcher = Pattern.compile("h([0-9.]+)").matcher(path);
        assertThat(matcher.find()).as(path).isTrue();
        return Double.parseDouble(matcher.group(1));
    }

    private static double xOf(Drawing.Text text) {
        return Double.parseDouble(text.x());
    }

    private static double yOf(Drawing.Text text) {
        return Double.parseDouble(text.y());
    }
}
