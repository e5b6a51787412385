package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.finding.WhereFound;
import akin.model.rig.Rig;
import akin.model.rig.Unit;
import java.util.List;

/**
 * Whether a unit records sound for reference. Only once sound or timecode is planned for any unit.
 *
 * @param unitName name of the unit
 * @param recorded true when it does
 */
public record ScratchSound(String unitName, boolean recorded) implements Derived {

    /** The fact, or what is missing for it. */
    public static List<Object> derive(Rig rig, Unit unit) {
        if (rig.units().stream()
                .allMatch(one -> one.sync().scratch() == null && one.sync().source() == null)) {
            return List.of();
        }
        Boolean known = unit.sync().scratch();
        return Inputs.of(ScratchSound.class, unit)
                .input(unit.path("sound.scratch"), WhereFound.PLAN, known)
                .derive(() -> new ScratchSound(unit.name(), requireNonNull(known)));
    }
}
