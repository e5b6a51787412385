package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.colour.Chart;
import akin.model.colour.RgbMatrix;
import akin.model.colour.WhiteShift;
import akin.model.rig.Levels;
import akin.model.rig.Reading;
import akin.model.rig.Rig;
import akin.model.rig.Unit;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How far off white a unit recorded the neutral that was shot.
 *
 * @param unitName name of the unit
 * @param shift towards amber or blue, and towards green or magenta
 * @param miredGive mired by which that may be off, as the levels were read
 * @param duvGive the same across the locus
 */
public record MeasuredWhite(String unitName, WhiteShift shift, double miredGive, double duvGive) implements Derived {

    /** The shift, or what is missing for it; nothing where no unit's neutral was read in colour. */
    public static List<Object> derive(Rig rig, Unit unit) {
        if (!ReadLight.asked(rig, one -> levels(one) != null)) {
            return List.of();
        }
        Reading reading = rig.reading(unit);
        Levels levels = reading == null ? null : levels(reading);
        Inputs inputs = ReadLight.gamut(ReadLight.encoding(Inputs.of(MeasuredWhite.class, unit), unit), unit);
        return ReadLight.reading(inputs, unit, "grey", levels).derive(() -> of(rig, unit, requireNonNull(levels)));
    }

    /** The neutral to tell white by: the grey card before the white patch, which clips first; then the chart. */
    static @Nullable Levels levels(Reading reading) {
        if (ofCard(reading)) {
            return reading.grey();
        }
        if (ofSheet(reading)) {
            return reading.white();
        }
        return reading.patches().isEmpty() ? null : reading.patches().get(Chart.CARD);
    }

    /** True when {@link #levels} is that of a grey card. */
    static boolean ofCard(Reading reading) {
        return reading.grey() != null && reading.grey().coloured();
    }

    /** True when {@link #levels} is that of a white patch or sheet. */
    static boolean ofSheet(Reading reading) {
        return !ofCard(reading) && reading.white() != null && reading.white().coloured();
    }

    private static MeasuredWhite of(Rig rig, Unit unit, Levels levels) {
        double[] should = ReadLight.neutral(rig, unit);
        WhiteShift at = shift(unit, requireNonNull(should));
        double mired = 0;
        double duv = 0;
        for (int channel = 0; channel < 3; channel++) {
            double[] moved = should.clone();
            double light = ReadLight.rgb(requireNonNull(unit.encoding()), levels)[channel];
            double more = ReadLight.rgb(requireNonNull(unit.encoding()), levels.moved(channel, levels.give()))[channel];
            moved[channel] *= more / ReadLight.some(light);
            WhiteShift off = shift(unit, moved).from(at);
            mired += Math.abs(off.mired());
            duv += Math.abs(off.duv());
        }
        return new MeasuredWhite(unit.name(), at, mired, duv);
    }

    private static WhiteShift shift(Unit unit, double[] rgb) {
        double[] lit = {ReadLight.some(rgb[0]), ReadLight.some(rgb[1]), ReadLight.some(rgb[2])};
        return WhiteShift.of(
                RgbMatrix.toXyz(requireNonNull(unit.gamut())).times(lit),
                unit.gamut().white());
    }

    /** How far this unit's neutral is from another's. */
    public WhiteShift from(MeasuredWhite other) {
        return shift.from(other.shift);
    }

    /** Mired by which {@link #from} may be off, both readings being off the worst way. */
    public double miredGiveFrom(MeasuredWhite other) {
        return miredGive + other.miredGive;
    }

    /** The same across the locus. */
    public double duvGiveFrom(MeasuredWhite other) {
        return duvGive + other.duvGive;
    }

    /** Mired apart for certain. */
    public double surelyMired(MeasuredWhite other) {
        return Math.max(0, Math.abs(from(other).mired()) - miredGiveFrom(other));
    }

    /** Tint apart for certain. */
    public double surelyDuv(MeasuredWhite other) {
        return Math.max(0, Math.abs(from(other).duv()) - duvGiveFrom(other));
    }
}
