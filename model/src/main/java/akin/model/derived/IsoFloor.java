package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.finding.WhereFound;
import akin.model.gear.Profile;
import akin.model.quantity.Iso;
import akin.model.rig.Unit;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A unit's ISO and the lowest one at which its encoding's highlight range is whole: that of its mode where it has one of
 * its own, else that of its profile.
 *
 * @param unitName name of the unit
 * @param iso the ISO set
 * @param floor the lowest usable one
 */
public record IsoFloor(String unitName, Iso iso, Iso floor) implements Derived {

    /** The floor, or what is missing for it. */
    public static List<Object> derive(Unit unit) {
        Profile profile = unit.profile();
        Inputs inputs =
                Inputs.of(IsoFloor.class, unit).setting("iso", unit.iso()).setting("profile", profile);
        if (profile != null) {
            inputs.body("profiles." + profile.id() + ".iso-floor", WhereFound.MANUAL, known(unit));
        }
        return inputs.derive(() -> new IsoFloor(unit.name(), requireNonNull(unit.iso()), requireNonNull(known(unit))));
    }

    /** The lowest usable ISO of a unit, or null when not known. */
    static @Nullable Iso known(Unit unit) {
        Profile profile = ToneRange.writing(unit);
        if (profile == null) {
            return null;
        }
        Iso ofMode = unit.mode().isoFloors().get(profile.id());
        return ofMode == null ? profile.isoFloor() : ofMode;
    }

    /** How far the ISO is under the floor, in stops; 0 or below when it is not. */
    public double stopsUnder() {
        return floor.stopsFrom(iso);
    }
}
