package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.finding.Fix;
import akin.model.finding.WhereFound;
import akin.model.gear.Clips;
import akin.model.gear.TimeLimit;
import akin.model.quantity.Timespan;
import akin.model.rig.Rig;
import akin.model.rig.Unit;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * After how long the device that records ends a clip by itself. Only where takes are planned.
 *
 * @param unitName name of the unit
 * @param limit after how long
 * @param takes what is planned
 */
public record TakeEnd(String unitName, TimeLimit limit, PlannedTakes takes) implements Derived {

    /** The limit, or what is missing for it. */
    public static List<Object> derive(Rig rig, Unit unit) {
        PlannedTakes takes = PlannedTakes.of(rig, unit);
        if (takes.none()) {
            return List.of();
        }
        Clips clips = clips(unit);
        TimeLimit limit = clips == null ? null : clips.limit();
        Inputs inputs = Inputs.of(TakeEnd.class, unit).input(clipsPath(unit, "limit"), WhereFound.MANUAL, limit);
        return (settled(limit, takes, unit) ? inputs : takes.require(inputs))
                .derive(() -> new TakeEnd(unit.name(), requireNonNull(limit), takes));
    }

    /** How the device that records a unit writes its clips. */
    static @Nullable Clips clips(Unit unit) {
        var recorder = unit.recording().recorder();
        return recorder == null ? unit.body().clips() : recorder.clips();
    }

    /** The dotted path of a fact of {@link #clips}. */
    static String clipsPath(Unit unit, String key) {
        var recorder = unit.recording().recorder();
        return recorder == null ? unit.body().path("clips." + key) : recorder.path("clips." + key);
    }

    /** True where a take that is not planned changes nothing: there is no limit, or one that is planned outlasts it. */
    private static boolean settled(@Nullable TimeLimit limit, PlannedTakes takes, Unit unit) {
        return limit != null && (limit.after() == null || new TakeEnd(unit.name(), limit, takes).tooSoon());
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

    /** A shorter take, or stopping and starting in turns. Keys: shorter-take, stagger. */
    public List<Fix> fixes() {
        return PlannedTakes.shorter(takes, minutes(), "stagger");
    }
}
