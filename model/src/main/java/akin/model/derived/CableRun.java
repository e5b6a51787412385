package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.finding.WhereFound;
import akin.model.quantity.Length;
import akin.model.rig.Cable;
import akin.model.rig.Unit;
import java.util.List;

/**
 * The cable from a body to its recorder.
 *
 * @param unitName name of the unit
 * @param length its length
 * @param carries the length up to which its maker says that it carries the signal
 */
public record CableRun(String unitName, Length length, Length carries) implements Derived {

    /** The cable, or what is not known of it; nothing where none is planned. */
    public static List<Object> derive(Unit unit) {
        Cable cable = unit.recording().cable();
        if (cable == null) {
            return List.of();
        }
        return Inputs.of(CableRun.class, unit)
                .setting("recorder.cable.length", cable.length())
                .input(unit.path("recorder.cable.carries"), WhereFound.SPEC_SHEET, cable.carries())
                .derive(() ->
                        new CableRun(unit.name(), requireNonNull(cable.length()), requireNonNull(cable.carries())));
    }

    /** True when it is longer than it carries the signal. */
    public boolean tooLong() {
        return length.millimetres() > carries.millimetres();
    }
}
