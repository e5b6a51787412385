package akin.engine.assess;

import static org.assertj.core.api.Assertions.assertThat;

import akin.engine.book.CompiledBook;
import akin.engine.edit.Edits;
import akin.engine.equip.Catalogue;
import akin.engine.equip.Terms;
import akin.engine.read.Binder;
import akin.engine.read.Document;
import akin.engine.read.YamlReader;
import akin.engine.report.JsonReport;
import akin.model.finding.Edit;
import akin.model.finding.Value;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The same setting in another notation is the same setting: exactly, not nearly. */
class SameSettingTest {

    private static final String RATE = "24000/1001";
    private static final Binder BINDER = new Binder();
    private static final Checker CHECKER =
            new Checker(RuleBase.builtIn(), CompiledBook.load(), BINDER, Catalogue.builtIn(BINDER));

    /** Arithmetic, no source needed: a foot is 304.8 mm; ND4 is two stops. */
    @ParameterizedTest
    @CsvSource({
        "units.A.shutter, 180°, 180 deg",
        "units.B.shutter, 1/50, 20 ms",
        "units.B.shutter, 1/50, 0.02 s",
        "production.rate, 24000/1001, 23.976",
        "production.rate, 24000/1001, 23.98",
        "units.B.rate, 24000/1001, 23.976 fps",
        "units.B.rate, 25, 25/1",
        "units.B.lens.focal, 24 mm, 2.4 cm",
        "units.B.lens.stop, T2.8, t/2.8",
        "scenes.0.subject-distance, 2.4 m, 240 cm",
        "scenes.0.subject-distance, 2.4384 m, 8 ft",
        "units.B.filters.0, ND4, 2 stops",
        "units.B.filters.0, ND 0.3, ND 0.30",
        "units.B.white, 4300 K, 4300K",
        "units.B.sound.rate, 48 kHz, 48000 Hz",
    })
    void givesTheSameReport(String path, String one, String other) {
        for (long seed = 0; seed < 6; seed++) {
            Document rig = with(with(RandomRigs.of(seed), "units.A.rate", RATE), "units.B.rate", RATE);
            assertThat(report(with(rig, path, other)))
                    .as("seed %d: %s for %s", seed, other, one)
                    .isEqualTo(report(with(rig, path, one)));
        }
    }

    /**
     * Arithmetic, no source needed: an angle of 180° is a time of 1 / (2 x rate). What is found is the same; what to set may
     * not be, since somebody who plans in angles is given an angle.
     */
    @ParameterizedTest
    @CsvSource({
        "A, 24000/1001, 180°, 1001/48000 s",
        "B, 24000/1001, 180°, 1001/48000",
        "B, 24, 180°, 1/48",
        "A, 25, 180°, 1/50",
        "B, 25, 90°, 1/100",
        "A, 30000/1001, 180°, 1001/60000 s",
        "B, 24, 144°, 1/60"
    })
    void anAngleAndTheTimeOfThatLengthAreTheSameShutter(String unit, String rate, String angle, String time) {
        for (long seed = 0; seed < 6; seed++) {
            Document rig = with(with(RandomRigs.of(seed), "units.A.rate", rate), "units.B.rate", rate);
            String shutter = "units." + unit + ".shutter";
            assertThat(found(with(rig, shutter, time)))
                    .as("seed %d: %s for %s", seed, time, angle)
                    .isEqualTo(found(with(rig, shutter, angle)))
                    .isNotEmpty();
        }
    }

    private static List<String> found(Document document) {
        return CHECKER.check(document, Terms.OF_THE_RIG, FailOn.LOSSY).findings().stream()
                .map(f -> f.rule() + " " + f.severity() + " " + f.units() + " " + f.magnitude() + " "
                        + f.values().stream()
                                .filter(Value.Quantity.class::isInstance)
                                .toList())
                .toList();
    }

    private static Document with(Document rig, String path, String value) {
        return YamlReader.read(rig.file(), Edits.apply(rig, List.of(new Edit(path, value))));
    }

    /** The report, but for columns, which the length of a notation moves, and settings quoted as they were written. */
    private static String report(Document document) {
        return JsonReport.render(CHECKER.check(document, Terms.OF_THE_RIG, FailOn.LOSSY), "test")
                .replaceAll("\"column\" : \\d+", "\"column\" : 0")
                .replaceAll("\"from\" : \"[^\"]*\"", "\"from\" : \"\"");
    }
}
