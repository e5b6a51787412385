package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.finding.WhereFound;
import akin.model.gear.Clips;
import akin.model.rig.Rig;
import akin.model.rig.Unit;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * What the names of a unit's clips begin with. Only once it is known of any unit.
 *
 * @param unitName name of the unit
 * @param prefix the beginning, in capitals: file systems of cards do not tell them apart
 */
public record ClipNames(String unitName, String prefix) implements Derived {

    /** The beginning, or what is missing for it. */
    public static List<Object> derive(Rig rig, Unit unit) {
        if (rig.units().stream().allMatch(one -> prefix(one) == null)) {
            return List.of();
        }
        String prefix = prefix(unit);
        return Inputs.of(ClipNames.class, unit)
                .input(unit.path("clip-names"), WhereFound.PLAN, prefix)
                .derive(() -> new ClipNames(unit.name(), requireNonNull(prefix).toUpperCase(Locale.ROOT)));
    }

    /** What the names of a unit's clips begin with: as planned, else as its body or recorder leaves the works; null if not known. */
    public static @Nullable String prefix(Unit unit) {
        Clips clips = TakeEnd.clips(unit);
        String planned = unit.clipNames();
        return planned != null || clips == null ? planned : clips.names();
    }

    /** True when another unit that comes first by name writes the same beginning. */
    public boolean taken(ClipNames other) {
        return other.prefix.equals(prefix) && other.unitName.compareTo(unitName) < 0;
    }

    /** A beginning with the unit's own name. */
    public String own() {
        return unitName.toUpperCase(Locale.ROOT) + "_" + prefix;
    }
}
