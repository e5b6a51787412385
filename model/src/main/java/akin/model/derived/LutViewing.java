package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.rig.Monitor;
import akin.model.rig.Rig;
import akin.model.rig.Unit;
import akin.model.tone.Encoding;
import java.util.List;

/**
 * The display that the table of a unit is made for.
 *
 * @param unitName name of the unit
 * @param viewing its encoding
 */
public record LutViewing(String unitName, Encoding viewing) implements Derived {

    /** The display, or what is missing for it; nothing for a unit that is watched as it is recorded. */
    public static List<Object> derive(Rig rig, Unit unit) {
        if (!WatchedLook.asked(rig, unit)) {
            return List.of();
        }
        Monitor monitor = unit.monitor();
        Encoding viewing = monitor == null ? null : monitor.viewing();
        return WatchedLook.input(Inputs.of(LutViewing.class, unit), unit, "viewing", viewing)
                .derive(() -> new LutViewing(unit.name(), requireNonNull(viewing)));
    }

    /** True when the other table is made for another display. */
    public boolean differs(LutViewing other) {
        return !viewing.id().equals(other.viewing.id());
    }
}
