package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.colour.Adaptation;
import akin.model.colour.Chart;
import akin.model.colour.Matrix3;
import akin.model.colour.RgbMatrix;
import akin.model.finding.WhereFound;
import akin.model.rig.Levels;
import akin.model.rig.Reading;
import akin.model.rig.Readings;
import akin.model.rig.Rig;
import akin.model.rig.Unit;
import akin.model.tone.Encoding;
import java.util.Arrays;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/** Light from the levels that were read of test shots. */
final class ReadLight {

    /** Legal or not, no camera's code of this share or less says anything of light. */
    private static final double LEAST = 1e-6;

    private ReadLight() {}

    /** True when something was read of any unit, so that every unit owes it. */
    static boolean asked(Rig rig, Predicate<Reading> what) {
        Readings readings = rig.readings();
        return readings != null && readings.any(what);
    }

    /** Names a reading of a unit as needed. */
    static Inputs reading(Inputs inputs, Unit unit, String key, @Nullable Object value) {
        return inputs.input("readings.units." + unit.name() + "." + key, WhereFound.TEST, value);
    }

    /** Names what levels are decoded by. */
    static Inputs encoding(Inputs inputs, Unit unit) {
        return RecordedEncoding.require(inputs, unit);
    }

    /** Names what colours are told by. */
    static Inputs gamut(Inputs inputs, Unit unit) {
        for (Object fact : RecordedGamut.derive(unit)) {
            if (fact instanceof akin.model.finding.Missing gap) {
                inputs.missing(gap);
            }
        }
        return inputs;
    }

    /** Scene-linear red, green and blue of levels. */
    static double[] rgb(Encoding encoding, Levels levels) {
        return Arrays.stream(levels.all()).map(encoding::decode).toArray();
    }

    /** Luminance of levels, 0.18 for middle grey; of one level read of brightness alone its light. */
    static double luminance(Unit unit, Levels levels) {
        Encoding encoding = requireNonNull(unit.encoding());
        double[] rgb = rgb(encoding, levels);
        if (!levels.coloured() || unit.gamut() == null) {
            return rgb[1];
        }
        return RgbMatrix.toXyz(unit.gamut()).times(rgb)[1];
    }

    /**
     * Linear light of the neutral that white is told by, each channel as a share of what it should be; of a white patch or
     * sheet, whose reflectance nobody told, the light itself. Null when none was read in colour.
     */
    static double @Nullable [] neutral(Rig rig, Unit unit) {
        Reading reading = requireNonNull(rig.reading(unit));
        Levels levels = MeasuredWhite.levels(reading);
        if (levels == null) {
            return null;
        }
        double[] rgb = rgb(requireNonNull(unit.encoding()), levels);
        if (MeasuredWhite.ofSheet(reading)) {
            return rgb;
        }
        double[] should = MeasuredWhite.ofCard(reading)
                ? new double[] {Encoding.MIDDLE_GREY, Encoding.MIDDLE_GREY, Encoding.MIDDLE_GREY}
                : patch(requireNonNull(requireNonNull(rig.readings()).chart()), unit, Chart.CARD);
        return new double[] {rgb[0] / should[0], rgb[1] / should[1], rgb[2] / should[2]};
    }

    /** What a patch should be in a unit's gamut, adapted to its white. */
    static double[] patch(Chart chart, Unit unit, int index) {
        Matrix3 fromXyz = RgbMatrix.toXyz(requireNonNull(unit.gamut())).inverse();
        return fromXyz.times(Adaptation.BRADFORD
                .between(Chart.white(), unit.gamut().white().toXyz())
                .times(chart.patches().get(index).xyz()));
    }

    /** Light that has a logarithm. */
    static double some(double light) {
        return Math.max(LEAST, light);
    }
}
