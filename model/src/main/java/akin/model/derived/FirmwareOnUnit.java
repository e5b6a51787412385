package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.finding.WhereFound;
import akin.model.rig.Build;
import akin.model.rig.Unit;
import java.util.List;

/**
 * The firmware on a body, and the one that the facts of the catalogue were taken from.
 *
 * @param unitName name of the unit
 * @param onUnit version on the body
 * @param ofFacts version that the facts were taken from
 */
public record FirmwareOnUnit(String unitName, String onUnit, String ofFacts) implements Derived {

    /** Both versions, or what is not known; nothing where the plan does not say what is on the body. */
    public static List<Object> derive(Unit unit) {
        Build build = unit.build();
        if (build == null || build.firmware() == null) {
            return List.of();
        }
        String facts = unit.body().firmware();
        return Inputs.of(FirmwareOnUnit.class, unit)
                .body("firmware", WhereFound.MANUAL, facts)
                .derive(() -> new FirmwareOnUnit(unit.name(), requireNonNull(build.firmware()), requireNonNull(facts)));
    }

    /** True when they are not the same. */
    public boolean differs() {
        return !onUnit.equals(ofFacts);
    }
}
