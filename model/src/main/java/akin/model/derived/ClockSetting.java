package akin.model.derived;

import akin.model.rig.Rig;
import akin.model.rig.Unit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * What a unit's clock is set to. Zone and date are each asked for only once they are planned for any unit; what is known
 * of the one is compared even while the other is not.
 *
 * @param unitName name of the unit
 * @param zone the time zone, UTC or as UTC+01:00; null when not said
 * @param date the date that it shows on the first day; null when not said
 */
public record ClockSetting(
        String unitName, @Nullable String zone, @Nullable LocalDate date) implements Derived {

    /** True when both zones are known and the other clock shows another time, whatever the zones are called: UTC is UTC+00:00. */
    public boolean zoneDiffers(ClockSetting other) {
        return zone != null && other.zone != null && minutes(zone) != minutes(other.zone);
    }

    /** True when both dates are known and are not one day. */
    public boolean dateDiffers(ClockSetting other) {
        return date != null && other.date != null && !date.equals(other.date);
    }

    /** Minutes ahead of UTC. */
    private static int minutes(String zone) {
        if (zone.equals("UTC")) {
            return 0;
        }
        int hours = Integer.parseInt(zone.substring(4, 6));
        int size = 60 * hours + Integer.parseInt(zone.substring(7, 9));
        return zone.charAt(3) == '-' ? -size : size;
    }

    /** The fact, if anything is known of it, and what is missing for it. */
    public static List<Object> derive(Rig rig, Unit unit) {
        String zone = unit.sync().clock();
        LocalDate date = unit.sync().clockDate();
        List<Object> facts = new ArrayList<>();
        if (zone != null || date != null) {
            facts.add(new ClockSetting(unit.name(), zone, date));
        }
        Inputs inputs = Inputs.of(ClockSetting.class, unit);
        if (rig.units().stream().map(one -> one.sync().clock()).anyMatch(Objects::nonNull)) {
            inputs.setting("clock", zone);
        }
        if (rig.units().stream().map(one -> one.sync().clockDate()).anyMatch(Objects::nonNull)) {
            inputs.setting("clock-date", date);
        }
        facts.addAll(inputs.missing());
        return facts;
    }
}
