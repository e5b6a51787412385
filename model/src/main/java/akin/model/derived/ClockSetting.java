package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.finding.Fix;
import akin.model.rig.Rig;
import akin.model.rig.Unit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
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

    private static final String ZONE = "clock";
    private static final String DATE = "clock-date";

    /** True when zone or date is known of both clocks and is another. */
    public boolean differs(ClockSetting other) {
        return !apart(other).isEmpty();
    }

    /**
     * What is known of both clocks and is another, by its key under the unit. Zones are compared by the time that they show:
     * UTC is UTC+00:00.
     */
    public List<String> apart(ClockSetting other) {
        List<String> keys = new ArrayList<>();
        if (zone != null && other.zone != null && minutes(zone) != minutes(other.zone)) {
            keys.add(ZONE);
        }
        if (date != null && other.date != null && !date.equals(other.date)) {
            keys.add(DATE);
        }
        return keys;
    }

    /** Date and zone, as far as they are known. */
    public String shown() {
        return Stream.of(date, zone)
                .filter(Objects::nonNull)
                .map(Object::toString)
                .collect(Collectors.joining(" "));
    }

    /** Sets the clock of the unit to what the other shows. */
    public List<Fix> fixes(Unit unit, ClockSetting other) {
        Fix fix = Fix.advise("set-alike").with("to", null, other.shown());
        for (String key : apart(other)) {
            fix = fix.and(unit.path(key), requireNonNull(key.equals(ZONE) ? other.zone : other.date));
        }
        return List.of(fix);
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
            inputs.setting(ZONE, zone);
        }
        if (rig.units().stream().map(one -> one.sync().clockDate()).anyMatch(Objects::nonNull)) {
            inputs.setting(DATE, date);
        }
        facts.addAll(inputs.missing());
        return facts;
    }
}
