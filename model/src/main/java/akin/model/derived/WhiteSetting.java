package akin.model.derived;

import akin.model.rig.Setting;
import akin.model.rig.Unit;
import java.util.List;

/**
 * How a unit's white balance is kept.
 *
 * @param unitName name of the unit
 * @param automatic true when the body chooses it from shot to shot
 * @param raw true when it is only a note to post
 */
public record WhiteSetting(String unitName, boolean automatic, boolean raw) implements Derived {

    /** The setting, or what is missing for it. */
    public static List<Object> derive(Unit unit) {
        boolean automatic = unit.leaves(Setting.WHITE);
        return Inputs.of(WhiteSetting.class, unit)
                .setting("white", automatic ? Setting.WHITE : unit.white())
                .derive(() -> new WhiteSetting(unit.name(), automatic, WhiteBalance.raw(unit)));
    }
}
