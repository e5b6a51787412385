package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.finding.Severity;
import akin.model.gear.Codec;
import akin.model.quantity.ColourTemperature;
import akin.model.rig.Tolerance;
import akin.model.rig.Tolerances;
import akin.model.rig.Unit;
import java.util.List;

/**
 * The white balance that a unit is set to.
 *
 * @param unitName name of the unit
 * @param white the value set
 * @param raw true when it is only a note to post; where the codec is not known it is taken as burned in
 */
public record WhiteBalance(String unitName, ColourTemperature white, boolean raw) implements Derived {

    /** The white balance, or what is missing for it. */
    public static List<Object> derive(Unit unit) {
        ColourTemperature white = unit.white();
        return Inputs.of(WhiteBalance.class, unit)
                .setting("white", white)
                .derive(() -> new WhiteBalance(unit.name(), requireNonNull(white), raw(unit)));
    }

    static boolean raw(Unit unit) {
        Codec codec = unit.recording().codec();
        return codec != null && codec.kind() == Codec.Kind.RAW;
    }

    /** How far apart two white balances are, in mired: |1,000,000 / K - 1,000,000 / K'|. */
    public double miredFrom(WhiteBalance other) {
        return miredFrom(other.white);
    }

    /** How far this is from another value, in mired. */
    public double miredFrom(ColourTemperature other) {
        return Math.abs(white.mired() - other.mired());
    }

    /** What an error of so many mired in this recording costs: nothing but time, unless it is burned in and far off. */
    public Severity costOf(double mired, Tolerances limits) {
        return !raw && mired > limits.of(Tolerance.WHITE_FAR) ? Severity.LOSSY : Severity.FIXABLE;
    }
}
