package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.finding.WhereFound;
import akin.model.quantity.Tint;
import akin.model.rig.Unit;
import java.util.List;

/**
 * The tint that a unit is set to, on its maker's own scale.
 *
 * @param unitName name of the unit
 * @param tint the setting
 * @param scale name of the scale it is written on
 */
public record TintSetting(String unitName, Tint tint, String scale) implements Derived {

    /** The tint, or what is missing for it. */
    public static List<Object> derive(Unit unit) {
        Tint tint = unit.tint();
        String scale = unit.body().tintScale();
        return Inputs.of(TintSetting.class, unit)
                .setting("tint", tint)
                .body("tint-scale", WhereFound.MANUAL, scale)
                .derive(() -> new TintSetting(unit.name(), requireNonNull(tint), requireNonNull(scale)));
    }

    /** True when both stand on one scale and at other values. */
    public boolean differsFrom(TintSetting other) {
        return scale.equals(other.scale) && tint.value() != other.tint.value();
    }

    /** True when the two cannot be compared: they stand on two scales and at least one is not at zero. */
    public boolean incomparableWith(TintSetting other) {
        return !scale.equals(other.scale) && (tint.value() != 0 || other.tint.value() != 0);
    }
}
