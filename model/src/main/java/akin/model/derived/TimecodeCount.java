package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.finding.WhereFound;
import akin.model.gear.TimecodeSource;
import akin.model.rig.SyncPlan.Counting;
import akin.model.rig.Unit;
import akin.model.timing.Timecode;
import java.util.List;

/**
 * How the timecode of a unit counts. Only at rates that can be counted in two ways, and with timecode that is common with
 * other units.
 *
 * @param unitName name of the unit
 * @param counting how it counts
 */
public record TimecodeCount(String unitName, Counting counting) implements Derived {

    /** The counting, or what is missing for it. */
    public static List<Object> derive(Unit unit) {
        TimecodeSource source = unit.sync().source();
        if (source == null
                || !source.common()
                || !Timecode.canDropFrame(unit.rate().fraction())) {
            return List.of();
        }
        Counting counting = unit.sync().counting();
        return Inputs.of(TimecodeCount.class, unit)
                .input(unit.path("timecode.counting"), WhereFound.PLAN, counting)
                .derive(() -> new TimecodeCount(unit.name(), requireNonNull(counting)));
    }

    /** Seconds that the labels of a unit fall apart in an hour from those that count the other way. */
    public static double secondsPerHour(Unit unit) {
        var rate = unit.rate().fraction();
        return Timecode.secondsBehindPerHour(rate, false) - Timecode.secondsBehindPerHour(rate, true);
    }
}
