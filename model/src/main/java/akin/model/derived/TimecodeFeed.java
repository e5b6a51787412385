package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.finding.Fix;
import akin.model.finding.WhereFound;
import akin.model.gear.Clock;
import akin.model.gear.TimecodeSource;
import akin.model.rig.Rig;
import akin.model.rig.Unit;
import java.util.List;

/**
 * Where the timecode of a unit comes from. Only once timecode is planned for any unit.
 *
 * @param unitName name of the unit
 * @param source where it comes from
 */
public record TimecodeFeed(String unitName, TimecodeSource source) implements Derived {

    /** The source, or what is missing for it. */
    public static List<Object> derive(Rig rig, Unit unit) {
        if (rig.units().stream().allMatch(one -> one.sync().source() == null)) {
            return List.of();
        }
        TimecodeSource source = unit.sync().source();
        return Inputs.of(TimecodeFeed.class, unit)
                .input(unit.path("timecode.source"), WhereFound.PLAN, source)
                .derive(() -> new TimecodeFeed(unit.name(), requireNonNull(source)));
    }

    /** True when it is the time that the other units have too. */
    public boolean common() {
        return source.common();
    }

    /** The best way in which the body takes timecode; or a slate. Keys: feed, slate. */
    public List<Fix> fixes(Unit unit) {
        Clock clock = unit.body().clock();
        if (clock != null && clock.takes() != null && !clock.takes().isEmpty()) {
            TimecodeSource best = clock.takes().get(0);
            return List.of(Fix.set("feed", unit.path("timecode.source"), best).with("source", null, best));
        }
        return List.of(Fix.advise("slate"));
    }
}
