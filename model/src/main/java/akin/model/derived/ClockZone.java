package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.finding.WhereFound;
import akin.model.rig.Rig;
import akin.model.rig.Unit;
import java.util.List;

/**
 * The time zone that a unit's clock is set to. Only once it is planned for any unit.
 *
 * @param unitName name of the unit
 * @param zone the time zone
 */
public record ClockZone(String unitName, String zone) implements Derived {

    /** True when the other clock shows another time, whatever the zones are called: UTC is UTC+00:00. */
    public boolean differs(ClockZone other) {
        return minutes() != other.minutes();
    }

    /** Minutes ahead of UTC, from UTC or UTC+01:00. */
    private int minutes() {
        if (zone.equals("UTC")) {
            return 0;
        }
        int hours = Integer.parseInt(zone.substring(4, 6));
        int size = 60 * hours + Integer.parseInt(zone.substring(7, 9));
        return zone.charAt(3) == '-' ? -size : size;
    }

    /** The fact, or what is missing for it. */
    public static List<Object> derive(Rig rig, Unit unit) {
        if (rig.units().stream().allMatch(one -> one.sync().clock() == null)) {
            return List.of();
        }
        String known = unit.sync().clock();
        return Inputs.of(ClockZone.class, unit)
                .input(unit.path("clock"), WhereFound.PLAN, known)
                .derive(() -> new ClockZone(unit.name(), requireNonNull(known)));
    }
}
