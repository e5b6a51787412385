package akin.engine.report;

import static org.assertj.core.api.Assertions.assertThat;

import akin.engine.assess.Assessment;
import akin.engine.assess.Checker;
import akin.engine.assess.FailOn;
import akin.engine.assess.RuleBase;
import akin.engine.book.CompiledBook;
import akin.engine.book.Examples;
import akin.engine.book.Shelf;
import akin.engine.equip.Catalogue;
import akin.engine.equip.Terms;
import akin.engine.read.Binder;
import akin.engine.read.Document;
import akin.engine.read.YamlReader;
import akin.engine.report.html.HtmlReport;
import akin.model.rig.Rig;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Rigs that tests of reports share: the samples, and two that are hard on a page. */
public final class SampleRigs {

    private static final Binder BINDER = new Binder();
    private static final Checker CHECKER =
            new Checker(RuleBase.builtIn(), CompiledBook.load(), BINDER, Catalogue.builtIn(BINDER));

    /** Eight units, some with long names, nearly alike, so that every mark is used and labels crowd; and little known. */
    private static final String CROWD = """
            production: {name: A crowd, delivery: ~}
            scenes:
              - {name: a very long corridor with a name that does not want to end, subject-distance: 9 m, lights: [fluorescent]}
              - {name: yard}
              - {name: close, subject-distance: 0.6 m, lights: [led], mains: 50 Hz}
            gear:
              bodies: {small: {modes: {tall: {picture: 2160x4096}}, profiles: {vague: {encoding: arri-logc4}}}}
            units:
              second-unit-camera-operator: {profile: log, shutter: 1/50, iso: 800, lens: {focal: 24 mm, stop: T2.8}}
              third: {profile: log, shutter: 1/60, iso: 200, lens: {focal: 24 mm, stop: T16}}
              fourth: {profile: vague, shutter: 172.8°, iso: 400, lens: {focal: 30 mm, stop: T2.8}}
              fifth: {profile: log, shutter: 180°, iso: 6400, lens: {focal: 18 mm, stop: T22}}
              sixth: {profile: look, shutter: 90°, iso: 800, lens: {focal: 80 mm, stop: T2.8}}
              seventh-and-last-of-them-all-xy: {profile: log, shutter: 1/48, iso: 1600, lens: {focal: 24 mm, stop: T4}}
              none: {}
            """;

    private static final String NASTY = """
            production: {name: "</title><script>alert(1)</script>"}
            scenes:
              - {name: "</title></desc></svg><b>x' onload='y", subject-distance: 3 m, lights: [led]}
              - {name: "\\" onmouseover=\\"alert(2)", subject-distance: 4 m, lights: [led]}
              - {name: "ring the bell", subject-distance: 4 m, lights: [led]}
            gear: {bodies: {small: {name: "<script>alert(1)</script>\\"><img src=x onerror=alert(3)>"}}}
            units: {B: {shutter: 1/60, clip-names: "--></style><script>"}}
            waivers:
              - {rule: motion/blur-differs, units: [A, B], because: "<script>alert(1)</script> javascript:alert(4) ${7*7}"}
            """;

    private SampleRigs() {}

    /** A rig with its assessment. */
    public record Checked(Rig rig, Assessment assessment) {}

    /** The page of a sample, by the name of its folder, or of the crowd or the nasty one. */
    public static String html(String name) {
        return html(name.equals("nasty") ? nasty() : checked(name));
    }

    /** The page of a rig. */
    public static String html(Checked checked) {
        return HtmlReport.render(checked.assessment(), checked.rig(), List.of(), "0.1.0");
    }

    /** A sample, by the name of its folder, or the crowd. */
    public static Checked checked(String name) {
        return check(
                name.equals("crowd")
                        ? crowd()
                        : YamlReader.read("rig.yaml", read(Path.of("..", "samples", name, "rig.yaml"))));
    }

    /** The matched pair of the rule pages with changes. */
    public static Checked changed(String changes) {
        return check(Examples.lay(YamlReader.read("rig.yaml", changes), Shelf.matchedPair()));
    }

    /** A rig whose words try to be more than words. */
    public static Checked nasty() {
        Document written = Examples.lay(YamlReader.read("rig.yaml", NASTY), Shelf.matchedPair());
        // control characters reach a name by escapes only, which the joining of rigs does not write
        String text = written.text().replace("'ring the bell'", "\"bell \\a \\e[31m \\u202E \\uFFFE \\x85\"");
        assertThat(text).contains("\\a");
        return check(YamlReader.read("rig.yaml", text));
    }

    private static Document crowd() {
        String units = CROWD.replace("lens: {", "lens: {use: long-zoom, ")
                .replaceAll("(?m)^(  [a-z-]+: [{])(profile)", "$1body: small, mode: open, codec: inside, $2")
                .replace("none: {}", "none: {body: small, mode: tall}");
        return Examples.lay(YamlReader.read("rig.yaml", units), Shelf.matchedPair());
    }

    private static Checked check(Document rig) {
        return new Checked(CHECKER.equip(rig, Terms.OF_THE_RIG), CHECKER.check(rig, Terms.OF_THE_RIG, FailOn.LOSSY));
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
