package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.finding.Fix;
import akin.model.finding.WhereFound;
import akin.model.gear.TimeLimit;
import akin.model.quantity.Timespan;
import akin.model.rig.Rig;
import akin.model.rig.Unit;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * After how long heat ends a recording in the mode of a unit. Only where takes are planned.
 *
 * @param unitName name of the unit
 * @param limit after how long
 * @param takes what is planned
 */
public record HeatEnd(String unitName, TimeLimit limit, PlannedTakes takes) implements Derived {

    /** The limit, or what is missing for it. */
    public static List<Object> derive(Rig rig, Unit unit) {
        PlannedTakes takes = PlannedTakes.of(rig, unit);
        if (takes.none()) {
            return List.of();
        }
        TimeLimit limit = unit.mode().heatLimit();
        Inputs inputs = Inputs.of(HeatEnd.class, unit).mode("heat-limit", WhereFound.TEST, limit);
        return (settled(limit, takes, unit) ? inputs : takes.require(inputs))
                .derive(() -> new HeatEnd(unit.name(), requireNonNull(limit), takes));
    }

    /** True where a take that is not planned changes nothing: there is no limit, or one that is planned outlasts it. */
    private static boolean settled(@Nullable TimeLimit limit, PlannedTakes takes, Unit unit) {
        return limit != null && (limit.after() == null || new HeatEnd(unit.name(), limit, takes).tooSoon());
    }

    /** True when the longest take outlasts the limit. */
    public boolean tooSoon() {
        return !limit.holds(new Timespan(takes.longestMinutes() * 60_000));
    }

    /** The limit in minutes; infinite where there is none. */
    public double minutes() {
        Timespan after = limit.after();
        return after == null ? Double.POSITIVE_INFINITY : after.milliseconds() / 60_000;
    }

    /** A shorter take, or shade and pauses. Keys: shorter-take, cool. */
    public List<Fix> fixes() {
        return PlannedTakes.shorter(takes, minutes(), "cool");
    }
}
