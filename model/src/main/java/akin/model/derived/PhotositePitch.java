package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.finding.WhereFound;
import akin.model.rig.Unit;
import java.util.List;

/**
 * Distance from one photosite to the next.
 *
 * @param unitName name of the unit
 * @param micrometres the distance in micrometres
 */
public record PhotositePitch(String unitName, double micrometres) implements Derived {

    /** The pitch, or what is missing for it. */
    public static List<Object> derive(Unit unit) {
        Double pitch = unit.mode().photositePitch();
        return Inputs.of(PhotositePitch.class, unit)
                .mode("area", WhereFound.SPEC_SHEET, unit.mode().activeArea())
                .mode("photosites", WhereFound.SPEC_SHEET, pitch)
                .derive(() -> new PhotositePitch(unit.name(), requireNonNull(pitch)));
    }
}
