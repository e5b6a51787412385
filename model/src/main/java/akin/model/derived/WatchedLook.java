package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.finding.Fix;
import akin.model.rig.Monitor;
import akin.model.rig.Rig;
import akin.model.rig.Unit;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The look that a unit is judged through. Only once that is planned for any unit.
 *
 * @param unitName name of the unit
 * @param look name of the look; null when the picture is watched as it is recorded
 */
public record WatchedLook(String unitName, @Nullable String look) implements Derived {

    /** The look, or what is missing for it. */
    public static List<Object> derive(Rig rig, Unit unit) {
        if (unplanned(rig)) {
            return List.of();
        }
        Monitor monitor = unit.monitor();
        return Inputs.of(WatchedLook.class, unit)
                .setting("monitor", monitor)
                .derive(() ->
                        new WatchedLook(unit.name(), requireNonNull(monitor).look()));
    }

    /** True when no unit says what it is judged through. */
    static boolean unplanned(Rig rig) {
        return rig.units().stream().allMatch(unit -> unit.monitor() == null);
    }

    /** True when a fact about a table has to be known: the unit is watched through one, or has still to be planned. */
    static boolean asked(Rig rig, Unit unit) {
        Monitor monitor = unit.monitor();
        return monitor == null ? !unplanned(rig) : monitor.through();
    }

    /** Where the fact of a unit's table is written; the whole plan where there is none yet. */
    static Inputs input(Inputs inputs, Unit unit, String key, @Nullable Object value) {
        return unit.monitor() == null ? inputs.setting("monitor", null) : inputs.setting("monitor." + key, value);
    }

    /** True when the unit is watched through a look. */
    public boolean through() {
        return look != null;
    }

    /** True when both are watched through looks, and they are not the same. */
    public boolean differs(WatchedLook other) {
        return look != null && other.look != null && !look.equals(other.look);
    }

    /**
     * The look of the hero, or of the first other unit that has one, as made for what this unit records; where nobody has
     * one, agreeing on one. Keys: load-look, agree-look.
     */
    public List<Fix> fixes(Rig rig, Unit unit) {
        Optional<Monitor> pattern = rig.units().stream()
                .flatMap(one -> Stream.ofNullable(one.monitor()))
                .filter(Monitor::through)
                .findFirst();
        if (pattern.isEmpty() || unit.encoding() == null) {
            return List.of(Fix.advise("agree-look"));
        }
        Monitor other = pattern.get();
        String name = requireNonNull(other.look());
        Fix load = Fix.set("load-look", unit.path("monitor.look"), name)
                .and(unit.path("monitor.encoding"), unit.encoding().id());
        if (unit.gamut() != null) {
            load = load.and(unit.path("monitor.gamut"), unit.gamut().id());
        }
        if (other.viewing() != null) {
            load = load.and(unit.path("monitor.viewing"), other.viewing().id());
        }
        return List.of(load.with("look", null, name));
    }
}
